import { english } from "../../src/sentences/english";

const groups: Readonly<Record<string, Readonly<Record<string, string>>>> = english;

/** A header in English, also where every message is nonsense: tests call columns by their names. */
export function plainHeader(header: string): string {
  const [, module = "", key = ""] = /^⟦([a-z-]+)\.(\w+)⟧$/.exec(header) ?? [];
  const group = module.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
  return groups[group]?.[key] ?? header;
}
