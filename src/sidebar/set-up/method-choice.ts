import * as text from "../../sentences/made/set-up-page";
import { element } from "../controls/element";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText } from "../controls/user-text";

export interface MethodChoice {
  readonly element: HTMLFieldSetElement;
  chosen(): readonly string[];
}

/**
 * Which methods are raised here; all of them until the person says otherwise. The first one ticked
 * becomes the timetable's first, as which a batch without a method is reckoned: that is said, since
 * a table without such a column would else be reckoned by it unheard.
 */
export function methodChoice(methods: readonly string[]): MethodChoice {
  const boxes = methods.map((method) => ({
    method,
    box: element("input", { type: "checkbox", checked: true }),
  }));
  const chosen = () => boxes.filter(({ box }) => box.checked).map(({ method }) => method);
  const usual = element("small");
  const sayUsual = () => {
    const [first] = chosen();
    usual.replaceChildren(
      ...(first === undefined ? [] : sentenceNodes(text.usualMethod, { method: userText(first) })),
    );
  };
  sayUsual();
  const fieldset = element(
    "fieldset",
    {},
    element("legend", {}, text.methods()),
    ...boxes.map(({ method, box }) =>
      element("label", { class: "tick" }, box, element("span", {}, userText(method))),
    ),
    usual,
  );
  fieldset.addEventListener("change", sayUsual);
  return { element: fieldset, chosen };
}
