import { parseArgs } from "node:util";
import { shareText, textTable } from "./records/text-table";
import type { Part } from "./words/corpus";
import { countsOf, LIMITS, type Limits, missed, OUTCOMES, type Scored } from "./words/outcome";
import { scoredHeaders } from "./words/score-headers";
import { scoredValues } from "./words/score-values";

/**
 * Whether a nursery's own words are read as a person would read them, or asked about. Run by
 * npm run check:words: three seconds. Of the words in tests/checks/office-words it prints how many are read
 * right, asked about, read wrong, and passed over in silence (words/outcome.ts says what each means),
 * and is red when a limit is missed: of the corpus, and of the practice material of other writers. With
 * -- --list it prints the lines that are not right.
 *
 * A third of the corpus is kept unseen by whoever changes what is read: -- --unseen scores that part
 * alone and prints nothing but counts, never a line.
 */
const { values } = parseArgs({
  options: { list: { type: "boolean" }, unseen: { type: "boolean" } },
});
if (values.list && values.unseen) throw new Error("Lines of the unseen part are never listed.");

const shown: readonly Part[] = values.unseen ? ["unseen"] : ["seen", "practice"];
const headers = (part: Part) => ({
  title: `Headers, ${part}`,
  lines: scoredHeaders(part),
  limits: LIMITS.headers,
});
const parts = [
  ...shown.flatMap((part) => [
    headers(part),
    { title: `Values, ${part}`, lines: scoredValues(part), limits: LIMITS.values },
  ]),
  ...(values.unseen ? [] : [headers("tables")]),
];
for (const { title, lines } of parts) {
  print(title, lines);
  if (values.list) list(lines);
}
const held = parts.map(verdict);
process.exitCode = held.every((one) => one) ? 0 : 1;

function print(title: string, lines: readonly Scored[]): void {
  const groups = [
    ...groupedBy(lines, ({ kind }) => kind),
    ...groupedBy(lines, ({ language }) => language),
    ["all", lines] as const,
  ];
  const rows = groups.map(([group, own]) => {
    const counts = countsOf(own);
    return [group, own.length, ...OUTCOMES.map((one) => shareText(counts[one], own.length))];
  });
  console.log(`\n${textTable([title, "Lines", ...OUTCOMES], rows)}`);
}

function groupedBy(
  lines: readonly Scored[],
  keyOf: (line: Scored) => string,
): readonly (readonly [string, readonly Scored[]])[] {
  const groups = new Map<string, Scored[]>();
  for (const line of lines) groups.set(keyOf(line), [...(groups.get(keyOf(line)) ?? []), line]);
  return [...groups];
}

function list(lines: readonly Scored[]): void {
  const rows = lines
    .filter(({ outcome }) => outcome !== "right")
    .sort((a, b) => OUTCOMES.indexOf(b.outcome) - OUTCOMES.indexOf(a.outcome))
    .map((line) => [
      line.outcome,
      line.at,
      line.kind,
      line.language,
      line.word,
      line.means,
      line.readAs,
    ]);
  console.log(textTable(["Outcome", "At", "Kind", "In", "Word", "Means", "Read as"], rows));
}

/** Whether the limits hold, which is printed. */
function verdict({
  title,
  lines,
  limits,
}: {
  title: string;
  lines: readonly Scored[];
  limits: Limits;
}) {
  const misses = missed(lines, limits);
  const common = lines.filter((line) => line.common);
  console.log(
    `${title}: ${misses.length === 0 ? "every limit holds" : `missed: ${misses.join("; ")}`}` +
      ` (${common.filter(({ outcome }) => outcome === "right").length} of ${common.length} common ones right)`,
  );
  return misses.length === 0;
}
