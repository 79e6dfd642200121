import { InputError, methodOrRefuse, planAnswer, readHarvestMonths } from "../core";
import { isMissing, levelArgument, textArgument, wholeNumberArgument } from "../door/index";
import { type FunctionEntry, needed, optional } from "./entry";
import { COLUMNS, TIMETABLE } from "./parameters";

const USUAL_ASSURANCE = 0.8;
/** More than any nursery is asked for; a number above has too many noughts. */
const MOST_WANTED = 1_000_000;

export const orderPlan: FunctionEntry = {
  name: "ORDER_PLAN",
  sentence:
    "An order planned backwards: by which day each step is to be done, from how many plants, with what needs.",
  parameters: [
    needed("wanted", "Plants wanted, a whole number."),
    needed("readyBy", "The day by which they are to be ready."),
    TIMETABLE,
    needed("method", "Name of the method; leave blank for the first of the timetable."),
    optional("assurance", "Chance with which the order is to be met, as a share; 0.8 if left out."),
    optional(
      "records",
      "Your table of batches with its header, to plan by what your nursery keeps and how long it takes.",
    ),
    COLUMNS,
    optional("asOf", "The day you plan on; the latest day in the records if left out."),
    optional("variety", "Variety that is wanted; one like the others if left out."),
    optional(
      "harvest",
      'Months in which seed is harvested, such as "Oct-Mar, May-Aug", or a table of crops with such months.',
    ),
  ],
  answers:
    "One row a step, and All with the needs added up. Plants is never less than the plain division by what is kept; Remark says both, and when it is too late.",
  example: '=ORDER_PLAN(150, DATE(2027, 9, 1), , "", 0.8, Records!A1:M7, , Settings!B1)',
  run: (
    door,
    [wanted, readyBy, timetable, method, assurance, records, columns, asOf, variety, harvest],
  ) => {
    const plants = wholeNumberArgument("wanted", door.cell(wanted), 0);
    if (plants < 1 || plants > MOST_WANTED) {
      throw new InputError(
        "argument-unreadable",
        `wanted must be a whole number from 1 to ${MOST_WANTED}; found ${plants}`,
      );
    }
    const by = door.day("readyBy", readyBy);
    const steps = door.timetable(timetable);
    const methodName = isMissing(method) ? null : textArgument("method", door.cell(method));
    const day = isMissing(asOf) ? null : door.day("asOf", asOf);
    return door.out(
      planAnswer({
        wanted: plants,
        readyBy: by,
        timetable: steps,
        methodName,
        assurance: levelArgument("assurance", door.cell(assurance), USUAL_ASSURANCE),
        records: isMissing(records)
          ? null
          : door.records(records, { timetable: steps, asOf: day, columns }),
        asOf: day,
        variety: isMissing(variety) ? "" : textArgument("variety", door.cell(variety)),
        harvest: isMissing(harvest)
          ? null
          : readHarvestMonths(door.grid(harvest), methodOrRefuse(steps, methodName), steps),
      }),
    );
  },
};
