import { beforeAll, describe, expect, it } from "vitest";
import { inlineScript, sidebarPage } from "../../src/build/sidebar-page";
import { registry } from "../../src/functions/index";
import { english } from "../../src/sentences/english";
import * as pageText from "../../src/sentences/made/page";
import { isNonsense } from "../support/nonsense";

let html: string;
beforeAll(async () => {
  html = await sidebarPage(registry);
});

describe("the built page", () => {
  it.skipIf(isNonsense)("is small", () => {
    // It says itself what the script said for it before, whose own limit (built-file.test.ts) is the
    // one that counts for each formula. What Set up asks before it makes tabs is worth its room,
    // with a button that says without what they are made, and so are the picture of losses and what is
    // said of jobs, care and counts without a number; so are a link to each row that Check is about, and
    // what is left out of the sheets that are printed; two for the tables beside the records. The last four are for
    // the answers that had tabs alone, and for the index that leads to all of them; one says what an order
    // counts on, and that a task is not to be done; half a one counts about, and hides looks; half a one says which
    // shares plants that will be ready count on. Six are for questions of Set up that are answered by one press, with
    // the button in view, for the way from Check to them and back; one folds what can wait into a line a place; half a one
    // says weeks by their Mondays and sums with their thousands apart; one says what is ready now and by the end of each month.
    expect(Buffer.byteLength(html)).toBeLessThan(126_000);
  });

  it("is one file that asks for no other", () => {
    expect(html.match(/<script/g)).toHaveLength(1);
    expect(html.match(/<\/script/g)).toHaveLength(1);
    expect(html).not.toMatch(
      /\bsrc=|<link|@import|url\(|\bfetch\(|XMLHttpRequest|WebSocket|import\(/,
    );
    // The one address is the name of the drawing language, which nothing asks for.
    expect(html.match(/https?:\/\/[^"'\s]+/g)).toEqual(["http://www.w3.org/2000/svg"]);
  });

  it("holds nothing that a server would take for code, and nothing left to fill in", () => {
    expect(html).not.toContain("<?");
    expect(html).not.toContain("<!-- ");
  });

  it("puts no data in as markup", () => {
    expect(html).not.toMatch(/innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(/);
  });

  it.skipIf(isNonsense)("is plain Latin letters, whatever it is pasted through", () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: all of ASCII is meant.
    expect(html).toMatch(/^[\x00-\x7f]*$/);
  });

  it("lists every function with its sentence and example, escaped", () => {
    const escaped = (text: string) =>
      text
        .replace(/&/g, "&amp;")
        .replace(/</g, "&lt;")
        .replace(/>/g, "&gt;")
        .replace(/"/g, "&quot;");
    for (const { name, sentence, example } of registry) {
      expect(html).toContain(`<code>${name}</code>`);
      expect(html).toContain(escaped(sentence));
      expect(html).toContain(escaped(example));
    }
  });

  it("warns of blades, alcohol, flame, sprays and moving plants", () => {
    expect(html).toContain(pageText.caution());
    expect(english.page.caution).toMatch(
      /blades.*alcohol.*flame.*sprays.*plants that move.*labels.*rules/is,
    );
  });
});

describe("inlineScript", () => {
  it("keeps an end of script in a text from ending the script", () => {
    expect(inlineScript('a="</script>";b="</SCRIPT >"')).toBe('a="<\\/script>";b="<\\/SCRIPT >"');
  });

  it("refuses the start of a comment", () => {
    expect(() => inlineScript("if(a<!--b)c()")).toThrow("<!--");
  });
});
