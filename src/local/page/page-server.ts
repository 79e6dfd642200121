import { createHash } from "node:crypto";
import { createServer, type IncomingMessage } from "node:http";
import type { AddressInfo } from "node:net";
import type { PageFile, PageFiles } from "./page-files";

export interface PageServer {
  /** Such as "http://127.0.0.1:40123/". */
  readonly address: string;
  close(): Promise<void>;
}

const LOOPBACK = "127.0.0.1";

/**
 * Serves the page's files to this computer alone.
 * @param port 0 for any free one
 * @throws Error with the code EADDRINUSE when the port is taken
 */
export async function servePage(files: PageFiles, port: number): Promise<PageServer> {
  const server = createServer((request, response) => {
    const { status, headers, content } = answer(files, request);
    response.writeHead(status, headers).end(content);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, resolve);
  });
  const { port: taken } = server.address() as AddressInfo;
  return {
    address: `http://${LOOPBACK}:${taken}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        // Browsers keep connections open for later.
        server.closeAllConnections();
      }),
  };
}

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly content?: string | Buffer;
}

function answer(files: PageFiles, request: IncomingMessage): Answer {
  const refuse = (status: number): Answer => ({
    status,
    headers: { "content-type": "text/plain" },
  });
  // A page elsewhere could have its name point to this computer; then the name does not fit.
  const host = request.headers.host ?? "";
  if (!/^(?:127\.0\.0\.1|localhost):\d+$/.test(host)) return refuse(403);
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405);
  const address = (request.url ?? "/").split("?")[0] as string;
  const make = Object.hasOwn(files, address) ? files[address] : undefined;
  if (!make) return refuse(404);
  let file: PageFile;
  try {
    file = make();
  } catch {
    // The add-in is being built anew just now.
    return refuse(503);
  }
  // A browser that has the file already keeps it, and what it has compiled of it.
  const etag = `"${createHash("sha256").update(file.content).digest("base64url")}"`;
  if (request.headers["if-none-match"] === etag) return { status: 304, headers: { etag } };
  return {
    status: 200,
    headers: {
      "content-type": `${file.type}; charset=utf-8`,
      "cache-control": "no-cache",
      etag,
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
      // A process of its own for each origin: the sidebar goes on while the page calculates.
      "origin-agent-cluster": "?1",
      ...(file.policy ? { "content-security-policy": file.policy } : {}),
    },
    ...(request.method === "HEAD" ? {} : { content: file.content }),
  };
}
