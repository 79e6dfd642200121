import { escaped } from "./escaped";

/**
 * A pattern of a message of which some facts are not known beforehand.
 *
 * @param said the message with stand-ins for these
 * @param unknown what may stand in place of each stand-in, as parts of a pattern
 */
export function patternOf(said: string, unknown: Readonly<Record<string, string>>): RegExp {
  const pattern = Object.entries(unknown).reduce(
    (text, [standIn, part]) => text.replaceAll(escaped(standIn), () => part),
    escaped(said),
  );
  return new RegExp(pattern);
}
