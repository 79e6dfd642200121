/** A nursery's table of any size, the same for the same size, for timing. */
export interface BigTable {
  /** Header and rows; days are Dates at midnight of the zone the script runs in. */
  readonly rows: unknown[][];
}

const COLUMNS =
  "Batch, From lot, Variety, Rootstock, Method, Place, Grafter, Scion source, Sown, " +
  "Seeds sown, Germination day, Germinated, Grafted on, Grafts made, First release, " +
  "Take count day, Takes, Branching, Union closed, Ready on, Ready plants, Culled, " +
  "Dispatched, Closed, Note";
const HEADER = COLUMNS.split(", ");

/**
 * @param batches how many
 * @param open    share of them, 0 to 1, that are still under way
 */
export function bigTable(batches: number, open: number, asOf: Date): BigTable {
  let seed = 20261125;
  const chance = () => {
    // Park and Miller's minimal standard generator (1988): enough for made-up rows.
    seed = (seed * 48271) % 2147483647;
    return seed / 2147483647;
  };
  const pick = (names: readonly string[]) => names[Math.floor(chance() * names.length)] as string;
  const day = (back: number) =>
    new Date(asOf.getFullYear(), asOf.getMonth(), asOf.getDate() - Math.round(back));
  const rows: unknown[][] = [HEADER];
  for (let batch = 0; batch < batches; batch += 1) {
    const under = chance() < open;
    const age = under ? 5 + chance() * 230 : 260 + chance() * 700;
    const grafted = age > 92;
    const counted = age > 125;
    const ready = age > 210;
    const seeds = 50 + Math.floor(chance() * 300);
    const up = Math.round(seeds * (0.75 + chance() * 0.2));
    const grafts = Math.round(up * (0.7 + chance() * 0.2));
    const takes = Math.round(grafts * (0.5 + chance() * 0.45));
    const fit = Math.round(takes * (0.8 + chance() * 0.2));
    rows.push([
      `B-${batch + 1}`,
      "",
      pick(["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"]),
      pick(["Stock A", "Stock B"]),
      "Cocoa cleft graft",
      pick(["Bay 1", "Bay 2", "Bay 3", "Bay 4"]),
      grafted ? pick(["K", "M", "O", "T"]) : "",
      pick(["Garden 1", "Garden 2", "Garden 3"]),
      day(age),
      seeds,
      age > 12 ? day(age - 8 - chance() * 5) : "",
      age > 12 ? up : "",
      grafted ? day(age - 88 - chance() * 3) : "",
      grafted ? grafts : "",
      age > 108 ? day(age - 104 - chance() * 3) : "",
      counted ? day(age - 120 - chance() * 4) : "",
      counted ? takes : "",
      age > 160 ? day(age - 150 - chance() * 8) : "",
      age > 190 ? day(age - 180 - chance() * 8) : "",
      ready ? day(age - 203 - chance() * 6) : "",
      ready ? fit : "",
      chance() < 0.2 ? Math.floor(chance() * 10) : "",
      ready && !under ? fit : "",
      ready && !under ? day(age - 215) : "",
      chance() < 0.1 ? "shade moved" : "",
    ]);
  }
  return { rows };
}
