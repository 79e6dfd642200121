/**
 * The script of the sidebar's frame: waits for the add-in's page, gives it `google.script` and
 * lets it take the place of the empty page.
 */

import { scriptRun } from "../../script-run";
import type { CloseMessage, StartMessage } from "../../sidebar-messages";

addEventListener("message", function start(event: MessageEvent<StartMessage>) {
  const [port] = event.ports;
  if (event.source !== parent || event.data?.kind !== "sidebar-start" || !port) return;
  removeEventListener("message", start);
  const { run, receive } = scriptRun(
    event.data.functions,
    (call) => port.postMessage(call),
    formFields,
  );
  // The port outlives the page that is replaced; listeners of the window would not.
  port.onmessage = ({ data }) => receive(data);
  const close: CloseMessage = { close: true };
  const host = {
    close: () => port.postMessage(close),
    // Sidebars have a fixed size.
    setHeight() {},
    setWidth() {},
  };
  Object.assign(globalThis, { google: Object.freeze({ script: Object.freeze({ run, host }) }) });
  document.open();
  document.write(event.data.content);
  document.close();
});

function formFields(value: unknown): Record<string, string> | null {
  if (!(value instanceof HTMLFormElement)) return null;
  const fields: Record<string, string> = {};
  for (const [name, field] of new FormData(value)) {
    if (typeof field === "string") fields[name] = field;
  }
  return fields;
}
