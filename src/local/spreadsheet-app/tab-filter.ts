import type { Area } from "./area";
import { cellReader } from "./cell-reading";
import { displayText } from "./cell-values";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { wholeArgument } from "./grid-arguments";
import { sheetOf } from "./open-book";
import { ServiceError, signatureError } from "./service-error";
import { changeRules, rulesOf, type TabFilter } from "./tab-rules";

/** The texts that a criterion hides, behind the objects that scripts hold. */
const hiddenBy = new WeakMap<object, readonly string[]>();

/** The tab's one filter, with its first row as header. Source: reference pages of Filter and Range. */
export function createFilter(run: Execution, sheetId: string, area: Area): ServiceObject {
  const sheet = sheetOf(run.book, sheetId);
  if (rulesOf(sheet).filter) {
    // From memory: the wording.
    throw new ServiceError("You can't create a filter in a sheet that already has a filter.");
  }
  changeRules(sheet, { filter: { ...area, hides: {}, hidden: [] } });
  return filterService(run, sheetId);
}

/** The filter of a tab; null where it has none. */
export function filterOf(run: Execution, sheetId: string): ServiceObject | null {
  return rulesOf(sheetOf(run.book, sheetId)).filter ? filterService(run, sheetId) : null;
}

/** Whether the tab's filter hides a row, counted from 0. */
export function isFilteredOut(run: Pick<Execution, "book">, sheetId: string, row: number): boolean {
  return rulesOf(sheetOf(run.book, sheetId)).filter?.hidden.includes(row) ?? false;
}

function filterService(run: Execution, sheetId: string): ServiceObject {
  const sheet = () => sheetOf(run.book, sheetId);
  const standing = (): TabFilter => {
    const { filter } = rulesOf(sheet());
    // From memory: the wording.
    if (!filter) throw new ServiceError("The filter has been removed.");
    return filter;
  };
  const columnOf = (position: unknown, method: string): number => {
    const at = wholeArgument(position, `SpreadsheetApp.Filter.${method}`) - 1;
    const { column, columns } = standing();
    if (at < column || at >= column + columns) {
      throw new ServiceError("Those columns are out of bounds.");
    }
    return at;
  };
  const hide = (column: number, texts: readonly string[]) => {
    const filter = standing();
    const hides = { ...filter.hides, [column]: texts };
    changeRules(sheet(), { filter: { ...filter, hides, hidden: rowsHidden(run, sheetId, hides) } });
    return self;
  };
  const self: ServiceObject = serviceObject(run, "Filter", {
    methods: {
      getRange: () => run.makes.range({ sheetId, area: standing() }),
      getColumnFilterCriteria(position: unknown) {
        const texts = standing().hides[columnOf(position, "getColumnFilterCriteria")] ?? [];
        return texts.length === 0 ? null : criteria(run, texts);
      },
      setColumnFilterCriteria(position: unknown, wanted: unknown) {
        const method = "setColumnFilterCriteria";
        const texts = typeof wanted === "object" && wanted ? hiddenBy.get(wanted) : undefined;
        if (texts === undefined && wanted !== null)
          throw signatureError([position, wanted], method);
        return hide(columnOf(position, method), texts ?? []);
      },
      removeColumnFilterCriteria: (position: unknown) =>
        hide(columnOf(position, "removeColumnFilterCriteria"), []),
      remove() {
        standing();
        changeRules(sheet(), { filter: null });
      },
    },
  });
  return self;
}

/** Rows that a filter hides: looked at when a criterion is set, not again when cells change. From memory. */
function rowsHidden(run: Execution, sheetId: string, hides: TabFilter["hides"]): number[] {
  const { filter } = rulesOf(sheetOf(run.book, sheetId));
  if (!filter) return [];
  const read = cellReader(run.book, sheetId);
  return Array.from({ length: filter.rows - 1 }, (_, at) => filter.row + 1 + at).filter((row) =>
    Object.entries(hides).some(([column, texts]) =>
      texts.includes(displayText(run, read(row, Number(column)))),
    ),
  );
}

function criteria(run: Execution, texts: readonly string[]): ServiceObject {
  const made = serviceObject(run, "FilterCriteria", {
    methods: { getHiddenValues: () => run.realm.array([...texts]) },
  });
  hiddenBy.set(made, texts);
  return made;
}

/** SpreadsheetApp.newFilterCriteria(): hides nothing until it is told to. */
export function filterCriteriaBuilder(run: Execution): ServiceObject {
  let texts: readonly string[] = [];
  const builder: ServiceObject = serviceObject(run, "FilterCriteriaBuilder", {
    methods: {
      setHiddenValues(values: unknown) {
        if (!Array.isArray(values)) throw signatureError([values], "setHiddenValues");
        texts = values.map(String);
        return builder;
      },
      build: () => criteria(run, texts),
    },
  });
  return builder;
}
