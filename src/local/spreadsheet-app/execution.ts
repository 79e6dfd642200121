import type { ScriptSettings } from "../script-services";
import type { WallClock } from "../wall-clock";
import type { Area } from "./area";
import type { Desk } from "./desk";
import type { DocumentLock } from "./document-lock";
import type { OpenBook } from "./open-book";
import type { PropertyStores } from "./property-stores";
import { bringsOutRefusals, type Refusals } from "./refusals";
import type { ScriptRealm } from "./script-realm";
import { ServiceError } from "./service-error";
import type { MeteredCalls } from "./service-meter";

/**
 * What a script may do: "full" when it runs from a menu or the sidebar, "limited" in the simple
 * triggers onOpen and onEdit, which may not show anything but a menu.
 */
export type Power = "full" | "limited";

/** Everything that the services of one run of a script work on. */
export interface Execution {
  readonly book: OpenBook;
  readonly realm: ScriptRealm;
  readonly settings: ScriptSettings;
  /** The wall clock of the spreadsheet's zone. */
  readonly clock: WallClock;
  readonly meter: MeteredCalls;
  readonly power: Power;
  readonly desk: Desk;
  /** null where the script belongs to no document. */
  readonly lock: DocumentLock | null;
  readonly refusals: Refusals;
  /** Whether the run may change protected cells. */
  readonly isOwner: boolean;
  readonly properties: PropertyStores;
  /** The text of an .html file of the project by its name without the ending, or null. */
  readonly page: (name: string) => string | null;
  /** The year that it is in the spreadsheet's zone, for days that are typed without one. */
  readonly year: () => number;
  readonly makes: Makes;
}

/** How objects of services get at one another: a range has a sheet, a sheet and its filter have ranges. */
export interface Makes {
  sheet(sheetId: string): ServiceObject;
  range(where: { readonly sheetId: string; readonly area: Area }): ServiceObject;
}

type Methods = Readonly<Record<string, (...parameters: never[]) => unknown>>;

/**
 * An object of a service as scripts see it: every method is counted, and what it refuses is thrown
 * as an error of the script's own context.
 *
 * @param kind such as "Range"; the methods are counted as "Range.getValues"
 * @param properties plain values beside the methods, such as enumerations
 * @param refuse throws where the object can't do what a method is for
 */
export function serviceObject(
  run: Execution,
  kind: string,
  {
    methods,
    properties = {},
    refuse = () => undefined,
  }: {
    readonly methods: Methods;
    readonly properties?: Readonly<Record<string, unknown>>;
    readonly refuse?: (method: string) => void;
  },
): ServiceObject {
  const object: Record<string, unknown> = { ...properties, toString: () => kind };
  for (const [name, method] of Object.entries(methods)) {
    const counted = `${kind}.${name}`;
    const looks = bringsOutRefusals(counted);
    object[name] = (...parameters: never[]) => {
      try {
        return run.meter.pass(counted, () => {
          if (looks) run.refusals.show();
          refuse(name);
          return method(...parameters);
        });
      } catch (error) {
        if (error instanceof ServiceError) throw run.realm.exception(error.message);
        throw error;
      }
    };
  }
  return Object.freeze(object);
}

/** An object of a service in a script's hands. */
export type ServiceObject = Readonly<Record<string, unknown>>;
