import { describe, expect, it } from "vitest";
import { cocoaCleftGraftMeasures } from "../../../src/core/timetable/methods/cocoa-cleft-graft";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import type { Step } from "../../../src/core/timetable/timetable";

const method = builtInTimetable().methods.find(({ name }) => name === "Cocoa cleft graft");
if (method === undefined) throw new Error("the built-in cocoa method is missing");
const { steps } = method;
const WEEK = 7;
/** A twelfth of a year. */
const MONTH = 365.25 / 12;
const NO_SOURCE = /common practice, no source/i;

function step(name: string): Step {
  const found = steps.find((one) => one.name === name);
  if (found === undefined) throw new Error(`the method has no step ${name}`);
  return found;
}

const afterOf = (name: string) => steps[step(name).after as number]?.name;

/**
 * Days as the trade says them, in weeks or months, must lie in the window, and the usual day be about
 * as many: within a tenth.
 */
function usualAbout(name: string, after: string, days: number) {
  expect(afterOf(name)).toBe(after);
  const { from, usual, by } = step(name);
  expect(from).toBeLessThanOrEqual(days);
  expect(by).toBeGreaterThanOrEqual(days);
  expect(Math.abs(usual - days)).toBeLessThanOrEqual(days / 10);
}

const measuresOf = (said: RegExp) =>
  cocoaCleftGraftMeasures
    .filter(({ source }) => said.test(source))
    .map(({ measure, from, to, unit }) => [measure, from, to, unit]);

describe("the built-in cocoa method against common practice, no source", () => {
  it("has its steps in order, the counted ones counted", () => {
    expect(steps.map(({ name, counted }) => (counted ? `${name} *` : name))).toEqual([
      ...["Sowing *", "Germination *", "Grafting *", "First release", "Bud break", "Take count *"],
      ...["First flush", "Flush hardening", "Branching", "Second release"],
      ...["Union closed", "Ready *"],
    ]);
    expect(steps[method.ready]?.name).toBe("Ready");
    expect(steps.filter(({ after }) => after === null).map(({ name }) => name)).toEqual(["Sowing"]);
  });

  it("has seed coming up 1 to 2 weeks after sowing", () => {
    expect(afterOf("Germination")).toBe("Sowing");
    expect([step("Germination").from, step("Germination").by]).toEqual([WEEK, 2 * WEEK]);
  });

  it("grafts at about 3 months from sowing", () => {
    usualAbout("Grafting", "Sowing", 3 * MONTH);
  });

  it("first releases the wrap 2 weeks after grafting", () => {
    usualAbout("First release", "Grafting", 2 * WEEK);
    expect(step("First release").usual).toBe(2 * WEEK);
  });

  // Ridwan et al. 2015, Mitra Sains: 10.44 and 10.40 days after grafting, by clone and by rootstock.
  it("has buds moving from 10 days after grafting to 2 weeks after the first release", () => {
    expect(afterOf("Bud break")).toBe("Grafting");
    expect(step("Bud break").from).toBe(Math.floor(10.4));
    expect(step("Bud break").by).toBe(step("First release").usual + 2 * WEEK);
  });

  it("has the flush prominent about a month after the first release", () => {
    expect(afterOf("First flush")).toBe("Grafting");
    const afterRelease = step("First flush").usual - step("First release").usual;
    expect(Math.abs(afterRelease - MONTH)).toBeLessThanOrEqual(MONTH / 10);
  });

  it("has the flush hardening about 6 weeks after grafting", () => {
    usualAbout("Flush hardening", "Grafting", 6 * WEEK);
  });

  it("has branches at 2 months and the union closed at 3 months from grafting", () => {
    usualAbout("Branching", "Grafting", 2 * MONTH);
    usualAbout("Union closed", "Grafting", 3 * MONTH);
  });

  it("has plants ready 3½ to 4 months after grafting", () => {
    expect(afterOf("Ready")).toBe("Grafting");
    // A month has 30 or 31 days.
    expect(step("Ready").from).toBeGreaterThanOrEqual(3.5 * 30);
    expect(step("Ready").from).toBeLessThanOrEqual(3.5 * 31);
    expect(step("Ready").by).toBeGreaterThanOrEqual(4 * 30);
    expect(step("Ready").by).toBeLessThanOrEqual(4 * 31);
  });

  it("measures the work in centimetres of whole inches and halves", () => {
    // 12-15 in, 1½-2 in, 5-6 in, 1½ in, about 15 in; 1 in = 2.54 cm.
    expect(measuresOf(NO_SOURCE)).toEqual([
      ["stock cut above the soil", 30.48, 38.1, "cm"],
      ["cleft, and wedge of the scion", 3.81, 5.08, "cm"],
      ["scion, from the second-last flush", 12.7, 15.24, "cm"],
      ["buds on the scion", 5, 6, "pieces"],
      ["width of the wrap strip", 3.81, 3.81, "cm"],
      ["length of the wrap strip, about", 38.1, 38.1, "cm"],
    ]);
    for (const { step: name } of cocoaCleftGraftMeasures) {
      expect(steps.map((one) => one.name)).toContain(name);
    }
  });

  // CPCRI Kasaragod, cocoa germplasm page, "Soft wood grafting in cocoa" and its second page.
  it("shows the published measures beside them", () => {
    expect(measuresOf(/CPCRI/)).toEqual([
      ["cleft, and wedge of the scion", 2, 3, "cm"],
      ["scion", 12, 15, "cm"],
      ["buds on the scion", 2, 3, "pieces"],
      ["width of the wrap strip", 1.5, 1.5, "cm"],
    ]);
  });

  it("needs a wrap strip of 38.1 cm for each graft", () => {
    expect(step("Grafting").needs).toContainEqual({ item: "wrap strip", amount: 38.1, unit: "cm" });
  });
});

describe("the built-in cocoa method against published values", () => {
  it("keeps 85 of 100 at germination (Ndubuaku 2003, Trop. Agric. 80(1): 85 % in nursery beds)", () => {
    expect(step("Germination").kept).toBe(0.85);
  });

  it("grafts no earlier than 2 months and usually from 3 (N'zi et al. 2023; CPCRI 3-4; IASRI 2-3)", () => {
    expect(step("Grafting").from).toBeGreaterThanOrEqual(60);
    expect(step("Grafting").usual).toBeGreaterThanOrEqual(90);
    expect(step("Grafting").by).toBeLessThanOrEqual(120);
  });

  it("grades out 20 of 100 before grafting, loses 10 in the bed after (Siyag 2014, Table 2.3)", () => {
    expect([step("Grafting").kept, step("Ready").kept]).toEqual([0.8, 0.9]);
  });

  it("takes between 60 and 80 of 100 (IASRI 60-80 %, CPCRI 80 %)", () => {
    expect(step("Take count").kept).toBeGreaterThanOrEqual(0.6);
    expect(step("Take count").kept).toBeLessThanOrEqual(0.8);
  });

  it("counts takes from day 28 (Tchatchoua et al. 2023: scored weekly from day 28)", () => {
    expect([afterOf("Take count"), step("Take count").from]).toEqual(["Grafting", 28]);
  });

  it("needs a pod for 35.3 seeds (Trop. Agric. 49(2): 3530.6 seeds in 100 pods)", () => {
    const pod = step("Sowing").needs.find(({ item }) => item === "pod");
    expect(pod?.amount).toBe(0.0283);
  });

  it("fills 1.43 l into a bag 15 cm wide lying flat, filled to 20 cm (by geometry)", () => {
    const litres = ((2 * 15) ** 2 / (4 * Math.PI) / 1000) * 20;
    const mix = step("Sowing").needs.find(({ item }) => item === "potting mix");
    expect([mix?.amount, mix?.unit]).toEqual([Number(litres.toFixed(2)), "l"]);
  });
});

describe("sources and cautions of the built-in methods", () => {
  // Values that somebody published; a step beside them must say that it has no source.
  const CITED: Readonly<Record<string, RegExp>> = {
    Sowing: /Trop\. Agric\. 49\(2\).*CPCRI.*geometry/s,
    Germination: /CPCRI.*Ndubuaku 2003/s,
    Grafting: /N'zi et al\. 2023.*Siyag 2014/s,
    "Take count": /IASRI.*Tchatchoua et al\. 2023/s,
    Ready: /IASRI.*Siyag 2014/s,
  };

  it.each(steps)("$name says where its values are from", ({ name, source, kept }) => {
    expect(source.trim()).not.toBe("");
    const cited = CITED[name];
    expect(source).toMatch(cited ?? NO_SOURCE);
    if (cited !== undefined && name !== "Sowing") expect(source).toMatch(/Days: /);
    if (kept !== null) expect(source).toMatch(/Kept: /);
  });

  it("says of every value without a source that it is common practice", () => {
    expect(step("Germination").source).toMatch(/from 7 and by 14 common practice, no source/);
    expect(step("Grafting").source).toMatch(/Wrap: common practice, no source/);
    expect(step("Grafting").source).toMatch(/no amount published, so not in Needs/);
    expect(step("Grafting").needs.map(({ item }) => item)).toEqual(["scion", "wrap strip"]);
    expect(step("Ready").source).toMatch(/Days: common practice, no source/);
  });

  it("gives a rate of work only with its source", () => {
    for (const { perPersonHour, source } of steps) {
      if (perPersonHour !== null) expect(source).toMatch(/per person-hour: /i);
    }
  });

  it("warns of blades, strong alcohol and flame where plants are cut", () => {
    expect(step("Grafting").caution).toMatch(/blades/i);
    expect(step("Grafting").caution).toMatch(/alcohol burns and catches fire: no flame/i);
    expect(step("Grafting").caution).toMatch(/label/i);
    expect(step("First release").caution).toMatch(/blades/i);
  });

  it("defers to plant-health rules where plant material moves", () => {
    expect(step("Grafting").caution).toMatch(/plant-health permit/i);
    expect(step("Ready").caution).toMatch(/plant-health certificate.*rules/is);
  });

  it("defers to labels and trained persons where something is sprayed", () => {
    expect(step("Flush hardening").caution).toMatch(/sprays.*registered.*trained.*label/is);
  });

  // Journal of Botany 2017:1938359, abstract: unwashed seed kept 80-100 % germination for 2 days, washed seed for 21
  it("says to sow within two days or to wash the seed", () => {
    expect(step("Sowing").caution).toMatch(/within two days.*or wash the seed clean/i);
    expect(step("Sowing").source).toMatch(/2017:1938359/);
  });
});
