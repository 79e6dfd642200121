/** Cells whose content is not what it was when the write was thought out. */
export class ChangedMeanwhile extends Error {}

/** Cells that were written and could not be put back, since rows have moved or a call failed. */
export class NotPutBack extends Error {}

export function moved(): ChangedMeanwhile {
  return new ChangedMeanwhile("Rows or columns of the table were moved just now: look again");
}

export function changed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile(`${cell} was changed by somebody else just now: look again`);
}

export function swallowed(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile(
    `${cell} did not take what was written: it may be part of a merged cell, or hidden by a filter`,
  );
}

export function filled(cell: string, filler: string): ChangedMeanwhile {
  return new ChangedMeanwhile(
    `${cell} is filled by the formula in ${filler}: it is not written over`,
  );
}

export function ownFormula(cell: string): ChangedMeanwhile {
  return new ChangedMeanwhile(`${cell} holds a formula: it is not written over`);
}
