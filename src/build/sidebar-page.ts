import type { FunctionEntry } from "../functions/index";

/** The sidebar page: the guide with the functions as the registry tells them. */
export function sidebarPage(template: string, registry: readonly FunctionEntry[]): string {
  const items = registry
    .map(
      ({ name, sentence, example }) =>
        `<dt><code>${escapeHtml(name)}</code></dt>\n<dd>${escapeHtml(sentence)}<br><code>${escapeHtml(example)}</code></dd>`,
    )
    .join("\n");
  return template.replace("<!-- functions -->", () => items);
}

function escapeHtml(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
