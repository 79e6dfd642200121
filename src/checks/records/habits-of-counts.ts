import { type Cell, isBlank } from "../../core";
import { allLanguages } from "../../core/words/all-languages";
import { tenfold } from "./clean-sheet";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import { holdsCounts, type Sheet, withCells } from "./sheet";

const ABOUT = allLanguages.flatMap((words) => words.about);
const DOZEN = allLanguages.flatMap((words) => words.dozen);
const TRAYS = allLanguages.flatMap((words) => words.trays);
/** Words behind a number; the ones before it ("no", "total") say the same of a column. */
const PLANTS = ["plants", "plantas", "mudas", "plants.", "pcs", "uds", "btg", "batang", "un"];

/** Writes some of the counts that are still plain numbers; null leaves a count as it is. */
function someCounts(
  name: string,
  share: number,
  write: (count: number, dice: Dice) => string | null,
): Habit {
  return {
    name,
    at: {
      cells: (sheet, dice) =>
        withCells(sheet, holdsCounts, (cell) =>
          typeof cell === "number" && dice.chance(share) ? (write(cell, dice) ?? cell) : cell,
        ),
    },
  };
}

/** A thousand's mark in every count that has a thousand. */
function marked(count: number, mark: string): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, mark);
}

const thousandsMarked: Habit = {
  name: "thousands with a mark",
  at: {
    batches: tenfold,
    cells: (sheet, dice) => {
      // Comma, full stop, space, no-break space, narrow no-break space, apostrophe.
      const mark = dice.pick([",", ".", " ", "\u00a0", "\u202f", "'", "’"]);
      return withCells(sheet, holdsCounts, (cell) =>
        typeof cell === "number" && cell >= 1000 ? marked(cell, mark) : cell,
      );
    },
  },
};

const guesses = someCounts("counts that are guesses", 0.08, (count, dice) =>
  dice.pick([
    `~${count}`,
    `~ ${count}`,
    `≈${count}`,
    `± ${count}`,
    `${count}+`,
    `${count} ?`,
    `>${count}`,
    `${dice.pick(ABOUT)} ${count}`,
    `${dice.pick(ABOUT)}. ${count}`,
  ]),
);

const dozens = someCounts("dozens", 0.5, (count, dice) =>
  count > 0 && count % 12 === 0 ? `${count / 12} ${dice.pick(DOZEN)}${dice.pick(["", "."])}` : null,
);

const remarks = someCounts("counts with a remark", 0.08, (count, dice) =>
  dice.pick([
    `${count} (${dice.between(1, 20)} weak)`,
    `${count} (counted again)`,
    `${count} [K.]`,
    `${count}(2 trays)`,
  ]),
);

const traysTimesPlants = someCounts("trays times plants", 0.3, (count, dice) => {
  const sizes = [6, 8, 9, 12, 15, 18, 20, 24, 28, 32, 40, 54].filter(
    (size) => count % size === 0 && count / size > 1,
  );
  if (sizes.length === 0) return null;
  const size = dice.pick(sizes);
  return dice.pick([
    `${count / size} ${dice.pick(TRAYS)} x ${size}`,
    `${count / size} x ${size}`,
    `${count / size}x${size}`,
    `${count / size} ${dice.pick(TRAYS)} × ${size}`,
  ]);
});

const withWord = someCounts("counts with a word", 0.2, (count, dice) =>
  dice.pick([`${count} ${dice.pick(PLANTS)}`, `${count}${dice.pick(PLANTS)}`]),
);

const asText = someCounts("numbers held as text", 0.8, String);

const dashes: Habit = {
  name: "a dash for not counted",
  at: {
    cells: (sheet, dice) => {
      const nothing = dice.pick(["-", "--", "n/a", "nil", "?", "not counted"]);
      return withCells(sheet, holdsCounts, (cell) =>
        isBlank(cell) && dice.chance(0.7) ? nothing : cell,
      );
    },
  },
};

/** Last of the counts' habits: it takes the texts that the others have written, too. */
const fullWidthDigits: Habit = {
  name: "full-width digits",
  at: {
    cells: (sheet, dice) => {
      const share = dice.pick([0.1, 1]);
      return withCells(sheet, holdsCounts, (cell) => {
        if (typeof cell === "object" || isBlank(cell) || !dice.chance(share)) return cell;
        return fullWidth(cell);
      });
    },
  },
};

function fullWidth(cell: Cell): string {
  return String(cell).replace(/\d/g, (digit) =>
    String.fromCodePoint((digit.codePointAt(0) as number) - 0x30 + 0xff10),
  );
}

/** Where a text stands in a cell, spaces come in with it. */
const straySpaces: Habit = {
  name: "stray spaces",
  at: {
    edges: (sheet: Sheet, dice) =>
      withCells(
        sheet,
        () => true,
        (cell) => {
          if (typeof cell !== "string" || !dice.chance(0.25)) return cell;
          if (cell === "") return dice.chance(0.2) ? dice.pick([" ", "\u00a0", "  "]) : cell;
          return dice.pick([
            ` ${cell}`,
            `${cell} `,
            `\u00a0${cell}`,
            `${cell}\u00a0`,
            `${cell}\n`,
            `\t${cell}`,
            cell.replace(/ /, "  "),
            cell.replace(/ /g, "\u00a0"),
          ]);
        },
      ),
  },
};

export const habitsOfCounts: readonly Habit[] = [
  thousandsMarked,
  guesses,
  dozens,
  remarks,
  traysTimesPlants,
  withWord,
  asText,
  dashes,
  fullWidthDigits,
  straySpaces,
];
