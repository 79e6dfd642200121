import { readSamples, seedBatches } from "../../src/core";
import { gridOf } from "../../src/core/cells/cell";
import type { FaceAnswer, FaceName } from "../../src/wire/faces";
import { seedTable } from "../../src/wording/germination-table";
import { sampleAnswers } from "./sample-answers";

/** Trays of an invented nursery, of which the third comes up poorly: the sample nursery keeps none. */
const ROWS = [
  ["Batch", "Tray", "Seeds sown", "Day", "Came up"],
  ["H26-058", 1, 100, 14, 71],
  ["H26-058", 1, "", 21, 18],
  ["H26-059", 1, 100, 14, 66],
  ["H26-059", 1, "", 21, 20],
  ["H26-060", 1, 100, 14, 11],
  ["H26-060", 1, "", 21, 12],
];

/** The answer of the sample nursery, and of samples of seed, which it has none of. */
export function faceOf(face: FaceName): FaceAnswer {
  if (face !== "germination") return sampleAnswers.sidebarFace({ face }) as FaceAnswer;
  return seedTable(
    seedBatches(readSamples(gridOf(ROWS), { decimalMark: null, localeOrder: null })),
  ) as FaceAnswer;
}
