import { statSync } from "node:fs";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Rooms whose tests open many workbooks, or a browser, the dearest first. */
const DEAR = ["tests/workbook/faults/", "tests/local/page/", "tests/workbook/", "tests/sidebar/"];

/** Starts the files that take long before the rest, so that no worker ends up with one of them alone. */
export class DearFilesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const room = DEAR.findIndex((one) => moduleId.includes(one));
      return room === -1 ? DEAR.length : room;
    };
    const bytes = new Map(files.map((file) => [file, statSync(file.moduleId).size]));
    const size = (file: TestSpecification) => bytes.get(file) ?? 0;
    return [...files].sort((a, b) => rank(a) - rank(b) || size(b) - size(a));
  }
}
