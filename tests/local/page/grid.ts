import type { Page } from "playwright-core";

// The page as test-handle.ts gives it; the tests' own types end at the browser's door.
// biome-ignore lint/suspicious/noExplicitAny: a script has no types either
declare const localPage: any;

/** What cells show. @param cells such as "A1:B2" */
export function readCells(page: Page, sheet: string, cells: string): Promise<string[][]> {
  return page.evaluate(
    ([name, range]) =>
      localPage.app().getActive().getSheetByName(name).getRange(range).getDisplayValues(),
    [sheet, cells] as const,
  );
}

/** Clicks a cell of the tab in front, near the top left, whose columns have the usual width. */
export async function clickCell(page: Page, cell: string): Promise<void> {
  const [, letter = "A", row = "1"] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
  const boxes = await Promise.all(
    (await page.locator("#grid canvas").all()).map((canvas) => canvas.boundingBox()),
  );
  const size = (box: (typeof boxes)[number]) => (box ? box.width * box.height : 0);
  const grid = boxes.reduce((best, box) => (size(box) > size(best) ? box : best), null);
  if (!grid) throw new Error("There is no grid");
  const { header, width, height, top } = GRID;
  const column = letter.charCodeAt(0) - 65;
  await page.mouse.click(
    grid.x + header + (column + 0.5) * width,
    grid.y + top + (Number(row) - 0.5) * height,
  );
}

/** The engine's usual sizes in pixels: row headers, columns, rows, column headers. */
const GRID = { header: 46, width: 88, height: 24, top: 20 };

/** Types into a cell of the tab in front by the keyboard, as a person does, and waits for the calculation. */
export async function typeInGrid(page: Page, cell: string, text: string): Promise<void> {
  await clickCell(page, cell);
  const look = (at: string): string => {
    const range = localPage.app().getActive().getActiveSheet().getRange(at);
    return `${range.getFormula()} ${range.getDisplayValue()}`;
  };
  const before = await page.evaluate(look, cell);
  await page.keyboard.type(text, { delay: 25 });
  // Enter would take a suggestion of the formula helper, where one is shown.
  await page.locator('ul[data-u-comp="sheets-formula-editor"]').waitFor({ state: "detached" });
  await page.keyboard.press("Enter");
  // The grid takes its time to put what was typed into the cell.
  await page.waitForFunction(
    ([at, old]) => {
      const range = localPage.app().getActive().getActiveSheet().getRange(at);
      return `${range.getFormula()} ${range.getDisplayValue()}` !== old;
    },
    [cell, before] as const,
  );
  await page.evaluate(() => localPage.settled());
}
