import { ServiceError } from "./service-error";

/** Small texts that a script keeps by name. */
export interface PropertyStore {
  get(key: string): string | null;
  /** @throws ServiceError when the text or the whole store gets too large */
  set(key: string, value: string): void;
  remove(key: string): void;
  entries(): readonly (readonly [string, string])[];
}

export interface PropertyStores {
  readonly script: PropertyStore;
  readonly user: PropertyStore;
  readonly document: PropertyStore;
}

/** Source: developers.google.com/apps-script/guides/services/quotas. */
const LONGEST_VALUE = 9 * 1024;
const LARGEST_STORE = 500 * 1024;

/** Three empty stores; they last as long as the workbook is open. */
export function propertyStores(): PropertyStores {
  return { script: propertyStore(), user: propertyStore(), document: propertyStore() };
}

function propertyStore(): PropertyStore {
  const kept = new Map<string, string>();
  const size = () =>
    Array.from(kept).reduce((sum, [key, value]) => sum + key.length + value.length, 0);
  return {
    get: (key) => kept.get(key) ?? null,
    set(key, value) {
      // The wording of both messages is from memory.
      if (key.length + value.length > LONGEST_VALUE)
        throw new ServiceError("Argument too large: value");
      const before = kept.get(key);
      kept.set(key, value);
      if (size() <= LARGEST_STORE) return;
      if (before === undefined) kept.delete(key);
      else kept.set(key, before);
      throw new ServiceError(
        "You have exceeded the property storage quota. Please remove some properties and try again.",
      );
    },
    remove: (key) => kept.delete(key),
    entries: () => Array.from(kept),
  };
}
