import { zipSync } from "fflate";
import { notAWorkbook, tabDamaged } from "../sentences/made/file-faults";
import { MOST_FILLING_FORMULAS } from "./file-limits";
import { PersonError } from "./person-error";
import { zipParts } from "./zip-parts";

/**
 * Parts of a workbook that hold no values: pictures, drawings, comments, links, filters, looks.
 * Source of the names: ECMA-376 part 1, annex on part names as written by the common programs.
 */
const WITHOUT_VALUES =
  /(?:^|\/)(?:media|drawings|charts|diagrams|embeddings|ctrlProps|activeX|printerSettings|customXml|customUI|docProps|theme|tables|queryTables|pivotTables|pivotCache|slicers|slicerCaches|timelines|timelineCaches|richData|threadedComments|worksheets\/_rels)\/|\/(?:comments\d*|calcChain|vmlDrawing\d*|connections|volatileDependencies)\.\w+$/i;

/** The last column that a tab of an .xlsx workbook may have: XFD. Source: ECMA-376, limits of Excel. */
const LAST_COLUMN = 16_384;

/**
 * A workbook with nothing in it but what holds values, unpacked and checked, and without what lets
 * a short file ask for endless work. The xlsx library's own unpacking has no end on damaged files.
 *
 * @returns a zip file whose parts are stored as they are
 * @throws PersonError when the file is damaged, has a password, is too large or is no .xlsx workbook
 */
export function valueParts(bytes: Uint8Array, fileName: string): Uint8Array {
  const parts = zipParts(
    bytes,
    fileName,
    (name) => /(?:\.xml|\.rels)$/i.test(name) && !WITHOUT_VALUES.test(name),
  );
  const names = Object.keys(parts);
  if (
    !names.includes("[Content_Types].xml") ||
    !names.some((name) => /workbook\w*\.xml$/i.test(name))
  ) {
    throw new PersonError(notAWorkbook({ file: fileName }));
  }
  for (const name of names) {
    const part = parts[name] as Uint8Array;
    if (/sheet[^/]*\.xml$/i.test(name)) parts[name] = calmTab(part, fileName);
  }
  return zipSync(parts, { level: 0 });
}

function calmTab(part: Uint8Array, fileName: string): Uint8Array {
  const text = new TextDecoder().decode(part);
  const damaged = new PersonError(tabDamaged({ file: fileName }));
  if (!/<(?:\w+:)?\w+sheet[\s>]/.test(text)) throw damaged;
  if (/<(?:\w+:)?sheetData\s*>/.test(text) && !/<\/(?:\w+:)?sheetData\s*>/.test(text))
    throw damaged;
  for (const [, last] of text.matchAll(/<(?:\w+:)?col\s[^<>]*?\bmax=["'](\d*)/g)) {
    if (Number(last) > LAST_COLUMN) throw damaged;
  }
  // A link can lie over all cells of a tab, and the library makes a cell of each.
  const calm = withFewAreas(text).replace(/<((?:\w+:)?)hyperlink(?=\s)/g, "<$1left-out");
  return calm === text ? part : new TextEncoder().encode(calm);
}

/** Formulas that fill an area each; the values that they gave stay. */
const FILLING = /<((?:\w+:)?)f\s[^<>]*\bt=["']array["'][^<>]*>(?:[^<]*<\/\1f>)?/g;

/** The library holds every cell against every area. */
function withFewAreas(text: string): string {
  let count = 0;
  for (const _ of text.matchAll(FILLING)) count += 1;
  return count > MOST_FILLING_FORMULAS ? text.replace(FILLING, "") : text;
}
