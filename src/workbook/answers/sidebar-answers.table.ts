// Made by npm run sentences from the files of this folder; a test holds it equal.

import type { SidebarCalls } from "../../wire/calls";
import { aheadCalls } from "./ahead";
import type { AnswerersOf } from "./answerer";
import { besideCalls } from "./beside";
import { checkCalls } from "./check";
import { facesCalls } from "./faces";
import { lossesCalls } from "./losses";
import { openCalls } from "./open";
import { ordersCalls } from "./orders";
import { setUpCalls } from "./set-up";
import { takesCalls } from "./takes";
import { todayCalls } from "./today";
import { workCalls } from "./work";
import { writingCalls } from "./writing";

/**
 * Everything that the page may ask of the script: the names that it may call follow from this, in the built
 * file and in the tests. A call that nothing answers does not compile.
 */
export const sidebarAnswers: AnswerersOf<SidebarCalls> = {
  ...aheadCalls,
  ...besideCalls,
  ...checkCalls,
  ...facesCalls,
  ...lossesCalls,
  ...openCalls,
  ...ordersCalls,
  ...setUpCalls,
  ...takesCalls,
  ...todayCalls,
  ...workCalls,
  ...writingCalls,
};
