import type { english } from "./english";

/** All sentences of a language: a message for each of English's, by group and key. */
export type Language = {
  readonly [Group in keyof typeof english]: {
    readonly [Key in keyof (typeof english)[Group]]: string;
  };
};
