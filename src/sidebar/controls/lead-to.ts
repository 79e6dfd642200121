/** Brings a part of the page to the top, below what stays there, with the focus on its first control. */
export function leadTo(part: HTMLElement): void {
  part.scrollIntoView();
  const first = part.querySelector<HTMLElement>("button:not([hidden]), select");
  first?.focus({ preventScroll: true });
}
