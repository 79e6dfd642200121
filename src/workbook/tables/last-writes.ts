import { openDoor } from "../../door/index";
import type { LastWrite, LastWritesAnswer } from "../../wire/writing";
import { NEW_COLUMN } from "../host/mark";
import { workbookHost } from "../host/workbook-host";
import { plainText } from "../reading/records-tab";
import { type LogEntry, lastEntries } from "../writing/write-log";

/** As many as a page shows, and so many lines of the log as they can hardly exceed. */
const MOST_WRITES = 30;
const LINES_READ = 400;

/** The last writes of the log, the newest first: each can be taken back, days later too. */
export function lastWrites(): LastWritesAnswer {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const { entries, isMore } = lastEntries(workbook, LINES_READ);
  const door = openDoor(workbookHost(workbook));
  const byId = new Map<string, LogEntry[]>();
  for (const entry of entries) byId.set(entry.id, [...(byId.get(entry.id) ?? []), entry]);
  const writes = [...byId.values()].reverse().flatMap((lines): LastWrite[] => {
    const state = stateOf(lines);
    const [first] = lines;
    // A column stays: there may be days of other batches in it by now.
    if (state === null || first === undefined || first.task === NEW_COLUMN) return [];
    const cells = lines.filter((line) => line.state === state || line.state === "kept here");
    return [
      {
        logId: first.id,
        when: first.when,
        who: first.who,
        state,
        task: first.task,
        about: first.batch,
        cells: cells.map(({ tab, cell, header, after }) => ({
          where: cell === "" ? null : `${tab}!${cell}`,
          header,
          value: plainText(door, after),
        })),
      },
    ];
  });
  return {
    writes: writes.slice(0, MOST_WRITES),
    isMore: isMore || writes.length > MOST_WRITES,
  };
}

/** Null for one that came to nothing. */
function stateOf(lines: readonly LogEntry[]): LastWrite["state"] | null {
  const has = (state: LogEntry["state"]) => lines.some((line) => line.state === state);
  if (has("written")) return "written";
  if (has("not known") || has("writing") || has("taking back")) return "not known";
  // A cell that was hit by mistake and put right bears the name of a write that was none.
  return has("taken back") && !has("not written") ? "taken back" : null;
}
