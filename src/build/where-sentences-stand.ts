/** A module of sentences as TypeScript names it. */
const MODULE = /sentences\/made\/([a-z-]+)/g;

/**
 * What to do where TypeScript misses a sentence: it names the made module or the map, never the file that is
 * written by hand. Null where its complaints are of something else.
 *
 * @param complaints what TypeScript printed
 * @example whereSentencesStand("Property 'due' does not exist on type 'typeof import(\"/x/sentences/made/takes-page\")'.")?.includes("takesPage") // true
 */
export function whereSentencesStand(complaints: string): string | null {
  const groups = [...complaints.matchAll(MODULE)].map(([, file = ""]) =>
    file.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()),
  );
  if (groups.length === 0 && !/\bSentencesOf</.test(complaints)) return null;
  const named = groups.length === 0 ? "its capability" : [...new Set(groups)].join(", ");
  return `A sentence that is missing stands in src/sentences/english.ts, in the group ${named}: add it there, then npm run sentences.`;
}
