import { ServiceError, signatureError } from "./service-error";

/**
 * The rows of a two-dimensional argument, checked against the size of a range.
 * Source of the two sentences: quoted in many public repositories.
 * @throws ServiceError when it is no such array, or of another size
 */
export function gridArgument(
  value: unknown,
  size: { readonly rows: number; readonly columns: number },
  method: string,
): readonly (readonly unknown[])[] {
  if (!Array.isArray(value) || !value.every((row) => Array.isArray(row))) {
    throw signatureError([value], method);
  }
  const rows = value as unknown[][];
  if (rows.length !== size.rows) {
    throw new ServiceError(
      `The number of rows in the data does not match the number of rows in the range. The data has ${rows.length} but the range has ${size.rows}.`,
    );
  }
  for (const row of rows) {
    if (row.length === size.columns) continue;
    throw new ServiceError(
      `The number of columns in the data does not match the number of columns in the range. The data has ${row.length} but the range has ${size.columns}.`,
    );
  }
  return rows;
}

/** A whole number argument. @throws ServiceError when it is none */
export function wholeArgument(value: unknown, method: string): number {
  if (typeof value !== "number" || !Number.isInteger(value)) throw signatureError([value], method);
  return value;
}

/** A text argument. @throws ServiceError when it is none */
export function textArgument(value: unknown, method: string): string {
  if (typeof value !== "string") throw signatureError([value], method);
  return value;
}
