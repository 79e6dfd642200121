/**
 * The command-line program "report": see report-options.ts for what it does.
 * This is the only place of the local workbook that looks at the clock.
 */
import { PersonError } from "./person-error";
import { projectRoot } from "./project-root";
import { runReport } from "./report-run";

/** After this long a person wonders whether anything is happening. */
const PATIENCE_MS = 1000;

function today(): string {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// npm runs programs in the project's folder and keeps the one that the person typed in here.
const typedIn = process.env.INIT_CWD;
let waiting: NodeJS.Timeout | undefined;
try {
  await runReport(process.argv.slice(2), {
    root: projectRoot(),
    folders: typedIn ? [process.cwd(), typedIn] : [process.cwd()],
    today: today(),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    print: (text) => console.log(text),
    progress: (text) => {
      const patience = Math.max(0, PATIENCE_MS - performance.now());
      waiting = setTimeout(() => console.error(text), patience);
    },
  });
} catch (error) {
  if (!(error instanceof PersonError)) throw error;
  console.error(error.message);
  process.exitCode = 1;
} finally {
  clearTimeout(waiting);
}
