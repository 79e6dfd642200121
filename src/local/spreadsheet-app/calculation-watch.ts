import {
  type ICommandInfo,
  ICommandService,
  type IExecutionOptions,
  type Injector,
} from "@univerjs/core";
import {
  IActiveDirtyManagerService,
  SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { ClearSelectionFormatCommand, SetBorderCommand, SetStyleCommand } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

/** Knows when every formula is calculated. */
export interface CalculationWatch {
  /** Resolves when all that was written before is calculated; at once when nothing is open. */
  settled(): Promise<void>;
  stop(): void;
}

const LOOK_AGAIN_MS = 3;
const LONGEST_CALCULATION_MS = 120_000;
/**
 * A change after which the engine calculates nothing though it said that it would: so long is waited,
 * which is far more than it ever takes to begin.
 */
const NOTHING_BEGINS_MS = 5000;

const LOOK_ONLY: readonly string[] = [
  SetStyleCommand.id,
  SetBorderCommand.id,
  ClearSelectionFormatCommand.id,
];

/** Make it before the workbook is opened, so that it sees the first calculation. */
export function calculationWatch(injector: Injector): CalculationWatch {
  const commands = injector.get(ICommandService);
  let session: FormulaCalculationSessionService | null = null;
  let first: Promise<void> | null = null;

  /** Since when a calculation is owed: the engine begins it some time after the change; null if none is. */
  let owedSince: number | null = null;
  const listener = commands.onCommandExecuted((command, options) => {
    if (command.id === SetFormulaCalculationStartMutation.id) owedSince = null;
    else if (callsForCalculation(command, options)) owedSince = performance.now();
  });
  const callsForCalculation = (command: Readonly<ICommandInfo>, options?: IExecutionOptions) => {
    if (options?.fromFormula || options?.applyFormulaCalculationResult) return false;
    if (!injector.get(IActiveDirtyManagerService).get(command.id)) return false;
    // The engine's own exceptions: what only changes the look, and what is done in this place alone.
    const { trigger } = (command.params ?? {}) as { trigger?: string };
    return !options?.onlyLocal && !LOOK_ONLY.includes(trigger ?? "");
  };

  const isBusy = () => {
    if (!session) return true;
    if (owedSince !== null && performance.now() - owedSince < NOTHING_BEGINS_MS) return true;
    const { started, completed, stopped, resultApplied } = session.state;
    return started && !((completed || stopped) && resultApplied);
  };

  return {
    async settled() {
      // The service comes into being with the workbook.
      session ??= injector.get(FormulaCalculationSessionService);
      first ??= session.waitForLatestApplied(LONGEST_CALCULATION_MS);
      await first;
      const patience = performance.now() + LONGEST_CALCULATION_MS;
      while (isBusy()) {
        if (performance.now() > patience)
          throw new Error("The calculation does not come to an end");
        await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
      }
    },
    stop: () => listener.dispose(),
  };
}
