import {
  builtInTimetable,
  type Cell,
  type CivilDay,
  civilDay,
  daysLater,
  gridOf,
  readRecords,
  type StageRow,
  stagesOf,
  stepsOf,
} from "../core";
import { rangePicture } from "./range-picture";

/** The two pictures of src/core/projection/README.md, calculated, not drawn by hand. */
export function forecastPictures(): readonly (readonly [name: string, svg: string])[] {
  return [
    ["ranges-by-records.svg", rangesByRecords()],
    ["ranges-by-stage.svg", rangesByStage()],
  ];
}

/** One picture a built-in method: an invented batch of 1,000, just started, from its first step to ready. */
export function methodPictures(): readonly (readonly [name: string, svg: string])[] {
  const timetable = builtInTimetable();
  return timetable.methods.map((method) => {
    const start = method.steps[0]?.name ?? "";
    const records = readRecords(
      gridOf([
        ["Batch", "Method", `${start} day`, `${start} count`],
        ["one", method.name, { day: AS_OF }, 1000],
      ]),
      {
        stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
        asOf: AS_OF,
        localeOrder: null,
        decimalMark: null,
        told: new Map(),
      },
    );
    const { rows } = stepsOf({ records, timetable, asOf: AS_OF, level: 0.8 });
    const lines = rows.slice(1).map(({ step, likelyCount, from, likely, by }) => ({
      label: stepLabel(step, likelyCount),
      from: (from as number) - AS_OF,
      likely: (likely as number) - AS_OF,
      to: (by as number) - AS_OF,
    }));
    const svg = rangePicture({
      title: `${method.name}: 1,000 started`,
      axis: "days from the start, 80 of 100 such ranges hold; no records known",
      lines,
      say: String,
    });
    return [`${method.name.toLowerCase().replace(/ /g, "-")}.svg`, svg] as const;
  });
}

/** Plants are said of counted steps alone. */
function stepLabel(step: string, plants: number | null): string {
  return plants === null ? step : `${step}, about ${plants} plants`;
}

const AS_OF = civilDay(2026, 11, 25) as CivilDay;
const COLUMNS =
  "Batch, Variety, Sown, Seeds sown, Germination day, Germinated, Grafted on, " +
  "Grafts made, Take count day, Takes, Ready on, Ready plants, Closed";
const HEADER: readonly Cell[] = COLUMNS.split(", ");

/** An invented batch, `age` days after sowing, done up to that day. */
function batch(name: string, age: number, noise: readonly number[]): Cell[] {
  const sown = daysLater(AS_OF, -age);
  const cell = (days: number): Cell => (days <= age ? { day: daysLater(sown, days) } : "");
  const [n0 = 0, n1 = 0, n2 = 0, n3 = 0] = noise;
  const graftedAt = Math.round(92 + 7 * n3);
  const germinated = Math.round(200 * 0.88);
  const grafts = 130;
  const takes = Math.round(grafts * Math.min(0.98, Math.max(0.3, 0.8 + 0.07 * n0)));
  const ready = Math.round(takes * Math.min(1, 0.94 + 0.03 * n1));
  const readyAt = Math.round(graftedAt + 115 + 4 * n2);
  const done = readyAt <= age;
  return [
    name,
    "Amberlow",
    cell(0),
    200,
    cell(11),
    age >= 11 ? germinated : "",
    cell(graftedAt),
    age >= graftedAt ? grafts : "",
    cell(graftedAt + 32),
    age >= graftedAt + 32 ? takes : "",
    cell(readyAt),
    done ? ready : "",
    done && age > readyAt + 30 ? "yes" : "",
  ];
}

/** Even noise without chance: the normal scores of so many batches in a fixed mixed order. */
function scores(count: number): number[][] {
  const score = (i: number) => {
    const p = (i + 0.5) / count;
    // Tukey's lambda shape (0.14) is near enough to the normal for a picture.
    return (p ** 0.14 - (1 - p) ** 0.14) / 0.1975;
  };
  const mixed = (step: number) =>
    Array.from({ length: count }, (_, i) => score((i * step + 1) % count));
  return mixed(7).map((value, i) => [
    value,
    mixed(11)[i] ?? 0,
    mixed(13)[i] ?? 0,
    mixed(17)[i] ?? 0,
  ]);
}

function ask(rows: readonly (readonly Cell[])[]) {
  const timetable = builtInTimetable();
  const records = readRecords(gridOf([HEADER, ...rows]), {
    stepNames: timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
    asOf: AS_OF,
    localeOrder: null,
    decimalMark: null,
    told: new Map(),
  });
  const { rows: stages } = stagesOf({ records, timetable, asOf: AS_OF, level: 0.8 });
  const row = stages.find(({ batch: name }) => name === "this one");
  return (key: Forecast) => row?.[key] as number;
}

/** The days and numbers of plants that a stage's row forecasts. */
type Forecast = Extract<keyof StageRow, `ready${string}` | `${string}Ready`>;

function rangesByRecords(): string {
  const lines = [0, 3, 30, 300].map((count) => {
    const past = scores(count).map((noise, i) => batch(`past ${i}`, 260 + i, noise));
    const value = ask([...past, batch("this one", 100, [])]);
    return {
      label: count === 0 ? "no past batch" : `${count} past batches`,
      from: value("fewestReady"),
      likely: value("likelyReady"),
      to: value("mostReady"),
    };
  });
  return rangePicture({
    title: "130 grafts made: how many will be ready?",
    axis: "plants, 80 of 100 such ranges hold",
    lines,
    say: String,
  });
}

function rangesByStage(): string {
  const past = scores(30).map((noise, i) => batch(`past ${i}`, 260 + i, noise));
  const lines = (
    [
      ["just sown", 1],
      ["germinated", 30],
      ["grafted", 95],
      ["takes counted", 130],
      ["nearly ready", 204],
    ] as const
  ).map(([label, age]) => {
    const value = ask([...past, batch("this one", age, [])]);
    const off = (key: Forecast) => value(key) - value("readyLikely");
    const wait = value("readyLikely") - AS_OF;
    return {
      label: `${label}, ${wait} days to go`,
      from: off("readyFrom"),
      likely: 0,
      to: off("readyBy"),
    };
  });
  return rangePicture({
    title: "The same batch at five stages: how far off may its ready day be?",
    axis: "days earlier or later than likely, 30 past batches known",
    lines,
    say: (value) => (value > 0 ? `+${value}` : String(value)),
  });
}
