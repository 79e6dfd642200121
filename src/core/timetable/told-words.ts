import { foldName } from "../names";
import { isLeaveAlone, type MethodTold, pairKey, type Told, type ToldWords } from "../records";
import { normalText } from "../words";
import { methodWords } from "./method-words";
import type { Timetable } from "./timetable";

/**
 * How cells are read by what a person has told of their words. One that was told to mean a method of
 * the timetable is read so where methods are, with the crop beside it (`methodWord`) or for every crop
 * that does not speak against it; any other is a name.
 */
export function toldWords({ values, notSame }: Told, timetable: Timetable): ToldWords {
  const ofTable = [...timetable.methods, ...(timetable.leftOut?.lost ?? [])];
  const methods = new Map(ofTable.map(({ name }) => [normalText(name), name]));
  const names = new Map<string, string>();
  const methodFor = new Map<string, string>();
  for (const [word, name] of values) {
    const method = methods.get(normalText(name));
    if (method !== undefined) methodFor.set(word, method);
    else if (!isLeaveAlone(name)) names.set(word, name);
  }
  return {
    nameOf: (word) => {
      let name = word;
      // A name may since have been told to mean another; one that comes back to itself stays.
      for (const met = new Set<string>(); names.size > 0; ) {
        const key = foldName(name);
        const next = names.get(key);
        if (next === undefined || met.has(key)) break;
        met.add(key);
        name = next;
      }
      return name;
    },
    methodOf: (texts) => {
      if (methodFor.size === 0) return texts;
      const { method, crop } = texts;
      const told = methodFor.get(foldName(methodWord(texts)));
      if (told !== undefined) return { method: told, crop: isOfCrop(told, crop) ? crop : "" };
      const ofEvery = methodFor.get(foldName(method));
      return ofEvery !== undefined && isOfCrop(ofEvery, crop) ? { method: ofEvery, crop } : texts;
    },
    isLeftAlone: (word) => isLeaveAlone(values.get(foldName(word)) ?? ""),
    isApart: (one, other) => notSame.has(pairKey(one, other)),
  };
}

/** The word by which a method is told: that under Method, behind that under Crop where there is one. */
export function methodWord({ method, crop }: MethodTold): string {
  return `${crop} ${method}`.trim();
}

function isOfCrop(method: string, crop: string): boolean {
  const [of, wanted] = [methodWords(method).crops, methodWords(crop).crops];
  return (
    crop === "" || of.length === 0 || (wanted.length > 0 && wanted.every((one) => of.includes(one)))
  );
}
