import { lastCounted, type Records } from "../records";
import { batchMethods, methodWord, type Timetable } from "../timetable";
import { type NearPair, nearPairs } from "./near-names";

/** A word for a method that is read as none, or may be any of several. */
export interface OpenMethod {
  /** As it is told: see methodWord. */
  readonly word: string;
  /** Names of the methods that it fits; none where no method does. */
  readonly fits: readonly string[];
  readonly batches: number;
  /** Plants of these batches at their last counts, whole number. */
  readonly plants: number;
}

/** Words in cells of which a person alone can say what they mean. */
export interface OpenWords {
  /** Those of most plants first. */
  readonly methods: readonly OpenMethod[];
  /** Those of most batches first. */
  readonly pairs: readonly NearPair[];
}

/** What is to be asked of the words in some records, but for what was told or told to be left alone. */
export function openWords(records: Records, timetable: Timetable): OpenWords {
  const read = batchMethods(timetable);
  const methods = new Map<string, OpenMethod>();
  for (const batch of records.batches) {
    const reading = read(batch);
    if (reading.code === "method") continue;
    const word = methodWord(batch);
    if (records.words?.isLeftAlone(word)) continue;
    const before = methods.get(word);
    const last = lastCounted(batch);
    methods.set(word, {
      word,
      fits: reading.code === "several-methods" ? reading.methods.map(({ name }) => name) : [],
      batches: (before?.batches ?? 0) + 1,
      plants: (before?.plants ?? 0) + (last === null ? 0 : (batch.counts[last] ?? 0)),
    });
  }
  return {
    methods: [...methods.values()].sort((a, b) => b.plants - a.plants || b.batches - a.batches),
    pairs: [...nearPairs(records)].sort((a, b) => b.batches + b.others - a.batches - a.others),
  };
}
