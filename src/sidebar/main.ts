import { notInSpreadsheet } from "../sentences/made/page";
import { paragraph } from "./controls/paragraph";
import { functionsList } from "./functions-list";
import { type ScriptRunner, scriptCall } from "./script-call";
import { sidebarApp } from "./sidebar-app";
import { versionNote } from "./version-note";

/** What the spreadsheet gives to a page that it opens; missing in a page opened from anywhere else. */
declare const google: { readonly script: { readonly run: ScriptRunner } } | undefined;

const holder = document.getElementById("sections");
const statusHolder = document.getElementById("status");
const versionHolder = document.getElementById("version-note");
const functionsButton = document.getElementById("functions-button");
const functions = document.getElementById("functions");
if (functionsButton instanceof HTMLButtonElement && functions !== null) {
  functionsList(functionsButton, functions);
}
if (typeof google === "undefined") {
  holder?.append(paragraph(notInSpreadsheet()));
} else {
  const note = versionNote();
  versionHolder?.append(note.element);
  const app = sidebarApp(scriptCall(google.script.run, note.heard));
  holder?.append(app.sections);
  statusHolder?.append(app.status);
  void app.open();
}
