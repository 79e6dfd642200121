/** What the page gives the sidebar's frame at the start, beside the port that they talk through. */
export interface StartMessage {
  readonly kind: "sidebar-start";
  /** The add-in's page. */
  readonly content: string;
  /** The functions that the page may call. */
  readonly functions: readonly string[];
}

/** A call of google.script.run. */
export interface CallMessage {
  readonly id: number;
  readonly name: string;
  readonly argumentsText: string;
}

export type ReplyMessage =
  | { readonly id: number; readonly ok: true; readonly text: string }
  | { readonly id: number; readonly ok: false; readonly name: string; readonly text: string };

/** The page in the frame asks to be closed. */
export interface CloseMessage {
  readonly close: true;
}
