import { existsSync } from "node:fs";
import { CHROMIUM } from "../../../src/build/chromium";

/** Whether tests in a browser can't run here. In CI they always run, and fail without a browser. */
export const isChromiumMissing = !process.env.CI && !existsSync(CHROMIUM);
if (isChromiumMissing) {
  console.warn(
    `No Chromium at ${CHROMIUM}: tests in a browser are left out (CHROMIUM names another).`,
  );
}
