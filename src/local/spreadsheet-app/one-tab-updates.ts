import type { FormulaDataModel } from "@univerjs/engine-formula";

/**
 * Lets the engine look through the written tab alone after a write. By itself it collects the formulas of
 * every tab for each write and then uses those of the one (`FormulaDataModel.updateFormulaData`, version
 * 0.25.1): in a workbook of many tabs that is most of what a write takes.
 */
export function updateOneTab(formulas: FormulaDataModel): void {
  const everyTab = formulas.getFormulaData.bind(formulas);
  const update = formulas.updateFormulaData.bind(formulas);
  let written: readonly [unit: string, tab: string] | null = null;
  formulas.getFormulaData = () => {
    if (!written) return everyTab();
    const [unit, tab] = written;
    return { [unit]: { [tab]: formulas.getSheetFormulaData(unit, tab) ?? {} } };
  };
  formulas.updateFormulaData = (unit, tab, cells) => {
    written = [unit, tab];
    try {
      return update(unit, tab, cells);
    } finally {
      written = null;
    }
  };
}
