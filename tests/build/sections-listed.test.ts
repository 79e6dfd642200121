import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";

const FOLDER = "src/sidebar";
const APP = readFileSync(path.join(FOLDER, "sidebar-app.ts"), "utf8");
const sections = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((file) =>
  file.endsWith("-section.ts"),
);

it("finds sections", () => {
  expect(sections.length).toBeGreaterThan(5);
});

it.each(sections)(
  "%s is imported by sidebar-app.ts, whose list is complete by its types",
  (file) => {
    expect(APP).toContain(`from "./${file.split(path.sep).join("/").replace(/\.ts$/, "")}"`);
  },
);
