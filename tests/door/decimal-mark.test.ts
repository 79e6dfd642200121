import { describe, expect, it } from "vitest";
import { decimalMark } from "../../src/door/decimal-mark";
import { noTrouble } from "../../src/sentences/made/check";
import { readAs } from "../../src/sentences/made/troubles";
import { ask, askRows } from "../support/ask";
import { hostIn } from "../support/host";

describe("decimalMark", () => {
  // The marks by Unicode CLDR, typed by hand (from memory).
  it.each<[string, string | null]>([
    ...["en_GB", "en_US", "en_IN", "es_MX", "zh_CN", "th_TH", "de_CH"].map(
      (one): [string, string] => [one, "."],
    ),
    ...["fr_FR", "de_DE", "es_ES", "pt_BR", "id_ID", "it_IT", "sv_SE"].map(
      (one): [string, string] => [one, ","],
    ),
    ...["", "no such locale", "__"].map((one): [string, null] => [one, null]),
    // Another mark than these two, so neither is meant.
    ["ar_EG", null],
  ])("of %s is %s", (locale, mark) => {
    expect(decimalMark(locale)).toBe(mark);
  });

  it("tells a thousand from a part of a plant in the sheet's own locale", () => {
    const records = [
      ["Batch", "Variety", "Grafts made", "Takes"],
      ["B1", "Alba", "1.200", "1.100"],
    ];
    const summary = (locale: string) =>
      ask("TAKE_SUMMARY", [records, "Variety"], hostIn("Etc/UTC", locale)) as unknown[][];
    const troubles = (locale: string) =>
      (ask("BATCH_CHECK", [records], hostIn("Etc/UTC", locale)) as unknown[][]).slice(1, -1);
    expect(summary("id_ID")[1]?.slice(2, 4)).toEqual([1200, 1100]);
    expect(troubles("id_ID").map((row) => row[3])).toEqual([noTrouble()]);
    // Where the point is the decimal mark the reading is the same, and is said.
    expect(summary("en_GB")[1]?.slice(2, 4)).toEqual([1200, 1100]);
    expect(troubles("en_GB").map((row) => row[4])).toEqual(
      [1200, 1100].map((count) => readAs({ readAs: count })),
    );
    expect(askRows("BATCH_CHECK", [records])).toHaveLength(4);
  });
});
