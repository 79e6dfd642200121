import { notATable } from "../sentences/made/file-faults";
import { PersonError } from "./person-error";

/** So many bytes tell how a text is written. */
const LOOKED_AT = 4096;

/**
 * The text of a file: UTF-8 or UTF-16 of either order, with or without a mark, or else Windows-1252
 * as older programs save it.
 * @param fileName for the message
 * @throws PersonError when the bytes are no text
 */
export function readText(bytes: Uint8Array, fileName: string): string {
  const text = decoded(bytes);
  // No text holds a zero character; pictures, programs and packed files do.
  if (text.includes("\0")) {
    throw new PersonError(notATable({ file: fileName }));
  }
  return text;
}

function decoded(bytes: Uint8Array): string {
  const encoding = utf16Order(bytes);
  if (encoding) return new TextDecoder(encoding).decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/**
 * By the mark at the start, else by the zero bytes: commas, digits and line ends have one each in
 * UTF-16, always on the same side, and none in any other way to write text.
 */
function utf16Order(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const zeros = [0, 0];
  bytes.subarray(0, LOOKED_AT).forEach((byte, at) => {
    if (byte === 0) zeros[at % 2] = (zeros[at % 2] ?? 0) + 1;
  });
  const [first = 0, second = 0] = zeros;
  if (first === 0 && second === 0) return null;
  if (first === 0) return "utf-16le";
  return second === 0 ? "utf-16be" : null;
}
