import { CommandType, ICommandService, type Injector } from "@univerjs/core";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";

/** Knows when every formula is calculated. */
export interface CalculationWatch {
  /** Resolves when all that was written before is calculated; at once when nothing is open. */
  settled(): Promise<void>;
  stop(): void;
}

/** The engine waits 100 ms after a change before it calculates; a bit more to be on the safe side. */
const QUIET_MS = 140;
const LOOK_AGAIN_MS = 15;
const LONGEST_CALCULATION_MS = 120_000;

/** Make it before the workbook is opened, so that it sees the first calculation. */
export function calculationWatch(injector: Injector): CalculationWatch {
  const commands = injector.get(ICommandService);
  let session: FormulaCalculationSessionService | null = null;
  let lastChange = performance.now();
  let first: Promise<void> | null = null;

  const listener = commands.onCommandExecuted((command, options) => {
    if (command.type !== CommandType.MUTATION) return;
    if (options?.fromFormula || options?.applyFormulaCalculationResult) return;
    lastChange = performance.now();
  });

  const isBusy = () => {
    if (!session) return true;
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
      while (isBusy() || performance.now() - lastChange < QUIET_MS) {
        if (performance.now() > patience)
          throw new Error("The calculation does not come to an end");
        await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
      }
    },
    stop: () => listener.dispose(),
  };
}
