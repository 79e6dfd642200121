import {
  InputError,
  methodOfCrop,
  methodOrRefuse,
  type PlanQuestion,
  type Records,
  readHarvestMonths,
  type Timetable,
  type ToldWords,
  USUAL_ASSURANCE,
  varietyAsTold,
} from "../core";
import { isMissing, levelArgument, textArgument, wholeNumberArgument } from "./arguments";
import type { Door } from "./door";

/** More than any nursery is asked for; a number above has too many noughts. */
const MOST_WANTED = 1_000_000;

/** An order as cells, or a page, say it: nothing in it is trusted. */
export interface OrderAsked {
  readonly wanted: unknown;
  readonly readyBy: unknown;
  readonly method: unknown;
  readonly assurance: unknown;
  readonly asOf: unknown;
  readonly variety: unknown;
  readonly harvest: unknown;
}

interface PlannedWith {
  /** What a person has told of words, by which the method and the variety are read. */
  readonly words?: ToldWords | undefined;
  readonly timetable: Timetable;
  /** Read once the rest is known to be right, since that takes longest. */
  readonly records: (asOf: PlanQuestion["asOf"]) => Records | null;
  /** What sentences call the number wanted and the day. */
  readonly names?: { readonly wanted: string; readonly readyBy: string };
}

/**
 * The order that is to be planned.
 *
 * @throws InputError in a sentence when something of it can't be used
 */
export function planQuestion(
  door: Door,
  order: OrderAsked,
  { timetable, records, words, names = { wanted: "wanted", readyBy: "readyBy" } }: PlannedWith,
): PlanQuestion {
  const text = (name: "method" | "variety") =>
    isMissing(order[name]) ? null : textArgument(name, door.cell(order[name]));
  const wanted = wantedArgument(names.wanted, door.cell(order.wanted));
  const readyBy = door.day(names.readyBy, order.readyBy);
  const asked = text("variety") ?? "";
  const variety = words === undefined ? asked : varietyAsTold(asked, words.nameOf);
  const named = text("method");
  const methodName =
    named === null
      ? methodOfCrop(timetable, variety)
      : (words?.methodOf({ method: named, crop: "" }).method ?? named);
  const asOf = isMissing(order.asOf) ? null : door.day("asOf", order.asOf);
  return {
    wanted,
    readyBy,
    timetable,
    methodName,
    asOf,
    assurance: levelArgument("assurance", door.cell(order.assurance), USUAL_ASSURANCE),
    variety,
    harvest: isMissing(order.harvest)
      ? null
      : readHarvestMonths(
          door.grid(order.harvest),
          methodOrRefuse(timetable, methodName),
          timetable,
        ),
    records: records(asOf),
  };
}

/** Plants wanted. @throws InputError when it is no whole number, or hardly one of plants */
export function wantedArgument(
  name: string,
  cell: Parameters<typeof wholeNumberArgument>[1],
): number {
  const wanted = wholeNumberArgument(name, cell, 0);
  if (wanted >= 1 && wanted <= MOST_WANTED) return wanted;
  const found = wanted;
  throw new InputError({ code: "wanted-out-of-range", argument: name, most: MOST_WANTED, found });
}
