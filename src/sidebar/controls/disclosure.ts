import { type Child, element } from "./element";

export interface DisclosureOptions {
  readonly summary: Child;
  /** Made when first opened: most are never opened, and there may be thousands. */
  readonly content: () => Node;
  readonly open?: boolean;
  readonly kind?: string;
}

/** A line that opens to show more. */
export function disclosure(options: DisclosureOptions): HTMLDetailsElement {
  const { summary, content, open = false, kind = null } = options;
  const details = element("details", { class: kind }, element("summary", {}, summary));
  let filled = false;
  const fill = () => {
    if (filled) return;
    filled = true;
    details.append(content());
  };
  details.addEventListener("toggle", () => {
    if (details.open) fill();
  });
  if (open) {
    fill();
    details.open = true;
  }
  return details;
}

/** Opens it, and makes at once what it holds: the browser tells of its opening later. */
export function unfold(details: HTMLDetailsElement): void {
  details.open = true;
  details.dispatchEvent(new Event("toggle"));
}
