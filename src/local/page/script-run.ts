import { argumentsText } from "../spreadsheet-app/run-values";
import type { CallMessage, ReplyMessage } from "./sidebar-messages";

type Handler = (value: unknown, userObject?: unknown) => void;

interface Handlers {
  readonly success?: Handler;
  readonly failure?: Handler;
  readonly userObject?: unknown;
}

/** A call that is under way or waits. */
interface Pending {
  readonly message: CallMessage;
  readonly handlers: Handlers;
}

/** Source: the guide on client-to-server communication. */
const MOST_AT_ONCE = 10;

/**
 * google.script.run: the functions of the script as methods that give nothing back. Each `with...`
 * makes a new runner and leaves the old one as it is.
 *
 * @param functions the names of the functions that may be called
 * @param send hands a call over to the page around
 * @param readForm the fields of a form by their names; null for what is no form
 * @returns the runner, and what to do with every reply
 */
export function scriptRun(
  functions: readonly string[],
  send: (call: CallMessage) => void,
  readForm: (value: unknown) => Readonly<Record<string, string>> | null,
) {
  const underWay = new Map<number, Pending>();
  const queue: Pending[] = [];
  let calls = 0;

  const sendNext = () => {
    while (underWay.size < MOST_AT_ONCE) {
      const next = queue.shift();
      if (!next) return;
      underWay.set(next.message.id, next);
      send(next.message);
    }
  };
  const runner = (handlers: Handlers): object => {
    const self: Record<string, unknown> = {
      withSuccessHandler: (success: Handler) => runner({ ...handlers, success }),
      withFailureHandler: (failure: Handler) => runner({ ...handlers, failure }),
      withUserObject: (userObject: unknown) => runner({ ...handlers, userObject }),
    };
    for (const name of functions) {
      self[name] = (...parameters: unknown[]): void => {
        // A form may pass as the only argument.
        const form = parameters.length === 1 ? readForm(parameters[0]) : null;
        const text = argumentsText(form ? [form] : parameters);
        calls += 1;
        queue.push({ message: { id: calls, name, argumentsText: text }, handlers });
        sendNext();
      };
    }
    return Object.freeze(self);
  };
  const receive = (reply: ReplyMessage) => {
    const pending = underWay.get(reply.id);
    if (!pending) return;
    underWay.delete(reply.id);
    sendNext();
    const { success, failure, userObject } = pending.handlers;
    if (reply.ok) {
      success?.(JSON.parse(reply.text), userObject);
      return;
    }
    const error = new Error(reply.text);
    error.name = reply.name;
    if (failure) failure(error, userObject);
    else console.error("Uncaught", error);
  };
  return { run: runner({}), receive };
}
