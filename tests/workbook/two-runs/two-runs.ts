import { MessageChannel, type MessagePort, Worker } from "node:worker_threads";
import { buildAddIn } from "../../support/built-add-in";
import type { Nursery } from "../nursery";

/** How long a run waits for the lock here, in place of the ten seconds that it asks for. */
export interface Waiting {
  readonly lockWaitMs: number;
  /** Whether somebody else has the lock, each time that it is looked at; nobody if left out. */
  readonly isHeld?: () => boolean;
}

type Service = Readonly<Record<string, unknown>>;

interface Asked {
  readonly begin?: true;
  readonly end?: true;
  readonly done?: true;
  readonly tick?: number;
  readonly object?: number;
  readonly method?: string;
  readonly given?: readonly unknown[];
}

/**
 * Lets persons tick rows of the due list at once, each in a thread of their own with runs of onEdit of
 * their own. One call is done at a time, whoever's is there first; a run that wants the lock waits for
 * it in earnest.
 *
 * @returns how often a run had to wait
 */
export async function tickAtOnce(
  nursery: Nursery,
  persons: readonly (readonly number[])[],
  { lockWaitMs, isHeld = () => false }: Waiting,
): Promise<number> {
  let waits = 0;
  const code = buildAddIn()
    .read("Code.js")
    .replace(/@customfunction/g, "");
  await Promise.all(persons.map((rows) => person(rows)));
  return waits;

  function person(rows: readonly number[]): Promise<void> {
    const { port1, port2 } = new MessageChannel();
    const signal = new SharedArrayBuffer(4);
    const flag = new Int32Array(signal);
    const worker = new Worker(new URL("./ticking-worker.mjs", import.meta.url), {
      workerData: { code, port: port2, signal, rows },
      transferList: [port2],
    });
    let run: ReturnType<Nursery["w"]["begin"]> | null = null;
    const objects: unknown[] = [];
    const answer = (port: MessagePort, value: unknown) => {
      port.postMessage(value);
      Atomics.store(flag, 0, 1);
      Atomics.notify(flag, 0);
    };
    return new Promise((resolve, reject) => {
      worker.on("error", reject);
      port1.on("message", (asked: Asked) => {
        if (asked.done) {
          port1.close();
          resolve();
          return;
        }
        void answerTo(asked)
          .then((value) => answer(port1, { value }))
          .catch((error: unknown) => answer(port1, { error: (error as Error).message }));
      });
    });

    async function answerTo({ begin, end, tick, object, method, given }: Asked): Promise<unknown> {
      if (begin) {
        objects.length = 0;
        run = nursery.w.begin("limited");
        return Object.fromEntries(
          Object.entries(run.globals).map(([name, service]) => [name, outward(service)]),
        );
      }
      if (end) {
        run?.end();
        return null;
      }
      if (tick !== undefined) {
        nursery.sheet("Due list").getRange(tick, 1).setValue(true);
        return null;
      }
      const service = objects[object ?? -1] as Service;
      const call = () => {
        const found = service[method ?? ""] as (...parameters: readonly unknown[]) => unknown;
        return found(...(given ?? []).map(inward));
      };
      return method === "tryLock" ? lockInEarnest(call as () => boolean) : outward(call());
    }

    async function lockInEarnest(take: () => boolean): Promise<boolean> {
      const end = Date.now() + lockWaitMs;
      for (let turn = 0; ; turn += 1) {
        if (!isHeld() && take()) return true;
        if (turn === 0) waits += 1;
        if (Date.now() > end) return false;
        await new Promise((resolve) => setTimeout(resolve, 1));
      }
    }

    function outward(value: unknown): unknown {
      if (value === null || typeof value !== "object") return value;
      if (value instanceof Date) return { day: value.getTime() };
      if (Array.isArray(value)) return { list: value.map(outward) };
      const known = objects.indexOf(value);
      const number = known === -1 ? objects.push(value) - 1 : known;
      const entries = Object.entries(value as Service).filter(([name]) => name !== "toString");
      return {
        object: number,
        methods: entries.flatMap(([name, one]) => (typeof one === "function" ? [name] : [])),
        properties: Object.fromEntries(
          entries.flatMap(([name, one]) =>
            typeof one === "function" ? [] : [[name, outward(one)] as const],
          ),
        ),
      };
    }

    function inward(value: unknown): unknown {
      if (value === null || typeof value !== "object") return value;
      const given = value as { day?: number; list?: unknown[]; object?: number };
      if (given.day !== undefined) return new Date(given.day);
      if (given.list !== undefined) return given.list.map(inward);
      return objects[given.object ?? -1];
    }
  }
}
