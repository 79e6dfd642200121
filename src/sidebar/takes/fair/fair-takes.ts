import * as text from "../../../sentences/made/takes-page";
import type { CompareAnswer } from "../../../wire/takes";
import { choice } from "../../controls/choice";
import { element } from "../../controls/element";
import { field } from "../../controls/field";
import { whileWorking } from "../../controls/while-working";
import type { Section, SidebarContext } from "../../section";
import { stateOf } from "../../state";
import { comparedList } from "./compared-list";
import { fairUse } from "./fair-use";
import { reasonsPart } from "./reasons-part";
import { trendPart } from "./trend-part";

const PERIODS = [
  { value: "week", label: text.periodWeek },
  { value: "month", label: text.periodMonth },
  { value: "quarter", label: text.periodQuarter },
] as const;

interface FairState {
  /** The column whose groups are compared. */
  readonly by: string;
  /** The column that they are evened for. */
  readonly evenFor: string;
  readonly period: string;
  /** As last read; null before. */
  readonly answer: CompareAnswer | null;
}

/** Takes compared fairly, over time, and what goes with them. */
export function fairTakes({ call, status, people }: SidebarContext): Section {
  const compareFields = element("fieldset", { class: "bare" });
  const periodFields = element("fieldset", { class: "bare" });
  const compared = element("div");
  const trend = element("div");
  const reasons = element("div");
  const state = stateOf<FairState>({ by: "", evenFor: "", period: "month", answer: null });

  const load = () =>
    whileWorking({
      status,
      doing: text.comparing(),
      controls: [compareFields, periodFields],
      work: async () => {
        const { by, evenFor, period } = state.now;
        const answer = await call("sidebarCompareTakes", { by, evenFor, period });
        state.set({ by: answer.by, evenFor: answer.evenFor, period: answer.period, answer });
      },
    });
  state.on(["answer"], ({ answer }) => {
    if (answer === null) return;
    const select = (key: "by" | "evenFor" | "period", options: readonly Choice[]) => {
      const made = choice(options, state.now[key]);
      made.addEventListener("change", () => {
        state.set({ [key]: made.value });
        const at = [...compareFields.querySelectorAll("select")].indexOf(made);
        void load().then(() => {
          const again = at === -1 ? periodFields.querySelector("select") : null;
          (again ?? compareFields.querySelectorAll("select")[at])?.focus();
        });
      });
      return made;
    };
    compareFields.replaceChildren(
      field(text.compare(), select("by", answer.columns.map(columnsChoice))),
      field(text.evenedFor(), select("evenFor", answer.evenFors.map(columnsChoice))),
    );
    const periods = PERIODS.map(({ value, label }) => ({ value, label: label() }));
    periodFields.replaceChildren(field(text.period(), select("period", periods)));
  });
  const draw = () => {
    const { answer } = state.now;
    if (answer === null) return;
    compared.replaceChildren(...comparedList(answer, people.called));
    trend.replaceChildren(...trendPart(answer.trend));
    reasons.replaceChildren(...reasonsPart(answer, people.called));
  };
  state.on(["answer"], draw);
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
