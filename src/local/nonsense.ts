import { readFileSync } from "node:fs";
import type { Plugin } from "esbuild";

/*
 * Beside the local page, which is bundled here and sees nothing of the build's folder; the build and the
 * tests take it from here.
 */

/** Every message of nonsense begins with it, and nothing else holds it. */
export const NONSENSE_BRACKET = "⟦";

const MADE = /[\\/]sentences[\\/]made[\\/]([a-z-]+)\.ts$/;

/**
 * A module of sentences as it is where every message is nonsense: its name and facts in odd brackets,
 * so that a test which reads a sentence is red. Null for any other file.
 */
export function nonsenseModule(path: string): string | null {
  const group = MADE.exec(path)?.[1];
  if (group === undefined) return null;
  const made = readFileSync(path, "utf8");
  const messages = [...made.matchAll(/^export const (\w+) = \((.*)\): string/gm)];
  const headers = messages.map(([, key]) => `${key}: ${key}(),`).join(" ");
  const all = made.includes("export const headers")
    ? `\nexport const headers = () => ({ ${headers} });`
    : "";
  const functions = messages
    .map(([, key, parameter = ""]) => {
      // A caller may hand over more than a message is about. Facts stand as they are, unquoted: one may be a
      // message itself, and what reads cells and files looks for it as it stands.
      const facts = [...parameter.matchAll(/readonly (\w+):/g)].map(
        ([, fact]) => ` + " ${fact}=" + d.${fact}`,
      );
      return `export const ${key} = (d) => "${NONSENSE_BRACKET}${group}.${key}"${facts.join("")} + "⟧";`;
    })
    .join("\n");
  return functions + all;
}

/** The same in a bundle that is made where NONSENSE is set: npm run check:nonsense. */
export const nonsense: Plugin = {
  name: "nonsense",
  setup({ onLoad }) {
    if (!process.env.NONSENSE) return;
    onLoad({ filter: MADE }, ({ path }) => ({
      contents: nonsenseModule(path) ?? "",
      loader: "js",
    }));
  },
};
