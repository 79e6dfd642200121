/** A part of nothing but blanks. */
export interface BlankPart {
  readonly name: string;
  /** Bytes when unpacked. */
  readonly size: number;
  /** What the directory says of the size, where it lies. */
  readonly said?: number;
  /** So many entries of the directory point to this one part, each under a name of its own. */
  readonly copies: number;
}
/**
 * A zip file as no program writes it: with a part that is small and unpacks to any size, and with a
 * directory that need not tell the truth. Source: APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.16.
 */
export declare function zipOf(
  parts: readonly (readonly [string, Uint8Array])[],
  blank: BlankPart,
): Uint8Array;
