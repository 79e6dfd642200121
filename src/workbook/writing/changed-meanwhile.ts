import type { MeanwhileFault } from "../../wording/writing-codes";
import { WritingError } from "../host/writing-error";

/** Cells whose content is not what it was when the write was thought out. */
export class ChangedMeanwhile extends WritingError {
  readonly asked: MeanwhileFault;

  constructor(asked: MeanwhileFault) {
    super(asked);
    this.asked = asked;
  }
}

/** Cells that were written and could not be put back, since rows have moved or a call failed. */
export class NotPutBack extends WritingError {}

export function moved(): ChangedMeanwhile {
  return new ChangedMeanwhile({ code: "moved" });
}

export function changed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile({ code: "changed", cell });
}

export function swallowed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile({ code: "swallowed", cell });
}

export function filled(cell: string, filler: string): ChangedMeanwhile {
  return new ChangedMeanwhile({ code: "filled", cell, filler });
}

export function ownFormula(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile({ code: "holdsFormula", cell });
}
