import { sidebar as sidebarTitle } from "../../../sentences/made/local-page";
import type { ScriptPage } from "../../spreadsheet-app/desk";
import { callAnswerer, type ScriptCall } from "../call-answerer";
import type { CallMessage, CloseMessage, StartMessage } from "../sidebar-messages";

/** The place for the add-in's sidebar, at the side of the grid. */
export interface SidebarFrame {
  /** Shows a page in place of the one that is open. */
  open(page: ScriptPage): void;
  close(): void;
}

/**
 * What the real frame may do. As there, its page comes from another origin than the spreadsheet,
 * which keeps the two out of each other's reach.
 * Source: the guide on restrictions of HtmlService.
 */
const SANDBOX =
  "allow-scripts allow-same-origin allow-forms allow-popups allow-popups-to-escape-sandbox allow-downloads allow-modals";

/**
 * @param address where the frame's first page is served
 * @param functions the names of the functions that the sidebar may call
 * @param resized called when the room for the grid has changed
 */
export function sidebarFrame(
  holder: HTMLElement,
  {
    address,
    functions,
    call,
    random,
    resized,
  }: {
    readonly address: string;
    readonly functions: () => readonly string[];
    readonly call: ScriptCall;
    readonly random: () => number;
    readonly resized: () => void;
  },
): SidebarFrame {
  const title = holder.querySelector("h2") as HTMLElement;
  const closer = holder.querySelector("button") as HTMLButtonElement;
  let frame: HTMLIFrameElement | null = null;

  const close = () => {
    if (!frame) return;
    frame.remove();
    frame = null;
    holder.hidden = true;
    resized();
  };
  closer.addEventListener("click", close);

  return {
    close,
    open(page) {
      close();
      const opened = document.createElement("iframe");
      opened.setAttribute("sandbox", SANDBOX);
      opened.title = page.title || sidebarTitle();
      opened.src = address;
      opened.addEventListener(
        "load",
        () => {
          const { port1, port2 } = new MessageChannel();
          const hear = callAnswerer((reply) => port1.postMessage(reply), call, random);
          port1.onmessage = ({ data }: MessageEvent<CallMessage | CloseMessage>) => {
            if ("close" in data) close();
            else hear(data);
          };
          const start: StartMessage = {
            kind: "sidebar-start",
            content: page.content,
            functions: functions(),
          };
          opened.contentWindow?.postMessage(start, new URL(address).origin, [port2]);
        },
        { once: true },
      );
      title.textContent = page.title || sidebarTitle();
      holder.hidden = false;
      holder.append(opened);
      frame = opened;
      resized();
    },
  };
}
