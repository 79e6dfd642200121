/**
 * Whether every message is replaced by nonsense (vitest.config.ts). Then only what compares with whole
 * committed pages of English is left out, by this rule alone: nonsense.test.ts names each file that does.
 */
export const isNonsense = process.env.NONSENSE !== undefined;
