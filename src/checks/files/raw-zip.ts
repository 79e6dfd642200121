import { deflateRawSync } from "node:zlib";
import crc32 from "crc-32";
import { strToU8 } from "fflate";

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

const PIECE = 2 ** 20;

/**
 * A zip file as no program writes it: with a part that is small and unpacks to any size, and with a
 * directory that need not tell the truth. Source: APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.16.
 */
export function zipOf(
  parts: readonly (readonly [string, Uint8Array])[],
  blank: BlankPart,
): Uint8Array {
  const local: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  const add = (
    name: string,
    packed: Uint8Array,
    {
      method,
      size,
      sum,
      copies,
    }: {
      readonly method: number;
      readonly size: number;
      readonly sum: number;
      readonly copies: number;
    },
  ) => {
    const head = header({
      mark: 0x04034b50,
      length: 30,
      name,
      packedSize: packed.length,
      method,
      size,
      sum,
    });
    for (let copy = 0; copy < copies; copy += 1) {
      const own = copy === 0 ? name : name.replace(/(?=\.\w+$)/, `-${copy}`);
      directory.push(
        header({
          mark: 0x02014b50,
          length: 46,
          name: own,
          packedSize: packed.length,
          method,
          size,
          sum,
          at,
        }),
      );
    }
    local.push(head, packed);
    at += head.length + packed.length;
  };
  for (const [name, bytes] of parts)
    add(name, bytes, { method: 0, size: bytes.length, sum: crc32.buf(bytes) >>> 0, copies: 1 });
  const { packed, sum } = packedBlanks(blank.size);
  add(blank.name, packed, { method: 8, size: blank.said ?? blank.size, sum, copies: blank.copies });

  const length = directory.reduce((total, entry) => total + entry.length, 0);
  const end = new DataView(new ArrayBuffer(22));
  end.setUint32(0, 0x06054b50, true);
  end.setUint16(8, directory.length, true);
  end.setUint16(10, directory.length, true);
  end.setUint32(12, length, true);
  end.setUint32(16, at, true);
  return new Uint8Array(Buffer.concat([...local, ...directory, new Uint8Array(end.buffer)]));
}

function header({
  mark,
  length,
  name,
  packedSize,
  method,
  size,
  sum,
  at = 0,
}: {
  readonly mark: number;
  readonly length: number;
  readonly name: string;
  readonly packedSize: number;
  readonly method: number;
  readonly size: number;
  readonly sum: number;
  readonly at?: number;
}): Uint8Array {
  const letters = strToU8(name);
  const bytes = new Uint8Array(length + letters.length);
  const view = new DataView(bytes.buffer);
  // The directory's entries have two more bytes at the start, and more at the end.
  const shift = length === 46 ? 2 : 0;
  view.setUint32(0, mark, true);
  view.setUint16(4 + shift, 20, true);
  view.setUint16(8 + shift, method, true);
  view.setUint32(14 + shift, sum, true);
  view.setUint32(18 + shift, packedSize, true);
  view.setUint32(22 + shift, size, true);
  view.setUint16(26 + shift, letters.length, true);
  if (length === 46) view.setUint32(42, at, true);
  bytes.set(letters, length);
  return bytes;
}

/** Deflated pieces of blanks, one behind the other, so that the whole is never in memory. */
function packedBlanks(size: number): { packed: Uint8Array; sum: number } {
  const whole = new Uint8Array(PIECE).fill(0x20);
  // A piece that is flushed and not finished goes on in the next one.
  const open = deflateRawSync(whole, { level: 9, finishFlush: 2 });
  const pieces: Uint8Array[] = [];
  let sum = 0;
  for (let left = size; left > 0; left -= PIECE) {
    const piece = left > PIECE ? whole : whole.subarray(0, left);
    sum = crc32.buf(piece, sum);
    pieces.push(left > PIECE ? open : deflateRawSync(piece, { level: 9 }));
  }
  return { packed: new Uint8Array(Buffer.concat(pieces)), sum: sum >>> 0 };
}
