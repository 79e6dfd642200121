/**
 * How long a test waits for a state of a page, in milliseconds: it only ends what hangs. A machine at
 * work with something else must turn no test red.
 */
export const PATIENCE_MS = 120_000;
