import type { IncomingMessage } from "node:http";
import * as text from "../../sentences/made/local-page";

/** Where a site of the local page is shown: in a tab of its own, or in a frame of the page. */
export type ShownIn = "tab" | "frame";

/** Why a request gets nothing: its status, and one sentence for a person who sees it. */
export interface Refusal {
  readonly status: number;
  readonly sentence: string;
}

/**
 * Whether a request comes from the person or from the page itself. A page elsewhere in the same
 * browser can ask for whatever it likes, and must get nothing, not even with the right address.
 *
 * @param origin of the site, such as "http://127.0.0.1:40123"
 * @returns null when it may be answered
 */
export function refusal(
  { headers, method = "GET" }: Pick<IncomingMessage, "headers" | "method">,
  origin: string,
  shownIn: ShownIn,
): Refusal | null {
  // A name elsewhere could be made to point to this computer; then the name does not fit.
  if (headers.host !== new URL(origin).host) {
    return { status: 403, sentence: text.onlyAt({ address: origin }) };
  }
  if (headers.origin !== undefined && headers.origin !== origin) return fromElsewhere();
  // Programs that are no browsers do not say from where; they know the secret or get nothing.
  const from = headers["sec-fetch-site"];
  const isFrame = shownIn === "frame" && headers["sec-fetch-dest"] === "iframe";
  const fits = from === undefined || from === "same-origin" || from === "none" || isFrame;
  if (!fits) return fromElsewhere();
  // What changes something has to say that it is the page: every browser names the origin then.
  if (method === "POST" && headers.origin !== origin) return fromElsewhere();
  return null;
}

const fromElsewhere = (): Refusal => ({ status: 403, sentence: text.fromElsewhere() });
