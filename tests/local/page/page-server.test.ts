import { request } from "node:http";
import { networkInterfaces } from "node:os";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openCommand } from "../../../src/local/page/open-browser";
import { readPageOptions } from "../../../src/local/page/page-options";
import { type PageServer, servePage } from "../../../src/local/page/page-server";
import { PersonError } from "../../../src/local/person-error";

let server: PageServer;
beforeAll(async () => {
  server = await servePage(
    {
      "/": () => ({ type: "text/html", content: "<p>hello", policy: "default-src 'self'" }),
      "/gone": () => {
        throw new Error("no such file");
      },
    },
    0,
  );
});
afterAll(() => server.close());

function ask(path: string, options: { method?: string; host?: string; mark?: string } = {}) {
  const { port } = new URL(server.address);
  return new Promise<{ status: number; body: string; headers: Record<string, unknown> }>(
    (resolve, reject) => {
      const asked = request(
        {
          host: "127.0.0.1",
          port,
          path,
          method: options.method ?? "GET",
          headers: {
            host: options.host ?? `127.0.0.1:${port}`,
            ...(options.mark ? { "if-none-match": options.mark } : {}),
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
      asked.end();
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
    ["/", { method: "POST" }, 405],
    ["/", { host: "example.org" }, 403],
    ["/gone", {}, 503],
  ])("answers %s %j with %i", async (path, options, status) => {
    expect((await ask(path, options)).status).toBe(status);
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
    [["a.csv", "b.csv"], /One file at a time/],
    [["--port", "99999"], /--port needs a whole number from 0 to 65535, got "99999"/],
    [["--zone", "Moon/Base"], /--zone needs a name/],
    [["--locale", "!"], /--locale needs a code/],
    [["a.csv", "--as-of", "2026-11-25"], /npm run report -- a\.csv --as-of 2026-11-25$/],
    [["--nonsense"], /--help lists the options/],
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
