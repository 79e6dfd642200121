import { SIDEBAR_CALLS } from "../../src/build/stubs";
import type { SheetDraft } from "../../src/local/workbook-data";
import { type Nursery, openNursery, SMALL_HEADER, smallRow, tab } from "../workbook/nursery";
import type { Answers } from "./script-runner";

/** People of an invented nursery: one's name holds another's, and three share their initials. */
export const PEOPLE = ["Ann", "Kesto", "Mary Ann", "Kito", "Mirel Ando", "Kaya Orla"];

/** Each grafter with the varieties of their batches. Nera is Mary Ann's alone, and all she grafts. */
const GRAFTED: readonly (readonly [grafter: string, varieties: readonly string[]])[] = [
  ["Ann", ["Amberlow", "Duskpod"]],
  ["Kesto", ["Amberlow", "Duskpod"]],
  ["Kito", ["Amberlow", "Duskpod"]],
  ["Mary Ann", ["Nera"]],
  ["Mirel Ando", ["Amberlow"]],
];

function batches() {
  let count = 0;
  return GRAFTED.flatMap(([grafter, varieties], who) =>
    varieties.flatMap((variety, which) =>
      Array.from({ length: 6 }, (_, time) => {
        count += 1;
        return smallRow({
          ...{ Batch: `B${count}`, Variety: variety, Place: `Bay ${1 + (count % 3)}` },
          ...{ Grafter: grafter, Sown: "2026-01-05", "Seeds sown": 120 },
          "Grafted on": `2026-0${4 + time}-${11 + who}`,
          "Grafts made": 100,
          "Take count day": `2026-0${5 + time}-${11 + who}`,
          Takes: 80 - 12 * who + 10 * which + ((count * 5) % 7),
        });
      }),
    ),
  );
}

function drafts(): readonly SheetDraft[] {
  const due = smallRow({
    ...{ Batch: "D1", Variety: "Amberlow", Place: "Bay 1", Grafter: "Kesto" },
    ...{ Sown: "2026-05-20", "Seeds sown": 100, "Grafted on": "2026-10-24", "Grafts made": 80 },
  });
  const crew = PEOPLE.map((name, at) => [name, "", name === "Kaya Orla" ? null : 6 + (at % 3)]);
  return [
    tab("Records", [SMALL_HEADER, ...batches(), due]),
    tab("Crew", [["Person", "Tasks", "Hours a day"], ...crew]),
  ];
}

/** The nursery, set up, with a work rate for every step: else nothing is given to anybody. */
export function namedNursery(live = false): Nursery {
  const nursery = openNursery(drafts(), { live }).ready();
  const timetable = "Nursery timetable";
  const steps = nursery.values(timetable).length - 2;
  const rates = Array.from({ length: steps }, () => [40]);
  nursery.sheet(timetable).getRange(3, 9, steps, 1).setValues(rates);
  return nursery;
}

/** What the built script answers the page. */
export function answersOf(nursery: Nursery): Answers {
  return Object.fromEntries(
    SIDEBAR_CALLS.map((name) => [
      name,
      (request: never) => nursery.ask(name as "sidebarTakes", request),
    ]),
  );
}

/** Which of the people are named in full in a text, as words of their own. */
export function namedIn(text: string): readonly string[] {
  const plain = text.replace(/[\u2066-\u2069]/g, "");
  return PEOPLE.filter((name) => new RegExp(`(?<!\\p{L})${name}(?!\\p{L})`, "u").test(plain));
}
