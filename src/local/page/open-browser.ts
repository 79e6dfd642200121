import { spawn } from "node:child_process";

/**
 * Opens an address in the person's browser, if the system has a way to do that; else does nothing.
 * @param environment the variables of the process, by which a desktop is known
 */
export function openBrowser(
  address: string,
  platform: NodeJS.Platform,
  environment: NodeJS.ProcessEnv,
): void {
  if (!hasDesktop(platform, environment)) return;
  const [command, ...words] = openCommand(address, platform);
  const child = spawn(command, words, { stdio: "ignore", detached: true });
  // Not every desktop has an opener: then the printed address has to do.
  child.on("error", () => {});
  child.unref();
}

/** Without a desktop the opener would look for a browser in the terminal, and take it over. */
function hasDesktop(platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): boolean {
  const isOwn = platform === "darwin" || platform === "win32";
  return isOwn || Boolean(environment.DISPLAY || environment.WAYLAND_DISPLAY);
}

/** The command of a system that opens an address. */
export function openCommand(address: string, platform: NodeJS.Platform): [string, ...string[]] {
  if (platform === "darwin") return ["open", address];
  // The empty word is the title of the window that "start" would else take the address for.
  if (platform === "win32") return ["cmd", "/c", "start", "", address];
  return ["xdg-open", address];
}
