import type { IncomingMessage } from "node:http";

/**
 * What a request carries.
 * @param most bytes; reading ends where there are more
 * @returns null when it is more, or when it broke off
 */
export async function receivedBytes(
  request: AsyncIterable<Buffer> & Pick<IncomingMessage, "complete">,
  most: number,
): Promise<Buffer | null> {
  const parts: Buffer[] = [];
  let size = 0;
  try {
    for await (const part of request) {
      size += part.length;
      if (size > most) return null;
      parts.push(part);
    }
  } catch {
    return null;
  }
  return request.complete ? Buffer.concat(parts, size) : null;
}
