/** Makes the button at the foot open and close the list of functions, which the build wrote. */
export function functionsList(button: HTMLButtonElement, list: HTMLElement): void {
  button.addEventListener("click", () => {
    const open = button.getAttribute("aria-expanded") !== "true";
    button.setAttribute("aria-expanded", String(open));
    list.hidden = !open;
    if (open) list.scrollIntoView({ block: "nearest" });
  });
}
