import type { BatchFact, EventFact } from "../words";

/** What a column of a records table can hold. */
export type ColumnTarget =
  | { readonly kind: "fact"; readonly fact: BatchFact }
  | { readonly kind: "event"; readonly fact: EventFact }
  | { readonly kind: "step"; readonly key: string; readonly what: "day" | "count" };

/** One way to understand a header. */
export interface Understanding {
  readonly target: ColumnTarget;
  /** 3: the header is a known phrase. 2: known once "date", "no." and the like are set aside. */
  readonly sureness: 2 | 3;
  /** The header names a step without saying whether days or plants are meant. */
  readonly openAspect: boolean;
}

/** A target as text, such as "fact note", "event eventDay", "step grafting count". */
export type TargetKey =
  | `fact ${BatchFact}`
  | `event ${EventFact}`
  | `step ${string} ${"day" | "count"}`;

/** Equal for equal targets. */
export function targetKey(target: ColumnTarget): TargetKey {
  if (target.kind === "step") return `step ${target.key} ${target.what}`;
  return target.kind === "fact" ? `fact ${target.fact}` : `event ${target.fact}`;
}

/** A header read by what its single words say; `target` null where it names what no column of ours holds. */
export interface ByParts {
  readonly target: ColumnTarget | null;
  /** Whether it is the day on which scions were cut, which take rates are compared by. */
  readonly isScionsCut: boolean;
  /** Whether the header says that it holds days or plants. */
  readonly aspect: "day" | "count" | null;
  /** Whether plants may be counted at its step. */
  readonly isCounted: boolean;
  /** False where it can only be asked about. */
  readonly sure: boolean;
  /** Whether it is read where its place in the row and its cells agree, though it isn't sure. */
  readonly likely: boolean;
  /** "Alive 1 mth": 30; 0 where no time is said. */
  readonly afterDays: number;
}

/** Understands the headers of records tables. */
export interface HeaderWords {
  /** Keys of the steps that columns may be of, in the timetable's order. */
  readonly stepKeys: readonly string[];
  /** What a header's words say one by one; null when that is nothing. For headers that are not understood. */
  byParts(header: string): ByParts | null;
  /** Every way to understand a header, surest first; empty when it is not known. */
  understand(header: string): readonly Understanding[];
}
