/** With `--mode every-call` something happens at every service call of an action, else at some of them. */
export const EVERY_CALL = process.env.MODE === "every-call";
