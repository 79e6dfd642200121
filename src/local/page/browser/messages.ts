import * as text from "../../../sentences/made/local-page";

/** Short messages at the edge of the page. */
export interface Messages {
  /** @param seconds how long it stays; negative for until it is closed */
  show(message: string, title: string, seconds: number): void;
  /** A message about something that went wrong; it stays until it is closed. */
  trouble(message: string): void;
}

interface Shown {
  readonly message: string;
  readonly title: string;
  readonly seconds: number;
  readonly className: string;
}

/** @param holder where messages stand, one below the other */
export function messages(holder: HTMLElement): Messages {
  const show = ({ message, title, seconds, className }: Shown) => {
    const box = document.createElement("div");
    box.className = className;
    if (title !== "") {
      const heading = document.createElement("strong");
      heading.textContent = title;
      box.append(heading);
    }
    const paragraph = document.createElement("p");
    paragraph.textContent = message;
    const closer = document.createElement("button");
    closer.type = "button";
    closer.className = "plain-button";
    closer.textContent = text.close();
    closer.addEventListener("click", () => box.remove());
    box.append(paragraph, closer);
    holder.append(box);
    if (seconds >= 0) setTimeout(() => box.remove(), seconds * 1000);
  };
  return {
    show: (message, title, seconds) => show({ message, title, seconds, className: "message" }),
    trouble: (message) => show({ message, title: "", seconds: -1, className: "message trouble" }),
  };
}
