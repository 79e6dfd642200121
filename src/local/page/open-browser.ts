import { spawn } from "node:child_process";

/** Opens an address in the person's browser, if the system has a way to do that; else does nothing. */
export function openBrowser(address: string, platform: NodeJS.Platform): void {
  const [command, ...words] = openCommand(address, platform);
  const child = spawn(command, words, { stdio: "ignore", detached: true });
  // Without a desktop there is no browser to open: the printed address has to do.
  child.on("error", () => {});
  child.unref();
}

/** The command of a system that opens an address. */
export function openCommand(address: string, platform: NodeJS.Platform): [string, ...string[]] {
  if (platform === "darwin") return ["open", address];
  // The empty word is the title of the window that "start" would else take the address for.
  if (platform === "win32") return ["cmd", "/c", "start", "", address];
  return ["xdg-open", address];
}
