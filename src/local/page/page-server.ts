import { createHash, randomBytes } from "node:crypto";
import { createServer, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import * as text from "../../sentences/made/local-page";
import type { PageFile, PageFiles } from "./page-files";
import { receivedBytes } from "./received-bytes";
import { refusal, type ShownIn } from "./visitors";

export interface PageServer {
  /** Such as "http://127.0.0.1:40123/kX3…/": with the secret, without which nothing is served. */
  readonly address: string;
  close(): Promise<void>;
}

/** What a server serves. */
export interface PageSite {
  readonly files: PageFiles;
  readonly shownIn: ShownIn;
  /** What the page may hand over, by its address; absent when nothing. */
  readonly takes?: Readonly<Record<string, PageIntake>>;
}

/** Takes what the page hands over. */
export interface PageIntake {
  /** The media type of what is taken. A type that no form can send keeps forms out, too. */
  readonly type: string;
  /** Bytes. */
  readonly most: number;
  take(bytes: Uint8Array): PageFile;
}

const LOOPBACK = "127.0.0.1";
/** 144 bits: nobody guesses it in the life of a program. */
const SECRET_BYTES = 18;

/**
 * Serves the page's files to this computer alone, to those who know the address with its secret,
 * and to no other page (see visitors.ts).
 * @param port 0 for any free one
 * @throws Error with the code EADDRINUSE when the port is taken
 */
export async function servePage(site: PageSite, port: number): Promise<PageServer> {
  const secret = `/${randomBytes(SECRET_BYTES).toString("base64url")}`;
  let origin = "";
  const server = createServer((request, response) => {
    void answer(site, { origin, secret, request }).then(({ status, headers, content }) => {
      response.writeHead(status, { ...ALWAYS, ...headers });
      response.end(request.method === "HEAD" ? undefined : content);
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, resolve);
  });
  origin = `http://${LOOPBACK}:${(server.address() as AddressInfo).port}`;
  return {
    address: `${origin}${secret}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        // Browsers keep connections open for later.
        server.closeAllConnections();
      }),
  };
}

/** What no page of another origin may use in any way, refusals included. */
const ALWAYS = {
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-resource-policy": "same-origin",
  "cross-origin-opener-policy": "same-origin",
  // A process of its own for each origin: the sidebar goes on while the page calculates.
  "origin-agent-cluster": "?1",
};
/** For what is no document: shown alone it may load nothing, and be shown by nobody. */
const NO_DOCUMENT = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'";

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly content?: string | Buffer;
}

async function answer(
  site: PageSite,
  {
    origin,
    secret,
    request,
  }: { readonly origin: string; readonly secret: string; readonly request: IncomingMessage },
): Promise<Answer> {
  const refused = refusal(request, origin, site.shownIn);
  if (refused) return plain(refused.status, refused.sentence);
  const [whole = "/"] = (request.url ?? "/").split("?");
  if (!whole.startsWith(`${secret}/`)) {
    return plain(404, text.wrongAddress());
  }
  const address = whole.slice(secret.length);
  if (request.method === "POST") return take(site.takes ?? {}, address, request);
  if (request.method !== "GET" && request.method !== "HEAD") return plain(405, text.notHere());
  const make = Object.hasOwn(site.files, address) ? site.files[address] : undefined;
  if (!make) return plain(404, text.nothingHere());
  let file: PageFile;
  try {
    file = make();
  } catch {
    return plain(503, text.beingBuilt());
  }
  if (file.isPrivate) return sent(file, { "cache-control": "no-store" });
  // A browser that has the file already keeps it, and what it has compiled of it.
  const etag = `"${createHash("sha256").update(file.content).digest("base64url")}"`;
  if (request.headers["if-none-match"] === etag) return { status: 304, headers: { etag } };
  return sent(file, { "cache-control": "no-cache", etag });
}

async function take(
  intakes: Readonly<Record<string, PageIntake>>,
  address: string,
  request: IncomingMessage,
): Promise<Answer> {
  const intake = Object.hasOwn(intakes, address) ? intakes[address] : undefined;
  if (!intake) return plain(405, text.nothingTaken());
  if (request.headers["content-type"] !== intake.type) return plain(415, text.nothingOfThisKind());
  const bytes = await receivedBytes(request, intake.most);
  if (!bytes) return plain(413, text.tooMuch());
  try {
    return sent(intake.take(bytes), { "cache-control": "no-store" });
  } catch (error) {
    return plain(500, error instanceof Error ? error.message : String(error));
  }
}

function sent(file: PageFile, headers: Readonly<Record<string, string>>): Answer {
  const about = {
    "content-type": `${file.type}; charset=utf-8`,
    "content-security-policy": file.policy ?? NO_DOCUMENT,
  };
  return { status: 200, headers: { ...about, ...headers }, content: file.content };
}

function plain(status: number, content: string): Answer {
  const type = "text/plain; charset=utf-8";
  const headers = { "content-type": type, "content-security-policy": NO_DOCUMENT };
  // What a refused request still sends is not waited for.
  return { status, headers: { ...headers, connection: "close" }, content };
}
