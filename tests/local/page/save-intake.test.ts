import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { saveIntake } from "../../../src/local/page/save-intake";
import * as text from "../../../src/sentences/made/local-page";

let folder: string;
const at = (name: string) => path.join(folder, name);
const save = (file: string, text = "PK 1") =>
  JSON.parse(String(saveIntake(at(file)).take(Buffer.from(text)).content)).name as string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "saved-"));
  writeFileSync(at("mine.csv"), "Batch");
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("a copy saved beside the file", () => {
  it("has a new name each time, higher than those before, and nothing is written over", () => {
    expect(save("mine.csv", "PK 1")).toBe("mine-saved-1.xlsx");
    expect(save("mine.csv", "PK 2")).toBe("mine-saved-2.xlsx");
    rmSync(at("mine-saved-1.xlsx"));
    expect(save("mine.csv", "PK 3")).toBe("mine-saved-3.xlsx");
    expect(readdirSync(folder)).toEqual(["mine-saved-2.xlsx", "mine-saved-3.xlsx", "mine.csv"]);
    expect(readFileSync(at("mine-saved-2.xlsx"), "utf8")).toBe("PK 2");
    expect(readFileSync(at("mine.csv"), "utf8")).toBe("Batch");
  });

  it("of a copy is the next copy", () => {
    writeFileSync(at("mine-saved-7.xlsx"), "PK 7");
    expect(save("mine-saved-7.xlsx")).toBe("mine-saved-8.xlsx");
  });

  it("takes names of any letters as they are", () => {
    writeFileSync(at("a.b (1) [x] é'.xlsx"), "PK");
    expect(save("a.b (1) [x] é'.xlsx")).toBe("a.b (1) [x] é'-saved-1.xlsx");
  });

  it("follows no link, and goes into no other folder", () => {
    mkdirSync(at("elsewhere"));
    symlinkSync(at("elsewhere/target.xlsx"), at("mine-saved-1.xlsx"));
    expect(save("mine.csv")).toBe("mine-saved-2.xlsx");
    expect(existsSync(at("elsewhere/target.xlsx"))).toBe(false);
  });

  it("is a workbook or nothing, and says in one sentence when it can't be written", () => {
    expect(() => save("mine.csv", "Batch")).toThrow(text.noWorkbook());
    expect(() => save("gone/mine.csv")).toThrow(
      text.cantWrite({ name: text.copy(), file: "mine.csv", why: "ENOENT" }),
    );
    expect(readdirSync(folder)).toEqual(["mine.csv"]);
  });
});
