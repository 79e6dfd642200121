/**
 * What is read of a file at most, so that no file, large by chance or made to do harm, stops the
 * program or the browser. Each is far above what a nursery's own tables need.
 */

const MEGABYTE = 2 ** 20;

/** Bytes of the file. A table of a million cells has about 10 packed (.xlsx), 30 as text (.csv). */
export const MOST_FILE_BYTES = 50 * MEGABYTE;

/**
 * Bytes of a workbook's tabs, texts and formats when unpacked; pictures are not unpacked. A million
 * cells have about 50. What reads them needs some five times as much memory.
 */
export const MOST_UNPACKED_BYTES = 100 * MEGABYTE;

/** Parts of a workbook, pictures among them: some for each tab, and one for each picture. */
export const MOST_PARTS = 10_000;

/** Rows of a tab down to the last value: ten times the batches that the page is timed with. */
export const MOST_ROWS = 100_000;

/** Columns of a tab up to the last value: a column a day for more than five years. */
export const MOST_COLUMNS = 2_000;

/** Filled cells of all tabs together: 40,000 batches of 25 columns. */
export const MOST_CELLS = 1_000_000;

/** Characters of all texts, formulas and formats together. */
export const MOST_CHARACTERS = 30_000_000;

/** Characters of one cell: what the imitated spreadsheet takes (from memory). */
export const LONGEST_TEXT = 50_000;

/** Characters of a formula and of a number format. Source: specifications and limits of Excel. */
export const LONGEST_FORMULA = 8_192;
export const LONGEST_FORMAT = 255;

/**
 * Formulas of a tab that fill an area each; where there are more, all of the tab's keep the values of
 * the file. The library holds every cell against every area.
 */
export const MOST_FILLING_FORMULAS = 1_000;

/** Tabs of a workbook: more than anybody finds his way in. */
export const MOST_TABS = 250;

/** Merged areas of a tab: the grid looks at each whenever it is drawn. */
export const MOST_MERGES = 10_000;

/** Time of the processor to read a file, in milliseconds: what is within the limits takes a third. */
export const LONGEST_READING_MS = 15_000;

/** In a browser only the clock can be read, and another program may be busy. */
export const LONGEST_READING_IN_BROWSER_MS = 30_000;

/**
 * Memory of the process that reads a file, all in all, in bytes: with the program that waits for it
 * less than a gigabyte.
 */
export const MOST_MEMORY_BYTES = 800 * MEGABYTE;

/** Bytes of a workbook that the page saves: what was read, and the tabs that were made of it. */
export const MOST_SAVED_BYTES = 2 * MOST_FILE_BYTES;
