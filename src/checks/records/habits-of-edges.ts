import type { Cell } from "../../core";
import type { Habit } from "./habit";

const TITLES: readonly (readonly Cell[])[] = [
  ["Nursery register"],
  ["Hillside nursery (invented)", "", "", "Register of batches"],
  ["Updated by K., 3/9/2026"],
  ["Counts are plants, not trays"],
  ["Season 2025"],
  ["", "", "PROPAGATION"],
  ["Page", 1],
  ["Vivero (inventado): registro de lotes 2026"],
  [],
  [],
];

const titleLines: Habit = {
  name: "title lines above",
  at: {
    edges: (sheet, dice) => {
      const lines = Array.from({ length: dice.between(1, 6) }, () => dice.pick(TITLES));
      const [first, ...others] = sheet.tables;
      if (first === undefined) return sheet;
      return { ...sheet, tables: [{ ...first, above: [...lines, ...first.above] }, ...others] };
    },
  },
};

const NOTES = [
  "* counted again after the storm",
  "Weak plants were counted as alive.",
  "Checked by office",
  "Note: seeds of our own trees",
  "N.B. les pertes sont à vérifier",
  "Total to be checked by K.",
  "Bay 2 is under repair until March 2026",
  "Obs.: contagem feita em duplicado",
];

const notesBelow: Habit = {
  name: "notes below",
  at: {
    edges: (sheet, dice) => {
      const blank: Cell[][] = Array.from({ length: dice.below(3) }, () => []);
      const notes = Array.from({ length: dice.between(1, 3) }, (): Cell[] => [dice.pick(NOTES)]);
      return { ...sheet, below: [...sheet.below, ...blank, ...notes] };
    },
  },
};

const SIGNATURES: readonly (readonly Cell[])[] = [
  ["Remarks:", "Bay 2 floods in June."],
  ["Signed", "", "Kesto"],
  ["Checked by:", "Mirel", "", "3/9/2026"],
  ["Source of seed", "own trees"],
];

const signature: Habit = {
  name: "a signature below",
  at: {
    edges: (sheet, dice) => ({
      ...sheet,
      below: [...sheet.below, ...dice.pick<Cell[][]>([[], [[]]]), dice.pick(SIGNATURES)],
    }),
  },
};

export const habitsOfEdges: readonly Habit[] = [titleLines, notesBelow, signature];
