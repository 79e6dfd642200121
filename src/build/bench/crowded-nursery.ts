/** As many tasks as asked within the days, each with hours, and a crew that is nearly full of them. */
export interface CrowdedNursery {
  readonly records: readonly (readonly unknown[])[];
  readonly timetable: readonly (readonly unknown[])[];
  readonly crew: readonly (readonly unknown[])[];
}

const DAYS_TO_GRAFTING = 90;
const HOURS_A_DAY = 8;
const PLANTS_AN_HOUR = 12;
/** Share of the crew's hours that the tasks ask for. */
const FULL = 0.9;
const KINDS = 4;

/**
 * @param tasks  one a batch, spread evenly over the days
 * @param days   within which each has its usual day
 * @param people half of whom do one kind of work only
 */
export function crowdedNursery({
  tasks,
  days,
  people,
  asOf,
}: {
  readonly tasks: number;
  readonly days: number;
  readonly people: number;
  readonly asOf: Date;
}): CrowdedNursery {
  const kinds = Array.from({ length: KINDS }, (_, kind) => `Grafting way ${kind + 1}`);
  const hours = people * days * HOURS_A_DAY * FULL;
  const plants = Math.round((hours / tasks) * PLANTS_AN_HOUR);
  const sown = (at: number) => {
    const usual = Math.floor((at * days) / tasks);
    return new Date(asOf.getFullYear(), asOf.getMonth(), asOf.getDate() + usual - DAYS_TO_GRAFTING);
  };
  return {
    records: [
      ["Batch", "Method", "Sown", "Seeds sown"],
      ...Array.from({ length: tasks }, (_, at) => [
        `B${at}`,
        `Method ${(at % KINDS) + 1}`,
        sown(at),
        plants + (at % 7),
      ]),
    ],
    timetable: [
      ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Per person-hour"],
      ...kinds.flatMap((step, kind) => [
        [`Method ${kind + 1}`, "Sowing", "", "", "", "", "yes", ""],
        [
          `Method ${kind + 1}`,
          step,
          "Sowing",
          DAYS_TO_GRAFTING - 5,
          DAYS_TO_GRAFTING,
          DAYS_TO_GRAFTING + 10 + kind,
          "",
          PLANTS_AN_HOUR,
        ],
      ]),
    ],
    crew: [
      ["Person", "Tasks", "Hours a day"],
      ...Array.from({ length: people }, (_, at) => [
        `P${at}`,
        at % 2 === 0 ? "" : (kinds[at % KINDS] as string),
        HOURS_A_DAY,
      ]),
    ],
  };
}
