import * as text from "../../../sentences/made/orders-page";
import type { OrdersAnswer, PlanOrderRequest } from "../../../wire/orders";
import { checkedField } from "../../controls/checked-field";
import { choice } from "../../controls/choice";
import { element } from "../../controls/element";
import { field } from "../../controls/field";
import { stateOf } from "../../state";
import { ofTen } from "../chance-words";
import { byTrouble, wantedTrouble } from "./form-checks";

export interface PlanForm {
  readonly element: HTMLFormElement;
  /** All entries and the button: disabled while something is under way. */
  readonly fields: HTMLFieldSetElement;
  /** Suggests varieties and methods; what is entered stays. */
  offer(answer: OrdersAnswer): void;
  /** What is entered, checked or not. */
  entered(): PlanOrderRequest;
  /** The same; null where something is wrong, which is then told beside its field. */
  checked(): PlanOrderRequest | null;
}

const ASSURANCES = [0.5, 0.8, 0.9, 0.95];
const USUAL_ASSURANCE = 0.8;
/** Longer names are no suggestions. */
const LONGEST_SUGGESTION = 100;
/** Longer than any month is written; the script says what it can't read. */
const LONGEST_TEXT = 500;

interface FormState {
  /** The day from which an order is to lie ahead, ISO text; null until the script has said it. */
  readonly asOf: string | null;
  /** Whether the person chose how sure to be: what is usual changes nothing then. */
  readonly isSureChosen: boolean;
}

/**
 * The form of a new order.
 *
 * Longer than most: one form, whose fields and answers belong together.
 */
export function planForm(): PlanForm {
  const entry = { type: "text", autocomplete: "off", maxlength: LONGEST_TEXT };
  const suggestions = element("datalist", { id: "order-varieties" });
  const variety = element("input", { ...entry, list: suggestions.id });
  const wanted = element("input", { type: "number", min: 1, step: 1, inputmode: "numeric" });
  const by = element("input", { type: "date" });
  const sure = element("select");
  const method = element("select");
  const harvest = element("input", entry);
  const state = stateOf<FormState>({ asOf: null, isSureChosen: false });
  sure.addEventListener("change", () => state.set({ isSureChosen: true }));
  const wantedField = checkedField({ label: text.plantsWanted(), control: wanted, name: "wanted" });
  const byField = checkedField({ label: text.readyBy(), control: by, name: "by" });
  const methodHolder = element("div");
  const fields = element(
    "fieldset",
    { class: "bare" },
    field(text.variety(), variety, text.varietyHint()),
    suggestions,
    wantedField.element,
    byField.element,
    field(text.howSure(), sure, text.howSureHint()),
    methodHolder,
    field(text.harvest(), harvest, text.harvestHint()),
    element(
      "div",
      { class: "buttons" },
      element("button", { type: "submit", class: "main" }, text.plan()),
    ),
  );
  const fill = (select: HTMLSelectElement, options: { value: string; label: string }[]) => {
    const chosen = select.value;
    select.replaceChildren(...choice(options, "").children);
    select.value = options.some(({ value }) => value === chosen)
      ? chosen
      : (options[0]?.value ?? "");
  };
  const offerSure = (usual: number) => {
    const shares = [...new Set([...ASSURANCES, usual])].sort((a, b) => a - b);
    fill(
      sure,
      shares.map((share) => ({ value: String(share), label: ofTen(share) })),
    );
    if (!state.now.isSureChosen) sure.value = String(usual);
  };
  offerSure(USUAL_ASSURANCE);
  return {
    element: element("form", { class: "plan-form", novalidate: true }, fields),
    fields,
    offer: (answer) => {
      state.set({ asOf: answer.asOf });
      const names = answer.varieties.filter(({ length }) => length <= LONGEST_SUGGESTION);
      suggestions.replaceChildren(...names.map((value) => element("option", { value })));
      offerSure(answer.assurance);
      fill(
        method,
        answer.methods.map((value) => ({ value, label: value })),
      );
      methodHolder.replaceChildren(
        ...(answer.methods.length === 0 ? [] : [field(text.method(), method)]),
      );
    },
    entered: () => ({
      variety: variety.value.trim(),
      wanted: Number(wanted.value),
      by: by.value,
      assurance: Number(sure.value),
      method: method.value,
      harvest: harvest.value.trim(),
    }),
    checked() {
      const troubles = [
        wantedTrouble({ value: wanted.value, badInput: wanted.validity.badInput }),
        byTrouble({ value: by.value, badInput: by.validity.badInput }, state.now.asOf),
      ] as const;
      wantedField.tell(troubles[0]);
      byField.tell(troubles[1]);
      if (troubles[0] !== null) wanted.focus();
      else if (troubles[1] !== null) by.focus();
      else return this.entered();
      return null;
    },
  };
}
