/**
 * A service of the spreadsheet refuses a call. The script sees an error of its own context with
 * the name "Exception" and this message.
 */
export class ServiceError extends Error {
  override readonly name = "ServiceError";
}

/** The arguments of a call fit none of its signatures. Source of the wording: public notes on emulators. */
export function signatureError(parameters: readonly unknown[], method: string): ServiceError {
  const kinds = parameters.map(kindOf).join(",");
  return new ServiceError(
    `The parameters (${kinds}) don't match the method signature for ${method}.`,
  );
}

function kindOf(value: unknown): string {
  if (value === null || value === undefined) return "null";
  if (Array.isArray(value)) return "number[]";
  if (typeof value === "object") return "Object";
  const kind = typeof value;
  return `${kind[0]?.toUpperCase()}${kind.slice(1)}`;
}
