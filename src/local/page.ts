/** The command-line program "page": see page/page-options.ts for what it does. */
import { openBrowser } from "./page/open-browser";
import { runPage } from "./page/page-run";
import { PersonError } from "./person-error";
import { projectRoot } from "./project-root";

// npm runs programs in the project's folder and keeps the one that the person typed in here.
const typedIn = process.env.INIT_CWD;
try {
  const server = await runPage(process.argv.slice(2), {
    root: projectRoot(),
    folders: typedIn ? [process.cwd(), typedIn] : [process.cwd()],
    print: (text) => console.log(text),
    openBrowser: (address) => openBrowser(address, process.platform, process.env),
    progress: (text) => console.error(text),
  });
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => void server?.close());
  }
} catch (error) {
  if (!(error instanceof PersonError)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
