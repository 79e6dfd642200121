/** What a section knows, in one place; whatever is drawn from it is drawn again when it changes. */
export interface State<Known extends object> {
  readonly now: Readonly<Known>;
  /** Takes all new values in, then draws once what rests on one that is another than before. */
  set(change: Partial<Known>): void;
  /** Draws after each change of one of the keys, in the order in which this was asked for. */
  on(keys: readonly (keyof Known)[], draw: (now: Readonly<Known>) => void): void;
}

/** @param start what is known before anything was asked or answered */
export function stateOf<Known extends object>(start: Readonly<Known>): State<Known> {
  const now: Known = { ...start };
  const drawn: { keys: readonly (keyof Known)[]; draw: (now: Readonly<Known>) => void }[] = [];
  return {
    now,
    set(change) {
      const names = Object.keys(change) as (keyof Known)[];
      const changed = names.filter((name) => !Object.is(now[name], change[name]));
      Object.assign(now, change);
      for (const { keys, draw } of drawn) {
        if (changed.some((name) => keys.includes(name))) draw(now);
      }
    },
    on: (keys, draw) => {
      drawn.push({ keys, draw });
    },
  };
}
