/** An element of the page by its id. @throws Error when the page lacks it */
export function part<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page lacks its part "${id}"`);
  return found as Kind;
}
