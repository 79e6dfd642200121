import { normalText, type WayName } from "../words";
import { cropsIn, type MethodWords, methodWords } from "./method-words";
import type { Method, Timetable } from "./timetable";

/** What says how a batch is raised: the texts of its cells, empty where blank. */
export interface MethodTexts {
  readonly method: string;
  readonly crop?: string;
}

/** How the texts were read: as one method, as none of the timetable's, or as any of several. */
export type MethodReading = { readonly code: "method"; readonly method: Method } | MethodUnread;
export type MethodUnread =
  | { readonly code: "no-such-method" }
  | { readonly code: "several-methods"; readonly methods: readonly Method[] };

/** Ways that are one for a timetable that has only one of the two. */
const NEAR: Readonly<Partial<Record<WayName, WayName>>> = {
  cleft: "wedge",
  wedge: "cleft",
  side: "veneer",
  veneer: "side",
  patch: "green",
  green: "patch",
};
const BUDS: ReadonlySet<WayName> = new Set(["patch", "green", "shield", "chip"]);

/** Ways in which nothing is grafted: "stek sambung" is a cutting that is grafted, or a graft on one. */
const UNGRAFTED: ReadonlySet<WayName> = new Set(["cutting", "seedling"]);
const AT_TOP: ReadonlySet<WayName> = new Set(["cleft", "wedge", "softwood"]);
/** "GB", "SP": so few letters may be anybody's, if the table does not bear them (our choice). */
const INITIALS = 2;

/**
 * Reads methods as people write them: the timetable's own name, whatever its capitals and accents;
 * else crop and way in the words of any language, held against the same words of each name. Blank
 * means the timetable's first; beside a crop that it is not of, the only one of that crop.
 */
export function methodReader(timetable: Timetable): (texts: MethodTexts) => MethodReading {
  const all = withLost(timetable);
  const named = all.map((method) => ({ method, words: methodWords(method.name) }));
  const asRead = (method: Method): MethodReading =>
    timetable.methods.includes(method) ? { code: "method", method } : { code: "no-such-method" };
  const first = named.every(({ words }) => words.crops.length === 0) ? named[0] : undefined;
  const usualOf = (crops: readonly string[]) =>
    crops.length === 0 || (named[0] && says(named[0].words, crops)) ? named[0] : first;
  return ({ method: text, crop = "" }) => {
    const crops = cropsIn(crop);
    const written = normalText(text);
    const own =
      written === ""
        ? usualOf(crops)
        : named.find(
            ({ method, words }) =>
              normalText(method.name) === written &&
              (words.crops.length === 0 || says(words, crops)),
          );
    if (own !== undefined) return asRead(own.method);
    if (written === "" && crops.length === 0) return { code: "no-such-method" };
    if (/^\p{L}+$/u.test(written) && written.length === INITIALS) return { code: "no-such-method" };
    const words = methodWords(text, true);
    const wanted = { ...words, crops: [...crops, ...words.crops] };
    const exact = named.filter((one) => fits(one.words, wanted, false));
    // A way without a crop may be what another crop's name says in its near word.
    const isSure = wanted.crops.length > 0 || !exact.some(({ words }) => namesMore(words));
    const fitting =
      exact.length > 0 && isSure ? exact : named.filter((one) => fits(one.words, wanted, true));
    const [fit, ...more] = fitting.map(({ method }) => method);
    if (fit === undefined) return { code: "no-such-method" };
    if (more.length > 0) return { code: "several-methods", methods: [fit, ...more] };
    return asRead(fit);
  };
}

/**
 * Every method of the table in its order, those that can't be used without steps: a batch that means
 * such a one is never taken for another's.
 */
function withLost({ methods, leftOut }: Timetable): readonly Method[] {
  if (leftOut === undefined) return methods;
  const lostBefore = (at: number) =>
    leftOut.lost
      .filter(({ before }) => before === at)
      .map(({ name }): Method => ({ name, steps: [], ahead: [], rounds: [], ready: -1 }));
  return [
    ...methods.flatMap((method, at) => [...lostBefore(at), method]),
    ...lostBefore(methods.length),
  ];
}

/** Whether a name says more than the way, such as a crop. */
function namesMore({ crops, others }: MethodWords): boolean {
  return crops.length + others.length > 0;
}

function says({ crops, others }: MethodWords, wanted: readonly string[]): boolean {
  return wanted.every((crop) => crops.includes(crop) || others.includes(crop));
}

function fits(method: MethodWords, wanted: MethodWords, isNear: boolean): boolean {
  const hasWay = (way: WayName) =>
    method.ways.includes(way) ||
    (isNear && method.ways.some((one) => NEAR[way] === one)) ||
    (isNear && method.isAtTop && AT_TOP.has(way));
  // A name that says nothing but the way serves every crop, if that is the way meant.
  const saysWay = wanted.ways.length > 0 || wanted.isBudding || wanted.isAtTop;
  const isOfEvery = !namesMore(method) && saysWay;
  return (
    (isOfEvery || says(method, wanted.crops)) &&
    (namesMore(method) || saysWay) &&
    wanted.others.every((word) => method.others.includes(word)) &&
    wanted.ways.every(hasWay) &&
    !(wanted.isGrafting && method.ways.some((way) => UNGRAFTED.has(way)) && !method.isGrafting) &&
    (!wanted.isAtTop || method.isAtTop || method.ways.some((way) => AT_TOP.has(way))) &&
    (!wanted.isBudding || method.isBudding || method.ways.some((way) => BUDS.has(way)))
  );
}
