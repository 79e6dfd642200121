/** Name of the function that gives the bundle's exports to the stubs. */
export const BUNDLE_NAME = "nurseryBatches_";

/** Name of the bundle's exports inside it. */
export const LOADED = "loaded";

/**
 * The bundle is the inside of a function that is run when something is asked of it: a script is read
 * anew for every edit of any tab, most of which are nothing to us.
 */
export function loaderHead(): string {
  return `function ${BUNDLE_NAME}() {\n  "use strict";\n  if (${BUNDLE_NAME}.${LOADED}) return ${BUNDLE_NAME}.${LOADED};`;
}

export function loaderTail(): string {
  return `  return ${BUNDLE_NAME}.${LOADED} = ${LOADED};\n}`;
}
