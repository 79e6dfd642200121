import { existsSync, readFileSync } from "node:fs";
import { type FunctionEntry, registry } from "../functions/index";

const SAMPLE = "sample-sheets/hillside-nursery";
const ROWS = /(<!-- Functions:[^>]*-->\n\n)[\s\S]*?(\n<!-- End of the functions -->)/;

/**
 * README with its table of functions made anew. The rows stay in the order in which they stand; those of new
 * functions come last, to be moved where they belong.
 *
 * @param readme README as it stands
 */
export function readmeWithFunctions(readme: string): string {
  const [block = ""] = ROWS.exec(readme) ?? [];
  if (block === "") throw new Error("README.md has lost the two marks around its functions");
  const stands = ({ name }: FunctionEntry) => {
    const at = block.indexOf(`\`=${name}(`);
    return at === -1 ? block.length : at;
  };
  const rows = [...registry]
    .sort((one, other) => stands(one) - stands(other))
    .map((entry) => [`\`${onSample(entry)}\``, entry.sentence] as const);
  return readme.replace(ROWS, (_, head, end) => `${head}${table(rows)}${end}`);
}

/** A formula on the tabs of the sample nursery: the example's, of whole tabs, unless the help has another. */
function onSample({ example, onSample: own }: FunctionEntry): string {
  return (
    own ?? example.replace(/(\w+|'[\w ]+')!A1:[A-Z]+\d+/g, (_, tab) => `${tab}!A:${lastOf(tab)}`)
  );
}

/** The letters of the last column of a tab. */
function lastOf(tab: string): string {
  const file = tab.replaceAll("'", "").toLowerCase().replace(" ", "-");
  const path = `${SAMPLE}/${file}.csv`;
  if (!existsSync(path))
    throw new Error(`${path} is lacking: give the function's help an onSample`);
  const [header = ""] = readFileSync(path, "utf8").split("\n");
  return lettersOf(header.split(",").length);
}

/** @example lettersOf(28) // "AB" */
function lettersOf(column: number): string {
  const before = Math.floor((column - 1) / 26);
  const letter = String.fromCharCode(65 + ((column - 1) % 26));
  return before === 0 ? letter : `${lettersOf(before)}${letter}`;
}

function table(body: readonly (readonly [string, string])[]): string {
  const rows = [["In a cell", "You get"] as const, ...body];
  const widths = [0, 1].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  const line = (cells: readonly string[], fill: string) =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0, fill)).join(" | ")} |\n`;
  const [header = [], ...others] = rows;
  return [line(header, " "), line(["-", "-"], "-"), ...others.map((row) => line(row, " "))].join(
    "",
  );
}
