import { element } from "../controls/element";
import { userText } from "../controls/user-text";

export interface MethodChoice {
  readonly element: HTMLFieldSetElement;
  chosen(): readonly string[];
}

/** Which methods are raised here; all of them until the person says otherwise. */
export function methodChoice(methods: readonly string[]): MethodChoice {
  const boxes = methods.map((method) => ({
    method,
    box: element("input", { type: "checkbox", checked: true }),
  }));
  return {
    element: element(
      "fieldset",
      {},
      element("legend", {}, "Methods raised here"),
      ...boxes.map(({ method, box }) =>
        element("label", { class: "tick" }, box, element("span", {}, userText(method))),
      ),
    ),
    chosen: () => boxes.filter(({ box }) => box.checked).map(({ method }) => method),
  };
}
