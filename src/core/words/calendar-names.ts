/** The names that a language's months and weekdays have, in normal form, as its locales have them. */
export interface CalendarNames {
  /** Twelve, January first, with ";" between; a comma between the names of one. */
  readonly months: string;
  /** Seven, Monday first, alike. */
  readonly weekdays: string;
  /** Weekdays cut short, without what stands in full already and what is a month's name, too. */
  readonly shortWeekdays: string;
}
