import type { ScriptPage } from "./desk";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument } from "./grid-arguments";
import { ServiceError, signatureError } from "./service-error";

/** The pages behind the objects that scripts hold. */
const pages = new WeakMap<object, () => ScriptPage>();

/** The page behind an object that a script hands over. @throws ServiceError when it is none */
export function pageOf(output: unknown, method: string): ScriptPage {
  const page = typeof output === "object" && output ? pages.get(output) : undefined;
  if (!page) throw signatureError([output], method);
  return page();
}

/** HtmlService: pages from files of the project or from text. Templates are left out. */
export function htmlService(run: Execution): ServiceObject {
  return serviceObject(run, "HtmlService", {
    methods: {
      createHtmlOutputFromFile(name: unknown) {
        const file = textArgument(name, "HtmlService.createHtmlOutputFromFile");
        const content = run.page(file);
        // The wording is from memory.
        if (content === null) throw new ServiceError(`No HTML file named ${file} was found.`);
        return htmlOutput(run, content);
      },
      createHtmlOutput: (content: unknown = "") =>
        htmlOutput(run, textArgument(content, "HtmlService.createHtmlOutput")),
    },
  });
}

function htmlOutput(run: Execution, content: string): ServiceObject {
  let title = "";
  const output: ServiceObject = serviceObject(run, "HtmlOutput", {
    methods: {
      setTitle(text: unknown) {
        title = textArgument(text, "HtmlOutput.setTitle");
        return output;
      },
      getTitle: () => title,
      getContent: () => content,
    },
  });
  pages.set(output, () => ({ title, content }));
  return output;
}
