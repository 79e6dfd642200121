import { nearAlike } from "../names";
import { FACT_NAMES, NAMED_FACTS, type Records, type Trouble } from "../records";

/** Names of one column that may be one, with how many batches bear each; the rarer is the one found. */
export function nearNames({ batches, columns, words }: Records): Trouble[] {
  return NAMED_FACTS.filter((fact) => fact !== "method").flatMap((fact) => {
    const borne = new Map<string, { readonly row: number; batches: number }>();
    for (const batch of batches) {
      const name = batch[fact];
      const before = borne.get(name);
      if (before !== undefined) before.batches += 1;
      else if (name !== "") borne.set(name, { row: batch.row, batches: 1 });
    }
    const of = (name: string) => borne.get(name) ?? { row: null, batches: 0 };
    const match = columns.find(({ target }) => target?.kind === "fact" && target.fact === fact);
    const open = nearAlike([...borne.keys()]).filter((pair) => words?.isApart(...pair) !== true);
    return open.map((pair): Trouble => {
      const [rare, common] = of(pair[0]).batches > of(pair[1]).batches ? [...pair].reverse() : pair;
      const { row, batches: few } = of(rare as string);
      return {
        row,
        column: match?.header ?? FACT_NAMES[fact],
        found: rare as string,
        code: "near-alike",
        batches: few,
        name: common as string,
        others: of(common as string).batches,
      };
    });
  });
}
