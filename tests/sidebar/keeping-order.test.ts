/* Longer than most: all that may happen to one order while it is added and taken back, in the same form. */

import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/orders-page";
import { noAnswer } from "../../src/sentences/made/page";
import * as writing from "../../src/sentences/made/writing";
import { dayText } from "../../src/sidebar/controls/day-words";
import type {
  AddOrderRequest,
  OrderRow,
  OrdersAnswer,
  OrderTabRequest,
} from "../../src/wire/orders";
import type { Question } from "../../src/wire/writing";
import { askedSentence } from "../../src/wording/writing";
import { escaped } from "../support/escaped";
import { axeViolations } from "./axe-violations";
import { fixedAnswers } from "./fixed-answers";
import { expectGolden, markupOf } from "./golden";
import { onceMade } from "./once-made";
import { noOrders, orders } from "./order-answers";
import { orderForm, REQUEST } from "./order-form";

const form = orderForm();
const beginning = (words: string) => new RegExp(`^${escaped(words)}`);

describe("adding it to the orders", () => {
  const add = () => form.button(text.addOrder()).click();
  const withAdded = (): OrdersAnswer => {
    const [first] = orders.orders;
    const added = { ...first, isFine: true, order: "O-12" } as OrderRow;
    return { ...orders, orders: [...orders.orders, added] };
  };

  /** An order planned, where the orders are answered one after another, one of them not before `letGo`. */
  async function plannedWithLate(
    answersWith: (late: Promise<OrdersAnswer>) => readonly (OrdersAnswer | Promise<OrdersAnswer>)[],
  ) {
    let letGo: (answer: OrdersAnswer) => void = () => {};
    const answers = answersWith(
      new Promise((resolve) => {
        letGo = resolve;
      }),
    );
    let reads = 0;
    const sidebarOrders = () => {
      reads += 1;
      return answers[reads - 1] ?? "no answer";
    };
    await form.planned({ sidebarOrders });
    return { letGo, reads: () => reads };
  }

  it("writes what is shown, says where, and reads the outlook anew", async () => {
    await form.planned();
    await form.order().fill("O-12");
    await form.page().getByLabel(text.customer()).fill(" Order desk B ");
    const before = form.asked("sidebarOrders").length;
    await add();
    await form.page().getByText(text.added()).waitFor();
    await form.settled();
    expect(form.asked("sidebarAddOrder")).toEqual([
      {
        ...{ order: "O-12", customer: "Order desk B", variety: "Corvane" },
        ...{ wanted: 150, by: "2027-12-01", sure: [] },
      },
    ]);
    expect(await form.page().locator(".written").textContent()).toMatch(
      new RegExp(
        [
          `${text.addedTitle()}: O-12`,
          `Wanted: 150 ${writing.inCell({ where: "Orders!D13" })}`,
          `By: ${dayText("2027-12-01")} ${writing.inCell({ where: "Orders!E13" })}`,
        ]
          .map(escaped)
          .join(".*"),
      ),
    );
    expect(form.asked("sidebarOrders").length).toBe(before + 1);
    expect(await form.focused()).toMatch(beginning(`${text.addedTitle()}: O-12`));
    expect(await form.button(text.addOrder()).isVisible()).toBe(false);
    expect(await axeViolations(form.page())).toEqual([]);
    expectGolden("order-kept", await markupOf(form.page(), ".plan ~ div:last-child"));
  });

  it("takes it back, reads anew, and offers it again", async () => {
    await form.planned();
    await add();
    await form.page().getByText(text.added()).waitFor();
    const before = form.asked("sidebarOrders").length;
    await form.button(writing.takeBack()).click();
    await form.page().getByText(`${writing.taken()}: `).waitFor();
    expect(form.asked("sidebarTakeBack")).toEqual([{ logId: "log-2" }]);
    await expect.poll(() => form.asked("sidebarOrders").length).toBe(before + 1);
    expect(await form.button(text.addOrder()).isVisible()).toBe(true);
  });

  // The order taken back stood in the list for seconds while the page said that all was done.
  it("says that it is taken back only once the list is read anew", async () => {
    const { letGo } = await plannedWithLate((late) => [orders, withAdded(), late]);
    await add();
    await form.page().getByText(text.added()).waitFor();
    const shown = () => form.page().locator("article.order").filter({ hasText: "O-12" }).count();
    expect(await shown()).toBe(1);
    await form.button(writing.takeBack()).click();
    await form.page().getByText(text.workingOut()).waitFor();
    expect(await form.status()).not.toContain(writing.takenDone());
    letGo(orders);
    await form.page().locator("#status").getByText(writing.takenDone()).waitFor();
    expect(await shown()).toBe(0);
  });

  it("shows what is asked with both values, and writes only on the person's word", async () => {
    const question: Question = {
      id: "a",
      ask: { code: "nameAlready", order: "O-07", row: "4", tab: "Orders" },
      stands: "O-07",
      would: "O-07",
    };
    const words = askedSentence(question.ask);
    await form.planned({
      sidebarAddOrder: (request: AddOrderRequest) =>
        request.sure.length === 0
          ? { written: [], asked: [question], logId: null }
          : (fixedAnswers.sidebarAddOrder?.(request) ?? "no answer"),
    });
    await form.order().fill("O-07");
    await add();
    await form.page().getByText(words).waitFor();
    expect(await form.focused()).toMatch(beginning(writing.notYet()));
    expect(await form.page().locator(".asked .pairs > *").allTextContents()).toEqual([
      ...[writing.stands(), "O-07", writing.would(), "O-07"],
    ]);
    expect(await axeViolations(form.page())).toEqual([]);
    await form.button(writing.leave()).click();
    expect(await form.status()).toContain(text.leftUnwritten());
    expect(await form.focused()).toBe(text.addOrder());
    await add();
    await form.page().getByText(words).waitFor();
    // What was asked about is what is written, whatever is typed since.
    await form.page().getByLabel(text.customer()).fill("someone else");
    await form.button(writing.writeAnyway()).click();
    await form.page().getByText(`${text.addedTitle()}: `).waitFor();
    const requests = form.asked("sidebarAddOrder") as AddOrderRequest[];
    expect(requests.map(({ sure }) => sure)).toEqual([[], [], [question.id]]);
    expect(requests.at(-1)?.customer).toBe("");
  });

  it("forgets what was asked when the form is changed", async () => {
    const question = { id: "a", ask: { code: "moved" }, stands: null, would: null } as const;
    await form.planned({
      sidebarAddOrder: () => ({ written: [], asked: [question], logId: null }),
    });
    await add();
    await form.page().getByText(askedSentence(question.ask)).waitFor();
    await form.wanted().fill("1500");
    expect(await form.button(writing.writeAnyway()).count()).toBe(0);
  });

  it("is not lost from sight to an older answer that comes late", async () => {
    const { letGo, reads } = await plannedWithLate((late) => [orders, late, withAdded()]);
    await form.button(text.readAgain()).click();
    await expect.poll(reads).toBe(2);
    await add();
    await form
      .page()
      .getByText(text.pressing({ pressing: 5, all: 9 }))
      .waitFor();
    letGo(orders);
    await form.settled();
    expect(
      await form
        .page()
        .getByText(text.pressing({ pressing: 5, all: 9 }))
        .count(),
    ).toBe(1);
  });

  it("makes the tab first where there is none", async () => {
    const tab = onceMade(noOrders, orders);
    await form.planned({
      sidebarOrders: tab.read,
      sidebarMakeOrders: tab.make({ tab: "Orders" }),
    });
    await form.page().getByText(text.tabMadeFirst()).waitFor();
    await add();
    await form.page().getByText(`${text.addedTitle()}: O-12`).waitFor();
    await form.settled();
    expect(
      form
        .sidebar()
        .asked.slice(-3)
        .map(({ name }) => name),
    ).toEqual([...["sidebarMakeOrders", "sidebarAddOrder", "sidebarOrders"]]);
    expect(await form.page().getByText(text.tabMadeFirst()).isVisible()).toBe(false);
    expect(await form.page().getByRole("article").count()).toBe(8);
  });

  it("tells what went wrong and loses nothing", async () => {
    await form.planned({
      sidebarAddOrder: () => {
        throw new Error("Someone else is writing. Try again in a moment.");
      },
    });
    await form.page().getByLabel(text.customer()).fill("kept");
    await add();
    await form.page().getByText("Someone else is writing.").waitFor();
    expect(await form.page().getByLabel(text.customer()).inputValue()).toBe("kept");
    expect(await form.shown().isVisible()).toBe(true);
    expect(await form.button(text.addOrder()).isEnabled()).toBe(true);
    expect(await form.focused()).toBe(text.addOrder());
  });

  it("says that it is written also where the outlook then can't be read", async () => {
    let reads = 0;
    await form.planned({
      sidebarOrders: () => {
        reads += 1;
        if (reads > 1) throw new Error("orders row 3 is still loading.");
        return orders;
      },
    });
    await add();
    await form.page().getByText(text.written()).waitFor();
    expect(await form.status()).toContain("orders row 3 is still loading.");
    expect(await form.page().locator(".written").textContent()).toContain(text.addedTitle());
    expect(await form.button(text.addOrder()).isVisible()).toBe(false);
  });
});

describe("making a tab", () => {
  it("asks for what is shown under the order's name, and says which tab was made", async () => {
    await form.planned();
    await form.button(text.addOrder()).click();
    await form.page().getByText(text.added()).waitFor();
    await form.settled();
    await form.button(text.makeTab()).click();
    await form.page().getByText(`${text.madeTabTitle()} Plan O-12`).waitFor();
    await form.settled();
    // The order had no name: it is the one that was given.
    const expected: OrderTabRequest = { ...REQUEST, order: "O-12" };
    expect(form.asked("sidebarOrderTab")).toEqual([expected]);
    expect(await form.status()).toContain(text.madeTab({ tab: "Plan O-12" }));
    expect(await form.focused()).toBe(text.makeTab());
    // What was written before can still be taken back.
    expect(await form.button(writing.takeBack()).isVisible()).toBe(true);
  });

  it("tells what went wrong", async () => {
    await form.planned({ sidebarOrderTab: () => "no answer" });
    await form.button(text.makeTab()).click();
    await form.page().getByText(noAnswer()).waitFor();
    expect(await form.button(text.makeTab()).isEnabled()).toBe(true);
  });
});

describe("without a mouse", () => {
  it("an order is entered, planned, added, taken back and made a tab", async () => {
    await form.open();
    const press = async (...keys: readonly string[]) => {
      for (const key of keys) await form.page().keyboard.press(key);
    };
    const tabTo = async (words: string) => {
      for (let stops = 0; stops < 60 && (await form.focused()) !== words; stops += 1)
        await press("Tab");
      expect(await form.focused()).toBe(words);
    };
    await form.page().locator("summary", { hasText: text.planNew() }).focus();
    await press("Tab");
    await form.page().keyboard.type("Corvane");
    await press("Tab");
    await form.page().keyboard.type("150");
    await press("Tab");
    await form.page().keyboard.type("12012027");
    await press("Enter");
    await form.page().getByText(text.neededInAll()).waitFor();
    await form.settled();
    expect(form.asked("sidebarPlanOrder")).toEqual([{ ...REQUEST, harvest: "" }]);
    expect(await form.focused()).toMatch(
      beginning(text.planOfVariety({ wanted: 150, by: dayText("2027-12-01"), variety: "Corvane" })),
    );
    await tabTo(text.addOrder());
    await press("Enter");
    await form.page().getByText(text.added()).waitFor();
    await form.settled();
    await press("Tab");
    expect(await form.focused()).toBe(writing.takeBack());
    await press("Enter");
    await form.page().getByText(`${writing.taken()}: `).waitFor();
    expect(await form.focused()).toMatch(beginning(`${writing.taken()}: `));
    await form.page().keyboard.press("Shift+Tab");
    expect(await form.focused()).toBe(text.makeTab());
    await press("Enter");
    await form.page().getByText(text.madeTabTitle()).waitFor();
  });
});
