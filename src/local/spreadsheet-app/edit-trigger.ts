import type { UserEdit } from "./user-edits";

/** The simple trigger onEdit: runs the script's function after edits of the person. */
export interface EditTrigger {
  /** True to lose every edit from now on, as real triggers now and then do. */
  dropsAll: boolean;
  /** How many edits were lost so far. */
  readonly dropped: number;
  hear(edit: UserEdit): void;
  /** Resolves when no edit waits any more. */
  idle(): Promise<void>;
}

/** While one edit is worked on, this many wait; more are lost. Source: the guide on simple triggers. */
const MOST_WAITING = 2;

/** @param run calls the script's function; what it throws goes to `failed` */
export function editTrigger(
  run: (edit: UserEdit) => Promise<void>,
  failed: (error: unknown) => void,
): EditTrigger {
  const waiting: UserEdit[] = [];
  let dropped = 0;
  let working: Promise<void> | null = null;

  const work = async () => {
    // Not at once: the engine is still busy with the edit.
    await Promise.resolve();
    for (let edit = waiting.shift(); edit; edit = waiting.shift()) {
      try {
        await run(edit);
      } catch (error) {
        failed(error);
      }
    }
    working = null;
  };

  const trigger: EditTrigger = {
    dropsAll: false,
    get dropped() {
      return dropped;
    },
    hear(edit) {
      if (trigger.dropsAll || waiting.length >= MOST_WAITING) {
        dropped += 1;
        return;
      }
      waiting.push(edit);
      working ??= work();
    },
    idle: async () => {
      while (working) await working;
    },
  };
  return trigger;
}
