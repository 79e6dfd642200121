import { describe, expect, it } from "vitest";
import { projectVersion } from "../../src/build/version";
import { line } from "../../src/sentences/made/settings-tab";
import { MARK } from "../../src/workbook/host/mark";
import { openNursery, SETTINGS, smallRecords } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: [] };

describe("the settings tab", () => {
  it("says in its first line which version set the workbook up", () => {
    const nursery = openNursery([smallRecords()]);
    nursery.ask("sidebarSetUp", ONCE);
    const [at = "none"] =
      /\d{4}-\d\d-\d\d \d\d:\d\d/.exec(String(nursery.value(SETTINGS, "A1"))) ?? [];
    expect(nursery.value(SETTINGS, "A1")).toBe(
      `${MARK} ${line({ at, version: projectVersion() })}`,
    );
  });

  it("names the newer version once Set up has run again, and keeps what the person set", () => {
    const nursery = openNursery([smallRecords()]);
    nursery.ask("sidebarSetUp", ONCE);
    nursery
      .sheet(SETTINGS)
      .getRange("A1")
      .setValue("Nursery batches: settings, made by an older one");
    nursery.sheet(SETTINGS).getRange("B6").setValue(21);
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value(SETTINGS, "A1")).toContain(projectVersion());
    expect(nursery.value(SETTINGS, "B6")).toBe(21);
  });
});
