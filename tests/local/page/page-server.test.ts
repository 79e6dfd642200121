import { request } from "node:http";
import { networkInterfaces } from "node:os";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openCommand } from "../../../src/local/page/open-browser";
import type { PageFiles } from "../../../src/local/page/page-files";
import { readPageOptions } from "../../../src/local/page/page-options";
import { type PageIntake, type PageServer, servePage } from "../../../src/local/page/page-server";
import { PersonError } from "../../../src/local/person-error";
import * as text from "../../../src/sentences/made/program-faults";

const KIND = "application/x-kept";
const taken: string[] = [];
let server: PageServer;
let framed: PageServer;
beforeAll(async () => {
  const files: PageFiles = {
    "/": () => ({ type: "text/html", content: "<p>hello", policy: "default-src 'self'" }),
    "/data": () => ({ type: "application/json", content: "[1]", isPrivate: true }),
    "/gone": () => {
      throw new Error("no such file");
    },
  };
  const keep: PageIntake = {
    type: KIND,
    most: 4,
    take(bytes) {
      taken.push(Buffer.from(bytes).toString());
      return { type: "text/plain", content: "kept" };
    },
  };
  server = await servePage({ files, shownIn: "tab", takes: { "/keep": keep } }, 0);
  framed = await servePage({ files, shownIn: "frame" }, 0);
});
afterAll(() => Promise.all([server.close(), framed.close()]));

interface Asked {
  readonly method?: string;
  readonly host?: string;
  readonly mark?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  readonly of?: PageServer;
  /** Whether the path stands without the secret. */
  readonly isBare?: boolean;
}

function ask(path: string, options: Asked = {}) {
  const { port, pathname } = new URL((options.of ?? server).address);
  return new Promise<{ status: number; body: string; headers: Record<string, unknown> }>(
    (resolve, reject) => {
      const asked = request(
        {
          host: "127.0.0.1",
          port,
          path: options.isBare ? path : pathname.slice(0, -1) + path,
          method: options.method ?? "GET",
          headers: {
            host: options.host ?? `127.0.0.1:${port}`,
            ...(options.mark ? { "if-none-match": options.mark } : {}),
            ...options.headers,
          },
        },
        (answer) => {
          let body = "";
          answer.on("data", (part) => {
            body += part;
          });
          answer.on("end", () =>
            resolve({ status: answer.statusCode ?? 0, body, headers: answer.headers }),
          );
        },
      );
      asked.on("error", reject);
      asked.end(options.body);
    },
  );
}

describe("the page's server", () => {
  it("serves its files with their policy", async () => {
    expect(await ask("/?x=1")).toMatchObject({
      status: 200,
      body: "<p>hello",
      headers: {
        "content-type": "text/html; charset=utf-8",
        "origin-agent-cluster": "?1",
        "content-security-policy": "default-src 'self'",
        "x-content-type-options": "nosniff",
      },
    });
    expect(await ask("/", { method: "HEAD" })).toMatchObject({ status: 200, body: "" });
  });

  it("sends a file that the browser has already only when it has changed", async () => {
    const mark = String((await ask("/")).headers.etag);
    expect(await ask("/", { mark })).toMatchObject({ status: 304, body: "" });
    expect((await ask("/", { mark: '"other"' })).status).toBe(200);
  });

  it.each([
    ["/page.js", {}, 404],
    ["/../package.json", {}, 404],
    ["/toString", {}, 404],
    ["/", { method: "PUT" }, 405],
    ["/", { host: "example.org" }, 403],
    ["/", { host: "localhost:1" }, 403],
    ["/", { isBare: true }, 404],
    ["/data", { isBare: true }, 404],
    ["/", { headers: { "sec-fetch-site": "cross-site" } }, 403],
    ["/", { headers: { "sec-fetch-site": "same-site", "sec-fetch-dest": "iframe" } }, 403],
    ["/", { headers: { origin: "http://127.0.0.1:9" } }, 403],
    ["/", { headers: { "sec-fetch-site": "none" } }, 200],
    ["/data", { headers: { "sec-fetch-site": "same-origin" } }, 200],
    ["/gone", {}, 503],
  ])("answers %s %j with %i", async (path, options, status) => {
    expect((await ask(path, options)).status).toBe(status);
  });

  it("has a secret of its own in every address, and forbids all use by other origins", async () => {
    expect(new URL(server.address).pathname).toMatch(/^\/[\w-]{24}\/$/);
    expect(new URL(framed.address).pathname).not.toBe(new URL(server.address).pathname);
    for (const options of [{}, { isBare: true }, { host: "example.org" }]) {
      expect((await ask("/data", options)).headers).toMatchObject({
        "cross-origin-resource-policy": "same-origin",
        "cross-origin-opener-policy": "same-origin",
        "content-security-policy": expect.stringContaining("frame-ancestors 'none'"),
      });
    }
    expect((await ask("/data")).headers).toMatchObject({ "cache-control": "no-store" });
  });

  it("shows in a frame what is made for one, and gives it to another page in no other way", async () => {
    const from = (dest: string) => ({
      of: framed,
      headers: { "sec-fetch-site": "same-site", "sec-fetch-dest": dest },
    });
    expect((await ask("/", from("iframe"))).status).toBe(200);
    expect((await ask("/", from("script"))).status).toBe(403);
  });

  it("takes what the page hands over, and nothing from elsewhere, of another kind or too large", async () => {
    const { origin } = new URL(server.address);
    const post = (headers: Readonly<Record<string, string>>, body = "abc", path = "/keep") =>
      ask(path, { method: "POST", headers: { "content-type": KIND, origin, ...headers }, body });
    expect(await post({})).toMatchObject({ status: 200, body: "kept" });
    expect(taken.splice(0)).toEqual(["abc"]);
    expect((await post({ origin: "http://127.0.0.1:9" })).status).toBe(403);
    expect((await post({ origin: "null" })).status).toBe(403);
    expect((await post({ "sec-fetch-site": "same-site" })).status).toBe(403);
    expect((await post({ "content-type": "text/plain" })).status).toBe(415);
    expect((await post({}, "abcde")).status).toBe(413);
    expect((await post({}, "abc", "/")).status).toBe(405);
    // Without a word about its origin it can't be the page.
    const silent = { method: "POST", headers: { "content-type": KIND }, body: "abc" };
    expect((await ask("/keep", silent)).status).toBe(403);
    expect(taken).toEqual([]);
  });

  it("listens to this computer alone", async () => {
    const { hostname, port } = new URL(server.address);
    expect(hostname).toBe("127.0.0.1");
    const others = Object.values(networkInterfaces())
      .flatMap((all) => all ?? [])
      .filter(({ family, internal }) => family === "IPv4" && !internal);
    for (const { address } of others) {
      await expect(
        new Promise((resolve, reject) => {
          request({ host: address, port, path: "/", timeout: 2000 }, resolve)
            .on("error", reject)
            .on("timeout", () => reject(new Error("no answer")))
            .end();
        }),
      ).rejects.toThrow();
    }
  });
});

describe("readPageOptions", () => {
  it("reads the words", () => {
    expect(readPageOptions([])).toEqual({
      help: false,
      opensBrowser: true,
      port: 0,
      locale: "en_GB",
      dist: "dist",
    });
    expect(
      readPageOptions([
        "mine.csv",
        "--no-open",
        "--port",
        "8123",
        "--zone",
        "Asia/Kolkata",
        "--seed",
        "3",
      ]),
    ).toMatchObject({
      file: "mine.csv",
      opensBrowser: false,
      port: 8123,
      zone: "Asia/Kolkata",
      seed: 3,
    });
  });

  it.each([
    [["a.csv", "b.csv"], text.oneFile({ files: ["a.csv", "b.csv"] })],
    [["--port", "99999"], text.needsNumber({ option: "--port", most: "65535", found: "99999" })],
    [["--zone", "Moon/Base"], text.needsZone({ found: "Moon/Base" })],
    [["--locale", "!"], text.needsLocale({ found: "!" })],
    [
      ["a.csv", "--as-of", "2026-11-25"],
      text.forReport({ word: "--as-of", words: "a.csv --as-of 2026-11-25" }),
    ],
    [["--nonsense"], text.unknownWords({ why: "Unknown option '--nonsense'" })],
  ])("says what is wrong with %j", (words, message) => {
    const read = () => readPageOptions(words);
    expect(read).toThrow(PersonError);
    expect(read).toThrow(message);
  });
});

describe("openCommand", () => {
  it("knows the way of each system", () => {
    expect(openCommand("http://127.0.0.1:1/", "linux")).toEqual([
      "xdg-open",
      "http://127.0.0.1:1/",
    ]);
    expect(openCommand("http://127.0.0.1:1/", "darwin")).toEqual(["open", "http://127.0.0.1:1/"]);
    expect(openCommand("http://127.0.0.1:1/", "win32")[0]).toBe("cmd");
  });
});
