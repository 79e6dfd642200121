/** Name of the function that gives the bundle's exports to the stubs. */
export const BUNDLE_NAME = "nurseryBatches_";

/** Name of the bundle's exports inside it. */
export const LOADED = "loaded";

/**
 * What the bundle uses most of the language's own objects. As names of a function they are found at once
 * and written short, where each look at a guarded global object is a call, millions of times in a forecast.
 * Contexts of node:vm are guarded so; whether the script server's is, nobody has measured.
 *
 * Source: `globalThis` is ECMAScript 2020 (ECMA-262, 11th edition, 19.1), which the script server runs.
 */
const OFTEN_USED = ["Array", "Float64Array", "Map", "Math", "Number", "Object", "Set", "String"];

/**
 * The bundle is the inside of a function that is run when something is asked of it: a script is read
 * anew for every edit of any tab, most of which are nothing to us.
 */
export function loaderHead(): string {
  return [
    `function ${BUNDLE_NAME}() {`,
    '  "use strict";',
    `  if (${BUNDLE_NAME}.${LOADED}) return ${BUNDLE_NAME}.${LOADED};`,
    `  const { ${OFTEN_USED.join(", ")} } = globalThis;`,
  ].join("\n");
}

export function loaderTail(): string {
  return `  return ${BUNDLE_NAME}.${LOADED} = ${LOADED};\n}`;
}
