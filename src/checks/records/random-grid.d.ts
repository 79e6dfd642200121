import { type Grid } from "../../core";
import type { Dice } from "./dice";
/** A table as no office would keep it, though most hold a header of sorts. */
export declare function randomGrid(dice: Dice): Grid;
