import * as text from "../../../sentences/made/orders-page";
import type { OrdersAnswer, PlanOrderRequest } from "../../../wire/orders";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { whileWorking } from "../../controls/while-working";
import type { SidebarContext } from "../../section";
import { stateOf } from "../../state";
import { type KeepPlan, keepPlan } from "./keep-plan";
import { planForm } from "./plan-form";
import { planShown } from "./plan-shown";

export interface PlanPartOptions {
  readonly context: SidebarContext;
  /** Reads the outlook anew. */
  readonly onWritten: () => Promise<void>;
}

export interface PlanPart {
  readonly element: HTMLElement;
  /** Takes from a new outlook what the form suggests; entries, plan and notices stay. */
  offer(answer: OrdersAnswer): void;
}

interface PlanState {
  /** The outlook as last read; null before. */
  readonly known: OrdersAnswer | null;
  /** The plan that is shown: for what, and what may be done with it; null before. */
  readonly plan: { readonly request: PlanOrderRequest; readonly keep: KeepPlan } | null;
}

/** A new order: the form, its plan, and what was done with it. */
export function planPart({ context, onWritten }: PlanPartOptions): PlanPart {
  const { call, status } = context;
  const form = planForm();
  const plan = element("div", {
    class: "plan",
    role: "group",
    "aria-label": text.thePlan(),
    tabindex: -1,
    hidden: true,
  });
  const changed = element("p", { class: "warning", role: "status" });
  const keepHolder = element("div");
  const done = element("div");
  const state = stateOf<PlanState>({ known: null, plan: null });

  const show = async (request: PlanOrderRequest) => {
    const answer = await call("sidebarPlanOrder", request);
    plan.replaceChildren(...planShown({ request, answer, asOf: state.now.known?.asOf ?? null }));
    const keep = keepPlan({
      context,
      request,
      known: () => state.now.known,
      fields: form.fields,
      onWritten,
      onDone: (notice) => done.prepend(notice),
    });
    keepHolder.replaceChildren(keep.element);
    state.set({ plan: { request, keep } });
    plan.hidden = false;
    plan.focus();
  };
  /** A plan that is no longer that of the form says so and can't be kept. */
  const compare = () => {
    const shown = state.now.plan;
    if (shown === null) return;
    const isSame = JSON.stringify(shown.request) === JSON.stringify(form.entered());
    plan.classList.toggle("outdated", !isSame);
    changed.textContent = isSame ? "" : text.planOutdated();
    shown.keep.allow(isSame);
  };
  state.on(["known"], ({ known, plan: shown }) => {
    if (known === null) return;
    form.offer(known);
    shown?.keep.offer(known);
  });
  state.on(["known", "plan"], compare);
  form.element.addEventListener("input", compare);
  form.element.addEventListener("submit", (event) => {
    // Let go, it would lead the page away from itself.
    event.preventDefault();
    const request = form.checked();
    if (request === null) return;
    const shown = state.now.plan;
    void whileWorking({
      status,
      doing: text.planning(),
      controls: [form.fields, ...(shown === null ? [] : [shown.keep.element])],
      work: () => show(request),
    });
  });
  return {
    element: disclosure({
      kind: "group",
      summary: element("h3", {}, text.planNew()),
      content: () => element("div", {}, form.element, changed, plan, keepHolder, done),
    }),
    offer: (known) => state.set({ known }),
  };
}
