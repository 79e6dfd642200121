import { readFileSync } from "node:fs";
import { dirname, join, normalize, sep } from "node:path";

export interface Import {
  readonly file: string;
  readonly from: string;
  readonly typeOnly: boolean;
}

/** Every import of a file, of its types, of what it hands on, and those made while it runs. */
export function importsOf(file: string): Import[] {
  const text = readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, "");
  const kinds = [
    /\b(?:import|export)\s+(type\s)?[^"';]*?\bfrom\s*["']([^"']+)["']/g,
    /\bimport\s*()["']([^"']+)["']/g,
    /\b(?:import|require)\s*\(\s*()["']([^"']+)["']/g,
  ];
  return kinds.flatMap((kind) =>
    [...text.matchAll(kind)].map(([, type, from]) => ({
      file,
      from: from as string,
      typeOnly: type !== undefined && type !== "",
    })),
  );
}

/** The path that an import of a file of ours points at, without its ending; null for packages. */
export function targetOf({ file, from }: Import): string | null {
  return from.startsWith(".")
    ? normalize(join(dirname(file), from))
        .split(sep)
        .join("/")
    : null;
}
