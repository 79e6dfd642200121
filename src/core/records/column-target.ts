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

/** Understands the headers of records tables. */
export interface HeaderWords {
  /** Every way to understand a header, surest first; empty when it is not known. */
  understand(header: string): readonly Understanding[];
}
