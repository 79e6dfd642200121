import { WritingError } from "./writing-error";

/**
 * A text that the page sent; '' where it sent nothing.
 *
 * @throws Error when it is neither text nor a number
 */
export function pageText(name: string, value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return value.trim();
  if (typeof value === "number") return String(value);
  throw new WritingError({ code: "unreadable", name });
}

/** A number that the page sent; '' where it sent anything else. */
export function pageNumber(value: unknown): number | "" {
  return typeof value === "number" ? value : "";
}
