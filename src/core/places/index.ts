/** How full places get, week by week. */

export { LOAD_COLUMNS, type PlaceLoads, placeLoads } from "./place-loads";
export type { PlaceRemark } from "./place-remark";
export { type PlacesReading, placeTable, readPlaces } from "./read-places";
