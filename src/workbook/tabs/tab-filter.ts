type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/**
 * Takes a tab's filter off while work fills the tab, and puts it back over the new rows with what it
 * hid. Left on, it would go on hiding the rows at the places that it hid before, whatever stands there
 * by now; and whether a script writes to rows that a filter hides, nobody has looked: a public project
 * met that it does not (socialpoint-labs/sheetfu-apps-script#21).
 *
 * @param header row of the header, from 1
 */
export function withoutFilter<Result>(sheet: Sheet, header: number, work: () => Result): Result {
  const filter = sheet.getFilter();
  if (filter === null) return work();
  const range = filter.getRange();
  const [first, columns] = [range.getColumn(), range.getNumColumns()];
  const hidden = Array.from({ length: columns }, (_, at) => ({
    column: first + at,
    criteria: filter.getColumnFilterCriteria(first + at),
  }));
  filter.remove();
  try {
    return work();
  } finally {
    putBack(sheet, { header, first, columns }, hidden);
  }
}

function putBack(
  sheet: Sheet,
  place: { readonly header: number; readonly first: number; readonly columns: number },
  hidden: readonly {
    readonly column: number;
    readonly criteria: GoogleAppsScript.Spreadsheet.FilterCriteria | null;
  }[],
): void {
  try {
    const rows = Math.max(1, sheet.getLastRow() - place.header + 1);
    const fresh = sheet.getRange(place.header, place.first, rows, place.columns).createFilter();
    for (const { column, criteria } of hidden) {
      if (criteria !== null) fresh.setColumnFilterCriteria(column, criteria);
    }
  } catch {
    // A view that is lost is set again by whoever wants it.
  }
}
