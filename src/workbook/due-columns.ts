/** Columns of the due tab, from 1. What a person fills in stands first, where a phone shows it. */
export const DUE_COLUMN = {
  done: 1,
  count: 2,
  who: 3,
  note: 4,
  state: 5,
  task: 6,
  batch: 7,
  place: 8,
  plants: 9,
  from: 10,
  by: 11,
  status: 12,
  hours: 13,
  caution: 14,
} as const;

/** Row of the due tab's first task, from 1. */
export const DUE_FIRST_ROW = 3;
