/**
 * Our manifest with the time zone that the script project in the cloud has: there it was set by a
 * person, and a push would set it back.
 *
 * @param ours text of the manifest that is pushed
 * @param cloud text of the manifest in the cloud
 * @throws Error where the one in the cloud names no time zone
 */
export function keepTimeZone(ours: string, cloud: string): string {
  const { timeZone } = JSON.parse(cloud) as { timeZone?: unknown };
  if (typeof timeZone !== "string" || timeZone === "") {
    throw new Error("The manifest in the cloud names no time zone");
  }
  return `${JSON.stringify({ ...JSON.parse(ours), timeZone }, null, 2)}\n`;
}
