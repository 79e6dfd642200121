import { registry } from "../functions/index";

/** Where each function that reads records is given them, and what was told of them: a table of code. */
export function recordsArguments(): string {
  const rows = registry.flatMap(({ name, parameters }) => {
    const at = (wanted: string) => parameters.findIndex((one) => one.name === wanted);
    const [records, columns] = [at("records"), at("columns")];
    return records === -1 || columns === -1 ? [] : [`${name} ${records} ${columns}`];
  });
  return `${HEAD}  "${rows.join(", ")}";\n`;
}

const HEAD = `// Made by npm run docs; a test holds it equal.

/** Of each function which argument is the records, and which their told columns; from 0. */
export const RECORDS_ARGUMENTS =
`;
