/**
 * The rows of a Settings sheet: a label in column A, its value in column B, no
 * header.
 *
 * @param {number} asOf whole days from 1970-01-01
 * @returns {import("./sheet-files.mjs").Cell[][]}
 */
export function settingsRows(asOf) {
  return [
    ["As-of day", { day: asOf }],
    ["Level", 0.8],
    ["Days ahead", 14],
    ["Assurance", 0.8],
  ];
}
