/**
 * Puts a method in the place of one that the emulator lacks. Its constructors give every object a
 * refusal of its own for what is missing; that finds a setter here that does nothing.
 */
export function lend(
  prototype: object,
  name: string,
  method: (...given: never[]) => unknown,
): void {
  Object.defineProperty(prototype, name, {
    configurable: true,
    get: () => method,
    set: () => undefined,
  });
}
