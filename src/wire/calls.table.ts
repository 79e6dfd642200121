// Made by npm run sentences from the files of this folder; a test holds it equal.

import type { AheadCalls } from "./ahead";
import type { BesideCalls } from "./beside";
import type { CheckCalls } from "./check";
import type { FacesCalls } from "./faces";
import type { LossesCalls } from "./losses";
import type { OpenCalls } from "./open";
import type { OrdersCalls } from "./orders";
import type { SetUpCalls } from "./set-up";
import type { TakesCalls } from "./takes";
import type { TodayCalls } from "./today";
import type { WorkCalls } from "./work";
import type { WritingCalls } from "./writing";

export interface SidebarCalls
  extends AheadCalls,
    BesideCalls,
    CheckCalls,
    FacesCalls,
    LossesCalls,
    OpenCalls,
    OrdersCalls,
    SetUpCalls,
    TakesCalls,
    TodayCalls,
    WorkCalls,
    WritingCalls {}
