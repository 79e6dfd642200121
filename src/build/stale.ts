import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** Whether a made file is missing or older than anything it is made from. */
export function isStale(made: string, sources: readonly string[]): boolean {
  if (!existsSync(made)) return true;
  const { mtimeMs } = statSync(made);
  return sources.some((source) => newest(source) > mtimeMs);
}

function newest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newest(join(path, name))), 0);
}
