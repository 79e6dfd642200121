import { element } from "./controls/element";
import { functionsList } from "./functions-list";
import { type ScriptRunner, scriptCall } from "./script-call";
import { sidebarApp } from "./sidebar-app";
import { versionNote } from "./version-note";

/** What the spreadsheet gives to a page that it opens; missing in a page opened from anywhere else. */
declare const google: { readonly script: { readonly run: ScriptRunner } } | undefined;

const place = document.getElementById("sections");
const statusPlace = document.getElementById("status");
const versionPlace = document.getElementById("version-note");
const functionsButton = document.getElementById("functions-button");
const functions = document.getElementById("functions");
if (functionsButton instanceof HTMLButtonElement && functions !== null) {
  functionsList(functionsButton, functions);
}
if (typeof google === "undefined") {
  const hint =
    "Open this page from the Nursery menu of a spreadsheet: alone it has nothing to show.";
  place?.append(element("p", {}, hint));
} else {
  const note = versionNote();
  versionPlace?.append(note.element);
  const app = sidebarApp(scriptCall(google.script.run, note.heard));
  place?.append(app.sections);
  statusPlace?.append(app.status);
  void app.open();
}
