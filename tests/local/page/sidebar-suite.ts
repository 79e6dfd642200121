import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import * as text from "../../../src/sentences/made/local-page";
import { isChromiumMissing } from "./chromium";
import { readCells } from "./grid";
import { type LocalPage, openedPage } from "./opened-page";

declare const localPage: LocalPage;

describe.skipIf(isChromiumMissing)("the sidebar and the bar of the local page", () => {
  const opened = openedPage();

  it("opens the sidebar in a frame of 300 px that talks as google.script.run does", async () => {
    const page = opened.page();
    const frame = await opened.openSidebar();
    expect(await page.textContent("#sidebar h2")).toBe("Trial side");
    expect((await page.locator("#sidebar iframe").boundingBox())?.width).toBe(300);
    await frame.evaluate("runAll()");
    const log = await opened.logOf(frame, 10);
    expect(
      log.filter((line) => !/^(?:echo|day|globals|form|error|loads)/.test(line ?? "")),
    ).toEqual([
      "ready",
      "returns undefined",
      "throws Failed due to illegal value in property: when",
      "private undefined",
    ]);
    expect([...log].sort()).toEqual(
      expect.arrayContaining([
        'echo {"a":[1,null,"x"]} mine',
        "day null",
        'globals "undefined,undefined,undefined,undefined,object"',
        'form {"bench":"Bench 1"}',
        "error failing on purpose",
        "loads 1",
      ]),
    );
  });

  it("answers in any order and loses no call", async () => {
    const frame = await opened.openSidebar();
    await frame.evaluate("callMany(25)");
    await frame.waitForFunction(
      () => (window as unknown as { order: unknown[] }).order.length === 25,
    );
    const order = (await frame.evaluate("window.order")) as number[];
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: 25 }, (_, at) => at));
    expect(order).not.toEqual(Array.from({ length: 25 }, (_, at) => at));
    // Ten are under way at once: the last ones can't be among the first.
    expect(order.slice(0, 5).every((one) => one < 15)).toBe(true);
  });

  it("keeps the sidebar apart: no way to the page, to files or to the net; downloads work", async () => {
    const page = opened.page();
    const frame = await opened.openSidebar();
    await frame.evaluate("reach()");
    expect((await opened.logOf(frame, 4)).slice(1).sort()).toEqual([
      "fetch refused",
      "image refused",
      "parent out of reach",
    ]);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      frame.evaluate("download()"),
    ]);
    expect(download.suggestedFilename()).toBe("due.ics");
    expect(readFileSync(await download.path(), "utf8")).toBe("BEGIN:VCALENDAR");
  });

  it("closes the sidebar from inside and by the button, and keeps one at a time", async () => {
    const page = opened.page();
    const frame = await opened.openSidebar();
    // In a turn of its own: closing takes the frame away, and with it the answer to this call.
    await frame.evaluate("void setTimeout(() => google.script.host.close(), 0)");
    await page.waitForSelector("#sidebar", { state: "hidden" });
    await opened.openSidebar();
    await opened.openSidebar();
    expect(await page.locator("#sidebar iframe").count()).toBe(1);
    await page.click("#sidebar .top button");
    await page.waitForSelector("#sidebar", { state: "hidden" });
  });

  it("writes what the sidebar asks for, counts it, and brings the selected cell into view", async () => {
    const page = opened.page();
    const frame = await opened.openSidebar();
    const rows = [
      ["=1+1", "'=1+1"],
      ["🌱", "<b>"],
    ];
    await page.evaluate(() => localPage.meter.reset());
    await frame.evaluate(`run.withSuccessHandler(say('wrote')).writeAll(${JSON.stringify(rows)})`);
    expect((await opened.logOf(frame, 2))[1]).toBe("wrote 2");
    await page.evaluate(() => localPage.settled());
    expect(await readCells(page, "Written", "A1:B2")).toEqual([
      ["2", "=1+1"],
      ["🌱", "<b>"],
    ]);
    expect(
      await page.evaluate(() => localPage.app().getActive().getActiveCell().getA1Notation()),
    ).toBe("C40");
    // Row 40 lies below what fits into the window: it is seen only if the grid has scrolled.
    const grid = await page.locator("#grid").boundingBox();
    await page.mouse.click((grid?.x ?? 0) + 200, (grid?.y ?? 0) + (grid?.height ?? 0) - 100);
    expect(
      await page.evaluate(() => localPage.app().getActive().getActiveCell().getRow()),
    ).toBeGreaterThan(35);
    expect(
      await page.evaluate(() => [
        localPage.meter.calls.get("Range.setValues"),
        localPage.isLockFree,
      ]),
    ).toEqual([1, true]);
    await page.evaluate(() => localPage.meter.failAt(3));
    await frame.evaluate("run.writeAll([[1]])");
    expect((await opened.logOf(frame, 3))[2]).toMatch(/^error Service Spreadsheets failed/);
  });

  it("asks, shows messages, and says when a menu item breaks", async () => {
    const page = opened.page();
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.message());
      void dialog.accept();
    });
    await page.click("#menus .opener");
    await page.click("#menus .item:text('Say hello')");
    await page.waitForSelector("#messages >> text=Hello there");
    expect(asked[0]).toBe(text.askYesNo({ prompt: "Greet?\n\nA message will show." }));
    await page.click("#messages button");
    await page.click("#menus .opener");
    await page.click("#menus .item:text('Break')");
    await page.waitForSelector("#messages .trouble >> text=It broke");
  });

  it("works by keyboard and at 200 % zoom", async () => {
    const page = opened.page();
    // 1280 x 800 at 200 % is 640 x 400 in CSS pixels.
    await page.setViewportSize({ width: 640, height: 400 });
    await page.focus("#menus .opener");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#sidebar iframe");
    const [grid, side, root] = await page.evaluate(() =>
      ["#grid", "#sidebar iframe", "html"].map((name) => {
        const { width, height, right } = (
          document.querySelector(name) as Element
        ).getBoundingClientRect();
        return { width, height, right };
      }),
    );
    expect(side?.width).toBe(300);
    expect(side?.right).toBeLessThanOrEqual(640);
    expect(grid?.width).toBeGreaterThan(300);
    expect(grid?.height).toBeGreaterThan(250);
    expect(root?.width).toBe(640);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(640);
  });

  it("has no fault that axe-core finds in its own parts", async () => {
    const page = opened.page();
    await opened.openSidebar();
    await page.click("#menus .opener");
    await page.evaluate(
      readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"),
    );
    const faults = await page.evaluate(async () => {
      // biome-ignore lint/suspicious/noExplicitAny: put into the page a line above
      const { violations } = await (window as any).axe.run({ exclude: [["#grid"], ["iframe"]] });
      return violations.map((one: { id: string; nodes: { html: string }[] }) => [
        one.id,
        ...one.nodes.map(({ html }) => html),
      ]);
    });
    expect(faults).toEqual([]);
  });
});
