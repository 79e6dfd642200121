import type { MethodDescription } from "./method-description";
import { cocoaCleftGraft } from "./methods/cocoa-cleft-graft";

/** The methods that come with the add-in, to use as they are or to copy and edit. */
export const builtInMethods: readonly MethodDescription[] = [cocoaCleftGraft];
