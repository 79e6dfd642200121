/**
 * Months in which cocoa is harvested, main crop and mid crop, as an example of what may stand in a
 * nursery's own table of harvest months.
 *
 * Source: International Cocoa Organization, FAQ "What time of year is cocoa harvested?", citing
 *   Wood, G. A. R., Lass, R. A. (1985). Cocoa, 4th ed. Venezuela has one entry.
 */
export const ICCO_HARVEST_MONTHS: readonly (readonly [place: string, months: string])[] = [
  ["Brazil", "Oct-Mar, Jun-Sep"],
  ["Cameroon", "Sep-Feb, May-Aug"],
  ["Colombia", "Apr-Jun, Oct-Dec"],
  ["Congo (Dem. Rep.)", "Sep-Mar, Apr-Sep"],
  ["Costa Rica", "Jul-Feb, Mar-Jun"],
  ["Cote d'Ivoire", "Oct-Mar, May-Aug"],
  ["Dominican Republic", "Apr-Jul, Oct-Jan"],
  ["Ecuador", "Mar-Jun, Dec-Jan"],
  ["Ghana", "Sep-Mar, May-Aug"],
  ["Grenada", "Apr-Nov, Dec-Mar"],
  ["Haiti", "Mar-Jun, Jul-Feb"],
  ["Indonesia", "Sep-Dec, Mar-Jul"],
  ["Jamaica", "Dec-Mar, Apr-Nov"],
  ["Liberia", "Oct-Mar, Apr-Sep"],
  ["Malaysia", "Oct-Dec, Apr-May"],
  ["Mexico", "Oct-Feb, Mar-Aug"],
  ["Nigeria", "Sep-Mar, Jun-Aug"],
  ["Panama", "Mar-Jun, Jul-Feb"],
  ["Papua New Guinea", "Apr-Jul, Oct-Dec"],
  ["Sri Lanka", "Nov-Feb, Mar-Oct"],
  ["Togo", "Oct-Mar, Apr-Sep"],
  ["Trinidad", "Dec-Mar, Apr-Nov"],
  ["Venezuela", "Mar-Sep"],
];
