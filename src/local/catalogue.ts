/** What the formula helper of a spreadsheet shows about one custom function. */
export interface CatalogueEntry {
  readonly name: string;
  /** One block of text, line breaks and tags dropped. */
  readonly description: string;
  readonly parameters: readonly CatalogueParameter[];
}

export interface CatalogueParameter {
  readonly name: string;
  readonly description: string;
}

const DECLARED = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*function\s+([A-Za-z]\w*)\s*\(([^)]*)\)/g;

/**
 * The functions of a script that are marked `@customfunction`, in the order of the text.
 *
 * As in the real host, parameter names come from the declared signature, not from `@param`
 * (which only adds the description), and a name that ends in `_` is private.
 * Source: developers.google.com/apps-script/guides/sheets/functions and /concepts/jsdoc.
 *
 * @param code the text of a classic script
 */
export function readCatalogue(code: string): CatalogueEntry[] {
  const entries: CatalogueEntry[] = [];
  for (const [, comment = "", name = "", signature = ""] of code.matchAll(DECLARED)) {
    if (!/@customfunction\b/.test(comment) || name.endsWith("_")) continue;
    const lines = comment.split(/\r?\n/).map((line) => line.replace(/^\s*\*?\s?/, ""));
    const text = lines.join("\n");
    const described = parameterDescriptions(text);
    entries.push({
      name,
      description: plain(text.split(/^\s*@/m)[0] ?? ""),
      parameters: signature
        .split(",")
        .map((parameter) => parameter.trim())
        .filter((parameter) => parameter !== "")
        .map((parameter) => ({ name: parameter, description: described.get(parameter) ?? "" })),
    });
  }
  return entries;
}

/** Reads `@param {type} name - description`, each running to the next tag. */
function parameterDescriptions(text: string): Map<string, string> {
  const found = new Map<string, string>();
  const tag =
    /^\s*@param\s+(?:\{[^}]*\}\s*)?\[?([A-Za-z_$][\w$]*)[^\s\]]*\]?([\s\S]*?)(?=^\s*@|$(?![\s\S]))/gm;
  for (const [, name = "", description = ""] of text.matchAll(tag)) {
    found.set(name, plain(description.replace(/^\s*-\s*/, "")));
  }
  return found;
}

function plain(text: string): string {
  return text
    .replace(/<[^>]*>/g, "")
    .replace(/\s+/g, " ")
    .trim();
}
