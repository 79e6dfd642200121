import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { projectRoot } from "../../../src/local/project-root";
import { opened } from "./opened";

const CODE = "function onOpen() {}";

/** Every service object that a script can get hold of, by its kind. */
function servicesByKind(): Map<string, object> {
  const { main, book, app, run } = opened({ code: CODE, pages: { Page: "" } });
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  const globals = run.globals as any;
  const ui = app.getUi();
  const builder = app.newDataValidation().requireCheckbox();
  const found = [
    ...Object.values(run.globals),
    book,
    main,
    main.getRange("A1"),
    ui,
    ui.createMenu("x"),
    builder,
    builder.build(),
    main.getRange("A1").createFilter(),
    app.newFilterCriteria(),
    app.newFilterCriteria().build(),
    globals.LockService.getDocumentLock(),
    globals.PropertiesService.getScriptProperties(),
    globals.HtmlService.createHtmlOutput(""),
  ] as object[];
  return new Map(found.map((object) => [String(object), object]));
}

describe("the list of methods in README.md", () => {
  const text = readFileSync(
    path.join(projectRoot(), "src/local/spreadsheet-app/README.md"),
    "utf8",
  );
  const listed = new Map(
    Array.from(text.matchAll(/^\| `(\w+)` *\| (.+?) *\|$/gm), ([, kind = "", methods = ""]) => [
      kind,
      methods.split(" ").sort(),
    ]),
  );

  it.each(Array.from(servicesByKind()))("is complete for %s", (kind, object) => {
    const methods = Object.entries(object)
      .filter(([name, value]) => typeof value === "function" && name !== "toString")
      .map(([name]) => name);
    expect(listed.get(kind)).toEqual(methods.sort());
  });

  it("lists nothing that is not there", () => {
    expect(Array.from(listed.keys()).sort()).toEqual(Array.from(servicesByKind().keys()).sort());
  });
});
