import type { ScriptSettings } from "../script-services";
import { wallClock } from "../wall-clock";
import type { Desk } from "./desk";
import { type DocumentLock, documentLock } from "./document-lock";
import type { Execution, Power, ServiceObject } from "./execution";
import type { OpenBook } from "./open-book";
import { propertyStores } from "./property-stores";
import { rangeService } from "./range-service";
import { type LateRefusals, refusals } from "./refusals";
import { scriptGlobals } from "./script-globals";
import type { ScriptRealm } from "./script-realm";
import { type MeteredCalls, type ServiceMeter, serviceMeter } from "./service-meter";
import { sheetService } from "./sheet-service";
import { spreadsheetService } from "./spreadsheet-service";
import type { UserEdit } from "./user-edits";

/** The surroundings of a workbook's scripts; they outlive the single run. */
export interface ScriptHost {
  readonly book: OpenBook;
  readonly meter: ServiceMeter;
  readonly lock: DocumentLock;
  /**
   * Begins a run. Call `end` when the script is through, whatever came of it.
   * @param counted false for calls that the meter shall not see, such as those of a test that looks
   */
  begin(realm: ScriptRealm, power: Power, counted?: boolean): ScriptRun;
}

/** One run of a script, from its first call to its end. */
export interface ScriptRun {
  /** The services to put into the script's global scope. */
  readonly globals: Readonly<Record<string, ServiceObject>>;
  /** What onEdit gets. */
  editEvent(edit: UserEdit): object;
  /**
   * Gives back what the script still holds.
   * @throws an "Exception" for a refused write that the script has not heard of
   */
  end(): void;
}

export interface ScriptHostOptions {
  readonly settings: ScriptSettings;
  readonly desk: Desk;
  /** The text of an .html file of the project by its name without the ending, or null. */
  readonly page: (name: string) => string | null;
  /** Milliseconds since 1970-01-01 UTC. */
  readonly now: () => number;
  /** "alone" if left out. */
  readonly lateRefusals?: LateRefusals;
  /** False where `getDocumentLock()` is null, as in test runs of an add-on; true if left out. */
  readonly hasDocumentLock?: boolean;
}

const UNCOUNTED: MeteredCalls = { pass: (_, call) => call() };

/** Does something in a run and ends it; what it throws goes before a refusal at the end. */
export function endingRun<Result>(run: ScriptRun, work: () => Result): Result {
  let result: Result;
  try {
    result = work();
  } catch (error) {
    try {
      run.end();
    } catch {
      // The script has failed already.
    }
    throw error;
  }
  run.end();
  return result;
}

/** The services for the scripts of one workbook: what runs share, and what each run gets of its own. */
export function scriptHost(book: OpenBook, options: ScriptHostOptions): ScriptHost {
  const meter = serviceMeter();
  const lock = documentLock();
  const properties = propertyStores();
  const clock = wallClock(options.settings.spreadsheetZone);
  return {
    book,
    meter,
    lock,
    begin(realm, power, counted = true) {
      let year: number | null = null;
      const run: Execution = {
        ...options,
        book,
        realm,
        clock,
        meter: counted ? meter : UNCOUNTED,
        power,
        lock: options.hasDocumentLock === false ? null : lock,
        // A test that looks and acts is the workbook's owner, and hears at once.
        refusals: refusals(counted ? (options.lateRefusals ?? "alone") : "never"),
        isOwner: !counted,
        properties,
        year: () => {
          year ??= clock.fieldsOf(options.now()).year;
          return year;
        },
        makes: {
          sheet: (sheetId) => sheetService(run, sheetId),
          range: (where) => rangeService(run, where),
        },
      };
      return {
        globals: scriptGlobals(run),
        editEvent: (edit) => editEvent(run, edit),
        end() {
          // The real one frees the lock of a script that ends without doing so itself.
          lock.giveBack(run);
          try {
            run.refusals.show();
          } catch (error) {
            throw realm.exception((error as Error).message);
          }
        },
      };
    },
  };
}

/** Source of the fields: the guide on event objects. */
function editEvent(run: Execution, { sheetId, area, value, oldValue }: UserEdit): object {
  const event = run.realm.parse("{}") as Record<string, unknown>;
  event.source = spreadsheetService(run);
  event.range = rangeService(run, {
    sheetId,
    area,
    properties: {
      rowStart: area.row + 1,
      rowEnd: area.row + area.rows,
      columnStart: area.column + 1,
      columnEnd: area.column + area.columns,
    },
  });
  if (value !== undefined) event.value = value;
  if (oldValue !== undefined) event.oldValue = oldValue;
  return event;
}
