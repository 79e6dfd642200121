/** Whether this is the program itself, and not one of its workers. */
export declare const isProgram: boolean;
/** The cores asked for by --cores; as many as there are, up to four, if left out. */
export declare function coresAsked(words: readonly string[]): number;
/**
 * Scores in the order of the jobs, whichever worker did them, so that a run repeats exactly.
 *
 * @param program the bundle that is running; its workers run it again and call workOff
 */
export declare function scoreAll<Job, Score>(
  program: string,
  jobs: readonly Job[],
  cores: number,
): Promise<readonly Score[]>;
/** A worker's part: scores the jobs that it was given. */
export declare function workOff<Job, Score>(score: (job: Job) => Score): void;
