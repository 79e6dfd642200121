import type { MethodDescription } from "./method-description";
import { avocadoCleftGraft } from "./methods/avocado-cleft-graft";
import { cashewSoftwoodGraft } from "./methods/cashew-softwood-graft";
import { citrusTBud } from "./methods/citrus-t-bud";
import { cocoaCleftGraft } from "./methods/cocoa-cleft-graft";
import { cocoaGreenPatchBud } from "./methods/cocoa-green-patch-bud";
import { coffeeHypocotylGraft } from "./methods/coffee-hypocotyl-graft";
import { mangoCleftGraft } from "./methods/mango-cleft-graft";
import { mangoStoneGraft } from "./methods/mango-stone-graft";
import { rootedCutting } from "./methods/rooted-cutting";
import { rubberBuddedStump } from "./methods/rubber-budded-stump";
import { rubberGreenBud } from "./methods/rubber-green-bud";

/** The methods that come with the add-in, to use as they are or to copy and edit. The first is meant where none is named. */
export const builtInMethods: readonly MethodDescription[] = [
  cocoaCleftGraft,
  cocoaGreenPatchBud,
  mangoStoneGraft,
  mangoCleftGraft,
  citrusTBud,
  cashewSoftwoodGraft,
  rubberGreenBud,
  rubberBuddedStump,
  avocadoCleftGraft,
  coffeeHypocotylGraft,
  rootedCutting,
];
