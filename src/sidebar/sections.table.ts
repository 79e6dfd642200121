// Made by npm run sentences from the folders; a test holds it equal.

import * as text from "../sentences/made/page";
import { aheadSection } from "./ahead/ahead-section";
import { checkSection } from "./check/check-section";
import { ordersSection } from "./orders/orders-section";
import type { ListedSection } from "./section";
import { setUpSection } from "./set-up/set-up-section";
import { takesSection } from "./takes/takes-section";
import { todaySection } from "./today/today-section";

/** The page's sections in their order, the only list of them. */
export const SECTIONS = [
  { key: "today", title: text.today, section: todaySection },
  { key: "ahead", title: text.ahead, section: aheadSection },
  { key: "takes", title: text.takes, section: takesSection },
  { key: "orders", title: text.orders, section: ordersSection },
  { key: "check", title: text.check, section: checkSection },
  { key: "set-up", title: text.setUp, section: setUpSection },
] as const satisfies readonly ListedSection[];
