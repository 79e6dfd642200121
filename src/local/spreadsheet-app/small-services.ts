import { formatDate } from "../format-date";
import { isDate } from "../value-kind";
import { wallClock } from "../wall-clock";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument, wholeArgument } from "./grid-arguments";
import type { PropertyStore } from "./property-stores";
import { ServiceError, signatureError } from "./service-error";

/** LockService with the lock of the document. Nothing else runs while a script waits, so it never waits. */
export function lockService(run: Execution): ServiceObject {
  const { lock: held } = run;
  // Source: public projects that met it in scripts without a document.
  if (!held) return serviceObject(run, "LockService", { methods: { getDocumentLock: () => null } });
  const lock = serviceObject(run, "Lock", {
    methods: {
      tryLock(milliseconds: unknown) {
        wholeArgument(milliseconds, "LockService.Lock.tryLock");
        return held.take(run);
      },
      waitLock(milliseconds: unknown) {
        wholeArgument(milliseconds, "LockService.Lock.waitLock");
        if (held.take(run)) return;
        // The wording is from memory.
        throw new ServiceError("Lock timeout: another process was holding the lock for too long.");
      },
      releaseLock: () => held.giveBack(run),
      hasLock: () => held.isHeldBy(run),
    },
  });
  return serviceObject(run, "LockService", { methods: { getDocumentLock: () => lock } });
}

/** PropertiesService: small texts by name, for the script, the person and the document. */
export function propertiesService(run: Execution): ServiceObject {
  return serviceObject(run, "PropertiesService", {
    methods: {
      getDocumentProperties: () => properties(run, run.properties.document),
      getScriptProperties: () => properties(run, run.properties.script),
      getUserProperties: () => properties(run, run.properties.user),
    },
  });
}

function properties(run: Execution, store: PropertyStore): ServiceObject {
  const key = (name: unknown, method: string) =>
    textArgument(name, `PropertiesService.Properties.${method}`);
  const self: ServiceObject = serviceObject(run, "Properties", {
    methods: {
      getProperty: (name: unknown) => store.get(key(name, "getProperty")),
      setProperty(name: unknown, value: unknown) {
        store.set(key(name, "setProperty"), String(value));
        return self;
      },
      deleteProperty(name: unknown) {
        store.remove(key(name, "deleteProperty"));
        return self;
      },
      getKeys: () => run.realm.array(store.entries().map(([name]) => name)),
      getProperties: () => run.realm.parse(JSON.stringify(Object.fromEntries(store.entries()))),
      deleteAllProperties() {
        for (const [name] of store.entries()) store.remove(name);
        return self;
      },
    },
  });
  return self;
}

/** Session, of which the script asks its time zone alone. */
export function sessionService(run: Execution): ServiceObject {
  return serviceObject(run, "Session", {
    methods: { getScriptTimeZone: () => run.settings.scriptZone },
  });
}

/** Utilities: dates as text in a time zone, and names that nobody has used. */
export function utilitiesService(run: Execution): ServiceObject {
  return serviceObject(run, "Utilities", {
    methods: {
      formatDate(date: unknown, zone: unknown, pattern: unknown) {
        if (!isDate(date) || typeof zone !== "string" || typeof pattern !== "string") {
          throw signatureError([date, zone, pattern], "Utilities.formatDate");
        }
        try {
          return formatDate(date, wallClock(zone), pattern);
        } catch (error) {
          throw new ServiceError((error as Error).message);
        }
      },
      getUuid: () => crypto.randomUUID(),
    },
  });
}
