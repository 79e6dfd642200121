import { expect } from "vitest";
import type { SheetDraft } from "../../src/local/workbook-data";
import type { AddOrderAnswer, AddOrderRequest } from "../../src/wire/orders";
import { type Made, type Nursery, openNursery, smallRecords, tab } from "./nursery";

export const HEADER = ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"];
export const ORDER: AddOrderRequest = {
  ...{ order: "N-1", customer: "Ana", variety: "Amberlow", wanted: 40, by: "2027-10-01" },
  sure: [],
};
export const orders = (...rows: readonly (readonly Made[])[]): SheetDraft =>
  tab("Orders", [HEADER, ...rows]);
export const one = (name: Made) => [name, "", "", 10, "2027-09-01"];
export const opened = (...drafts: readonly SheetDraft[]): Nursery =>
  openNursery([smallRecords(), ...drafts]).ready();
export const add = (nursery: Nursery, more: Partial<AddOrderRequest> = {}): AddOrderAnswer =>
  nursery.ask("sidebarAddOrder", { ...ORDER, ...more });
export const refused = (nursery: Nursery, more: Partial<AddOrderRequest> = {}): string => {
  const before = nursery.tabs().includes("Orders") ? nursery.snapshot("Orders") : "";
  const sentence = nursery.refusal("sidebarAddOrder", { ...ORDER, ...more });
  if (before !== "") expect(nursery.snapshot("Orders")).toBe(before);
  expect(nursery.w.lock.isFree()).toBe(true);
  return sentence;
};
export const states = (nursery: Nursery) =>
  nursery
    .values("Write log")
    .slice(2)
    .map((row) => row.at(-1));
export const takeBack = (nursery: Nursery, { logId }: AddOrderAnswer) =>
  nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
