import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import type { CallMessage, ReplyMessage } from "./sidebar-messages";

/** Calls a function of the script with the JSON text of its arguments; gives that of its result. */
export type ScriptCall = (name: string, argumentsText: string) => Promise<string>;

/** The longest that a call is held back, in milliseconds. */
const LATEST_MS = 25;

/**
 * Answers the calls of a sidebar, in no particular order, as the real one does.
 * @param random numbers from 0 to less than 1; they decide whose turn it is
 * @returns what to do with every call
 */
export function callAnswerer(
  reply: (message: ReplyMessage) => void,
  call: ScriptCall,
  random: () => number,
): (message: CallMessage) => void {
  const waiting: CallMessage[] = [];
  const answerOne = async () => {
    const [message] = waiting.splice(Math.floor(random() * waiting.length), 1);
    if (message) reply(await answer(message, call));
  };
  return (message) => {
    waiting.push(message);
    // Each call brings one answer, though not necessarily its own.
    setTimeout(() => void answerOne(), random() * LATEST_MS);
  };
}

async function answer(message: CallMessage, call: ScriptCall): Promise<ReplyMessage> {
  try {
    return { id: message.id, ok: true, text: await call(message.name, message.argumentsText) };
  } catch (error) {
    return { id: message.id, ok: false, ...errorWords(error) };
  }
}

/** Name and message of whatever a script has thrown. */
export function errorWords(error: unknown): { name: string; text: string } {
  if (typeof error !== "object" || error === null || !("message" in error)) {
    return { name: "Error", text: String(error) };
  }
  return { name: "name" in error ? String(error.name) : "Error", text: String(error.message) };
}

/** Numbers from 0 to less than 1, the same for the same seed. @param seed a whole number */
export function seededRandom(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}
