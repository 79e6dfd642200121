import crc32 from "crc-32";
import { Inflate } from "fflate";
import { badWorkbook, hasPassword, unpackedTooLarge } from "../sentences/made/file-faults";
import { MOST_PARTS, MOST_UNPACKED_BYTES } from "./file-limits";
import { PersonError } from "./person-error";

/** One entry of a zip file's directory. */
interface Entry {
  readonly name: string;
  readonly isLocked: boolean;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly sum: number;
  readonly packedSize: number;
  readonly size: number;
  readonly at: number;
}

/**
 * Unpacks parts of a zip file, each held against its size and check sum. Nothing is trusted: what
 * does not fit is damage, and more than the limit is not unpacked.
 * Source of the format: APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.16, 4.5.3.
 *
 * @param fileName for the message
 * @param isWanted by a part's name; others are not unpacked
 * @returns the parts by their name
 * @throws PersonError when the file is damaged, has a password, or is too large
 */
export function zipParts(
  bytes: Uint8Array,
  fileName: string,
  isWanted: (name: string) => boolean,
): Record<string, Uint8Array> {
  const damaged = new PersonError(badWorkbook({ file: fileName }));
  try {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const wanted = directory(view).filter(({ name }) => isWanted(name));
    if (new Set(wanted.map(({ name }) => name)).size < wanted.length) throw damaged;
    if (wanted.some(({ isLocked }) => isLocked)) {
      throw new PersonError(hasPassword({ file: fileName }));
    }
    const size = wanted.reduce((sum, entry) => sum + entry.size, 0);
    if (size > MOST_UNPACKED_BYTES) {
      throw new PersonError(
        unpackedTooLarge({
          file: fileName,
          size: megabytes(size),
          most: megabytes(MOST_UNPACKED_BYTES),
        }),
      );
    }
    const parts: Record<string, Uint8Array> = Object.create(null);
    for (const entry of wanted) parts[entry.name] = unpacked(view, entry);
    return parts;
  } catch (error) {
    throw error instanceof PersonError ? error : damaged;
  }
}

const megabytes = (bytes: number) => Math.ceil(bytes / 2 ** 20);

const END_MARK = 0x06054b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;
const ENTRY_MARK = 0x02014b50;
const ENTRY_LENGTH = 46;
const LOCAL_MARK = 0x04034b50;
const LOCAL_LENGTH = 30;

/** The directory at the end of the file. @throws RangeError or Error when there is none */
function directory(view: DataView): Entry[] {
  let end = view.byteLength - END_LENGTH;
  const least = Math.max(0, end - LONGEST_COMMENT);
  while (end >= least && view.getUint32(end, true) !== END_MARK) end -= 1;
  if (end < least) throw new Error("no end of the directory");
  const count = view.getUint16(end + 10, true);
  if (count > MOST_PARTS) throw new Error("too many parts");
  const names = new TextDecoder();
  const entries: Entry[] = [];
  for (let at = view.getUint32(end + 16, true); entries.length < count; ) {
    if (view.getUint32(at, true) !== ENTRY_MARK) throw new Error("no entry");
    const nameLength = view.getUint16(at + 28, true);
    const extraLength = view.getUint16(at + 30, true);
    const afterName = at + ENTRY_LENGTH + nameLength;
    const [size, packedSize, start] = longNumbers(view, {
      short: [
        view.getUint32(at + 24, true),
        view.getUint32(at + 20, true),
        view.getUint32(at + 42, true),
      ],
      start: afterName,
      length: extraLength,
    });
    entries.push({
      name: names.decode(part(view, at + ENTRY_LENGTH, nameLength)),
      isLocked: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      sum: view.getUint32(at + 16, true),
      packedSize,
      size,
      at: start,
    });
    at = afterName + extraLength + view.getUint16(at + 32, true);
  }
  return entries;
}

/** Numbers that stand as "too long" are in an extra field, in the same order. */
function longNumbers(
  view: DataView,
  {
    short,
    start,
    length,
  }: {
    readonly short: readonly [number, number, number];
    readonly start: number;
    readonly length: number;
  },
): [number, number, number] {
  const TOO_LONG = 0xffffffff;
  const long: [number, number, number] = [...short];
  for (let at = start; at + 4 <= start + length; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    let next = at + 4;
    for (const [index, value] of short.entries()) {
      if (value !== TOO_LONG) continue;
      long[index] = Number(view.getBigUint64(next, true));
      next += 8;
    }
  }
  return long;
}

/** So much is unpacked at a time: at most a thousand times as much comes out before it is looked at. */
const SLICE = 16_384;

function unpacked(view: DataView, entry: Entry): Uint8Array {
  if (view.getUint32(entry.at, true) !== LOCAL_MARK) throw new Error("no part");
  const lengths = view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  const packed = part(view, entry.at + LOCAL_LENGTH + lengths, entry.packedSize);
  const out = entry.method === 0 ? packed : inflated(packed, entry);
  if (out.length !== entry.size) throw new Error("another size");
  if (crc32.buf(out) >>> 0 !== entry.sum) throw new Error("another check sum");
  return out;
}

function inflated(packed: Uint8Array, { method, size }: Entry): Uint8Array {
  if (method !== 8) throw new Error("packed in another way");
  const out = new Uint8Array(size);
  let filled = 0;
  const stream = new Inflate((piece) => {
    // Longer than the array is a RangeError: the directory has named a smaller size.
    out.set(piece, filled);
    filled += piece.length;
  });
  for (let at = 0; at < packed.length; at += SLICE) {
    stream.push(packed.subarray(at, at + SLICE), at + SLICE >= packed.length);
  }
  return out.subarray(0, filled);
}

/** @throws RangeError when it ends beyond the file */
function part(view: DataView, at: number, length: number): Uint8Array {
  return new Uint8Array(view.buffer, view.byteOffset, view.byteLength).subarray(
    ...within(view, at, at + length),
  );
}

function within(view: DataView, start: number, end: number): [number, number] {
  if (end > view.byteLength) throw new RangeError("beyond the end");
  return [start, end];
}
