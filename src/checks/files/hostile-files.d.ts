/** A file that is damaged or made to do harm, or merely unusual, and what has to come of it. */
export interface HostileFile {
  readonly name: string;
  /** Makes the bytes; some take a moment and much memory. */
  readonly bytes: () => Uint8Array;
  /** What the one sentence says; null when the table is to be read as if nothing were. */
  readonly says: RegExp | null;
  /** Whether making or reading it takes more than a moment. */
  readonly isLarge?: boolean;
}
/** The table in every file that can be read. */
export declare const TABLE: readonly (readonly (string | number)[])[];
/** A folder of such files; those that take long to make come last. */
export declare const HOSTILE_FILES: readonly HostileFile[];
