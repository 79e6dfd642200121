import { builtInTimetable, gridOf, readTimetable, TIMETABLE_HEADER } from "../../core";
import { lazily } from "../../core/lazily";
import { batchMethods, type Method, type Timetable } from "../../core/timetable";
import { everyWord } from "../../core/words";
import { type ValueLine, valueLines } from "./corpus";
import { type WordRead, wordOutcome } from "./word-outcome";

/** Ways of the corpus's closed list that our methods' names say in other words. */
const OUR_WORDS: Readonly<Record<string, readonly string[]>> = {
  "green patch bud": ["green patch bud", "green bud"],
  "epicotyl (stone) graft": ["stone graft"],
  "epicotyl graft": ["stone graft"],
  cutting: ["rooted cutting"],
};
/** Of a line that does not say which crop it is. */
const NO_CROP: ReadonlySet<string> = new Set(["any", "mixed", ""]);

const PARTS = ["seen", "practice", "unseen"] as const;
/** Crops that a method's name may begin with: a "green patch bud" is no patch bud of a crop "green". */
const crops = lazily(() => [
  ...new Set([
    ...everyWord((words) => Object.keys(words.crops)),
    ...PARTS.flatMap(valueLines).map(({ crop }) => crop),
  ]),
]);

const timetable = officesTimetable();
const read = batchMethods(timetable);

/** A cell under Method, beside one under Crop where the corpus says which crop it is. */
export function readMethod({ spelling, crop, is, must }: ValueLine): WordRead {
  const reading = read({ method: spelling, crop: NO_CROP.has(crop) ? "" : crop });
  const name = reading.code === "method" ? reading.method.name : null;
  const wanted = must === "ask" ? [] : methodsNamed(timetable, { crop, is });
  return { as: name ?? reading.code, outcome: wordOutcome(name, { must, wanted }) };
}

/** The methods that are some way, of some crop or of every. */
function methodsNamed(
  { methods }: Timetable,
  { crop, is }: Pick<ValueLine, "crop" | "is">,
): readonly string[] {
  const ways = (OUR_WORDS[is] ?? [is]).map((words) => words.toLowerCase());
  const isWanted = (name: string) =>
    ways.some((way) =>
      NO_CROP.has(crop)
        ? name === way || crops().some((one) => name === `${one} ${way}`)
        : name === way || name === `${crop} ${way}`,
    );
  return methods.map(({ name }) => name).filter((name) => isWanted(name.toLowerCase()));
}

/**
 * The built-in methods, and one a crop and way for what they lack of the ways in the corpus. Both of a near
 * pair (cleft and top wedge, patch and green patch) are there then, so that they have to be told apart.
 */
function officesTimetable(): Timetable {
  let timetable = builtInTimetable();
  const lines = PARTS.flatMap(valueLines)
    .filter(({ kind, must }) => kind === "method" && must !== "ask")
    .sort((a, b) => Number(NO_CROP.has(b.crop)) - Number(NO_CROP.has(a.crop)));
  for (const line of lines) {
    if (methodsNamed(timetable, line).length > 0) continue;
    const name = NO_CROP.has(line.crop) ? line.is : `${line.crop} ${line.is}`;
    const own = ownMethod(name.charAt(0).toUpperCase() + name.slice(1));
    timetable = { methods: [...timetable.methods, own] };
  }
  return timetable;
}

/** A method of a table of the nursery's own; its steps do not matter here. */
function ownMethod(name: string): Method {
  const { method, step, after } = TIMETABLE_HEADER;
  const { timetable } = readTimetable(
    gridOf([
      [method, step, after],
      [name, "Ready", ""],
    ]),
  );
  return timetable.methods[0] as Method;
}
