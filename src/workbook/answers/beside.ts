import type { BesideCalls, BesideTableName, TableTold } from "../../wire/beside";
import { besideGuesses } from "../set-up/beside-guesses";
import type { AnswerersOf } from "./answerer";
import { anyText, anyTextOrNull, listOf, oneOf, record, textIfSent } from "./fields";

export const columnChoices = listOf(record({ header: anyText, readAs: anyTextOrNull }));

export const tablesTold = listOf(
  record<TableTold>({
    table: oneOf<BesideTableName>([
      "orders",
      "crew",
      "closed-days",
      "places",
      "prices",
      "germination",
    ]),
    tab: textIfSent,
    columns: columnChoices,
  }),
);

export const besideCalls: AnswerersOf<BesideCalls> = {
  sidebarTables: { asked: { tab: anyText, told: tablesTold }, answer: besideGuesses },
};
