import * as text from "../../../sentences/made/takes-page";
import type { CompareAnswer } from "../../../wire/takes";
import { choice } from "../../controls/choice";
import { element } from "../../controls/element";
import { field } from "../../controls/field";
import { whileWorking } from "../../controls/while-working";
import type { Section, SidebarContext } from "../../section";
import { comparedList } from "./compared-list";
import { fairUse } from "./fair-use";
import { reasonsPart } from "./reasons-part";
import { trendPart } from "./trend-part";

const PERIODS = [
  { value: "week", label: text.periodWeek },
  { value: "month", label: text.periodMonth },
  { value: "quarter", label: text.periodQuarter },
] as const;

/** Takes compared fairly, over time, and what goes with them. */
export function fairTakes({ call, status, people }: SidebarContext): Section {
  const compareFields = element("fieldset", { class: "bare" });
  const periodFields = element("fieldset", { class: "bare" });
  const compared = element("div");
  const trend = element("div");
  const reasons = element("div");
  const wanted = { by: "", evenFor: "", period: "month" };
  let answer: CompareAnswer | null = null;

  const load = () =>
    whileWorking({
      status,
      doing: text.comparing(),
      controls: [compareFields, periodFields],
      work: async () => {
        answer = await call("sidebarCompareTakes", { ...wanted });
        show(answer);
      },
    });
  const show = (given: CompareAnswer) => {
    Object.assign(wanted, { by: given.by, evenFor: given.evenFor, period: given.period });
    const select = (key: "by" | "evenFor" | "period", options: readonly Choice[]) => {
      const made = choice(options, wanted[key]);
      made.addEventListener("change", () => {
        wanted[key] = made.value;
        const at = [...compareFields.querySelectorAll("select")].indexOf(made);
        void load().then(() => {
          const again = at === -1 ? periodFields.querySelector("select") : null;
          (again ?? compareFields.querySelectorAll("select")[at])?.focus();
        });
      });
      return made;
    };
    compareFields.replaceChildren(
      field(text.compare(), select("by", given.columns.map(columnsChoice))),
      field(text.evenedFor(), select("evenFor", given.evenFors.map(columnsChoice))),
    );
    const periods = PERIODS.map(({ value, label }) => ({ value, label: label() }));
    periodFields.replaceChildren(field(text.period(), select("period", periods)));
    draw();
  };
  const draw = () => {
    if (answer === null) return;
    compared.replaceChildren(...comparedList(answer, people.called));
    trend.replaceChildren(...trendPart(answer.trend));
    reasons.replaceChildren(...reasonsPart(answer, people.called));
  };
  people.onChange(draw);
  return {
    element: element(
      "div",
      {},
      element("h2", {}, text.comparedTitle()),
      compareFields,
      compared,
      fairUse(),
      element("h2", {}, text.overTime()),
      periodFields,
      trend,
      element("h2", {}, text.reasonsTitle()),
      reasons,
    ),
    load,
  };
}

interface Choice {
  readonly value: string;
  readonly label: string;
}

/** A column, or two joined with "+". */
function columnsChoice(value: string): Choice {
  return { value, label: text.together({ columns: value.split("+") }) };
}
