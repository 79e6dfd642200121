import { type IDisposable, type Injector, InterceptorEffectEnum } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";

/** Just before the engine's own work on spilled cells, which drops their formats. */
const PRIORITY = 99;

/** Shows the days in the cells that a formula fills as days: the engine shows their numbers. */
export function showSpillFormats(injector: Injector): IDisposable {
  const model = injector.get(FormulaDataModel);
  return injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: PRIORITY,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler(cell, { unitId, subUnitId, row, col }, next) {
      const style = model.getArrayFormulaCellData()?.[unitId]?.[subUnitId]?.[row]?.[col]?.s;
      return next(style && cell && !cell.s ? { ...cell, s: style } : cell);
    },
  });
}
