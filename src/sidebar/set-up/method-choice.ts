import * as text from "../../sentences/made/set-up-page";
import { element } from "../controls/element";
import { userText } from "../controls/user-text";

export interface MethodChoice {
  readonly element: HTMLFieldSetElement;
  /** The first that is ticked, as which a batch without a method is reckoned. */
  usual(): string | undefined;
  chosen(): readonly string[];
}

/**
 * Which methods are raised here; all of them until the person says otherwise. The first one ticked
 * becomes the timetable's first.
 */
export function methodChoice(methods: readonly string[], onChange = () => {}): MethodChoice {
  const boxes = methods.map((method) => ({
    method,
    box: element("input", { type: "checkbox", checked: true }),
  }));
  const chosen = () => boxes.filter(({ box }) => box.checked).map(({ method }) => method);
  const fieldset = element(
    "fieldset",
    {},
    element("legend", {}, text.methods()),
    ...boxes.map(({ method, box }) =>
      element("label", { class: "tick" }, box, element("span", {}, userText(method))),
    ),
    element("small", {}, text.methodsHint()),
  );
  fieldset.addEventListener("change", onChange);
  return { element: fieldset, usual: () => chosen()[0], chosen };
}
