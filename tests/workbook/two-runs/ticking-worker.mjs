// A person with a phone: ticks rows of the due list one by one, each with its own run of onEdit. The
// services are in another thread, and every call to them stands still until it is answered, so that
// two such persons are really at it at once.
import vm from "node:vm";
import { receiveMessageOnPort, workerData } from "node:worker_threads";

const { code, port, signal, rows } = workerData;
const flag = new Int32Array(signal);
const objects = new Map();

/** Asks the other thread and waits. */
function ask(message) {
  Atomics.store(flag, 0, 0);
  port.postMessage(message);
  let answer = receiveMessageOnPort(port);
  while (answer === undefined) {
    Atomics.wait(flag, 0, 0, 1000);
    answer = receiveMessageOnPort(port);
  }
  const { value, error } = answer.message;
  if (error !== undefined) throw new Error(error);
  return value;
}

/** Values as the script's own context makes them; objects of services by their number, always the same. */
function inward(value, realm) {
  if (value === null || typeof value !== "object") return value;
  if ("day" in value) return realm.date(value.day);
  if ("list" in value) return realm.list(value.list.map((one) => inward(one, realm)));
  const { object, methods, properties } = value;
  let known = objects.get(object);
  if (known === undefined) {
    known = {};
    for (const method of methods) {
      known[method] = (...given) =>
        inward(ask({ object, method, given: given.map(outward) }), realm);
    }
    Object.defineProperty(known, "number", { value: object });
    objects.set(object, known);
    for (const [name, inner] of Object.entries(properties)) known[name] = inward(inner, realm);
  }
  return known;
}

function outward(value) {
  if (value === null || typeof value !== "object") return value;
  if (Object.prototype.toString.call(value) === "[object Date]") return { day: Number(value) };
  if (Array.isArray(value)) return { list: value.map(outward) };
  return { object: value.number };
}

for (const row of rows) {
  const context = vm.createContext({ console });
  const realm = vm.runInContext(
    "({ date: (instant) => new Date(instant), list: (items) => Array.from(items) })",
    context,
  );
  objects.clear();
  const globals = ask({ begin: true });
  for (const [name, service] of Object.entries(globals)) context[name] = inward(service, realm);
  vm.runInContext(code, context);
  const sheet = context.SpreadsheetApp.getActiveSpreadsheet().getSheetByName("Due list");
  const range = sheet.getRange(row, 1);
  ask({ tick: row });
  const edited = { rowStart: row, rowEnd: row, columnStart: 1, columnEnd: 1 };
  context.onEdit({ range: { ...range, ...edited } });
  ask({ end: true });
}
port.postMessage({ done: true });
port.close();
