import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";

/**
 * Whether the engine can calculate a formula that stands in a person's file.
 *
 * If it can't (a function that only another program has, a named range, a reference into another
 * file, an open end such as A2:A), the cell keeps the value that the file holds: an old right
 * value is worth more to the functions that read it than #NAME?.
 *
 * @param formula without its leading "="
 * @param addInNames names of the add-in's functions, upper case
 */
export function canCalculate(formula: string, addInNames: ReadonlySet<string>): boolean {
  let known = true;
  const rest = formula
    .replace(/"(?:[^"]|"")*"/g, "0")
    .replace(/(?:'(?:[^']|'')+'|[A-Za-z_][\w.]*)!/g, (sheet) => {
      if (sheet.includes("[")) known = false;
      return "";
    })
    .replace(/([A-Za-z_][\w.]*)\s*\(/g, (_, name: string) => {
      const upper = name.toUpperCase();
      if (!addInNames.has(upper) && !ALL_IMPLEMENTED_FUNCTIONS_SET.has(upper)) known = false;
      return "(";
    })
    .replace(/#(?:N\/A|[A-Z0-9/]+[!?])/g, "0")
    .replace(/\$?[A-Za-z]{1,3}\$?\d+(?::\$?[A-Za-z]{1,3}\$?\d+)?/g, "0")
    .replace(/\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}/g, "0")
    .replace(/\b(?:TRUE|FALSE)\b/gi, "0")
    .replace(/\d[eE][+-]?\d/g, "0");
  return known && !/[A-Za-z_[\]]/.test(rest);
}

/** Whether a formula calls one of the add-in's functions. @param addInNames upper case */
export function callsAddIn(formula: string, addInNames: ReadonlySet<string>): boolean {
  const outsideText = formula.replace(/"(?:[^"]|"")*"/g, '""');
  return Array.from(outsideText.matchAll(/([A-Za-z_][\w.]*)\s*\(/g)).some(([, name = ""]) =>
    addInNames.has(name.toUpperCase()),
  );
}
