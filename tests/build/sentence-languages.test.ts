import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import {
  languageSlips,
  type Messages,
  pluralRule,
  sentenceLanguages,
} from "../../src/build/sentence-languages";
import { sentenceModules } from "../../src/build/sentence-modules";

const english = {
  name: "english",
  locale: "en-GB",
  messages: {
    takes: {
      blank: "(blank)",
      counted: "{batches, plural, one {# batch is} other {# batches are}} counted: {names, list}.",
      plants: "{plants, count} plants, {rate, share}",
      state: "{state, select, late {late} soon {soon} other {}}",
    },
    takeColumns: { batch: "Batch", takeRate: "Take rate" },
  },
};
/** A language that nobody speaks. It counts as Polish does, which has four forms. */
const invented = {
  name: "zaumish",
  locale: "pl",
  messages: {
    takes: {
      blank: "(vlo)",
      counted:
        "{batches, plural, one {# ka} few {# kai} many {# kaum} other {# kao}} mun: {names, list}!",
      plants: "{rate, share} vo {plants, count} sim",
      state: "{state, select, soon {ni} late {no} other {}}",
    },
    takeColumns: { batch: "Kao", takeRate: "Mun vo" },
  },
};
const both = [english, invented];

interface Said {
  readonly speak: (name: string) => void;
  readonly takes: Readonly<Record<string, (facts: object) => string>>;
  readonly takeColumns: { readonly headers: () => object };
}

/** The modules of both languages as a bundle takes them. */
async function said(): Promise<Said> {
  const modules = sentenceModules(both, ["english", "zaumish"]);
  const bundle = await build({
    stdin: {
      contents: `export { speak } from "./spoken-language";
        export * as takes from "./made/takes";
        export * as takeColumns from "./made/take-columns";`,
      resolveDir: "src/sentences",
      loader: "ts",
    },
    bundle: true,
    write: false,
    format: "esm",
    plugins: [
      {
        name: "made",
        setup({ onLoad, onResolve }) {
          // The rules of further languages stand beside the groups, and only here.
          onResolve({ filter: /\.\/rules$/ }, ({ resolveDir }) => ({
            path: `${resolveDir}/rules.ts`,
          }));
          onLoad({ filter: /sentences.made./ }, ({ path }) => ({
            contents: modules.get(path.slice(path.indexOf("src/sentences"))) ?? "",
            loader: "ts",
          }));
        },
      },
    ],
  });
  const code = bundle.outputFiles[0]?.text ?? "";
  return import(`data:text/javascript,${encodeURIComponent(code)}`);
}

describe("a second language", () => {
  it("is spoken by the same functions, with its own plurals, thousands and 'and'", async () => {
    const { speak, takes, takeColumns } = await said();
    const say = (key: string, facts: object = {}) => takes[key]?.(facts);
    const names = ["a", "b", "c"];
    expect(say("counted", { batches: 2, names })).toBe("2 batches are counted: a, b and c.");
    expect(takeColumns.headers()).toEqual(english.messages.takeColumns);
    speak("zaumish");
    expect(say("blank")).toBe("(vlo)");
    // Source: Unicode CLDR 46, plural rules and numbers of Polish.
    const counted = [1, 2, 5, 22].map((batches) => say("counted", { batches, names: ["a", "b"] }));
    expect(counted).toEqual([
      "1 ka mun: a i b!",
      "2 kai mun: a i b!",
      "5 kaum mun: a i b!",
      "22 kai mun: a i b!",
    ]);
    expect(say("counted", { batches: 1, names })).toBe("1 ka mun: a, b i c!");
    expect(say("plants", { plants: 12345, rate: 0.5 })).toBe("50\u00a0% vo 12\u00a0345 sim");
    expect(say("plants", { plants: 1234, rate: 0.5 })).toBe("50\u00a0% vo 1234 sim");
    expect(say("state", { state: "late" })).toBe("no");
    expect(takeColumns.headers()).toEqual(invented.messages.takeColumns);
    speak("english");
    expect(say("blank")).toBe("(blank)");
  });

  it("is looked through and left out where it is not built in", () => {
    const alone = sentenceModules([english], ["english"]);
    expect(sentenceModules(both, ["english"])).toEqual(alone);
    expect([...alone.values()].join()).not.toMatch(/isSpoken|zaumish/);
  });
});

describe("a slip in a language's file of sentences", () => {
  const slips = (takes: Messages[string]) =>
    languageSlips(
      {
        ...invented,
        messages: { ...invented.messages, takes: { ...invented.messages.takes, ...takes } },
      },
      english,
    );
  const named = "src/sentences/zaumish.ts: takes.";

  it("is none where all is well", () => {
    expect(slips({})).toEqual([]);
  });

  it("is a message that lacks, or a whole group", () => {
    const { blank, ...rest } = invented.messages.takes;
    const messages = { takes: rest };
    expect(languageSlips({ ...invented, messages }, english)).toEqual([
      `${named}blank is missing`,
      "src/sentences/zaumish.ts: takeColumns.batch is missing",
      "src/sentences/zaumish.ts: takeColumns.takeRate is missing",
    ]);
  });

  it.each([
    ["one too many", { more: "x" }, "more is not in src/sentences/english.ts"],
    ["other facts", { blank: "{name}" }, "blank has the facts {name: string | number}, not {}"],
    [
      "a fact written otherwise",
      { plants: "{rate, share} {plants}" },
      "plants has the facts {plants: string | number, rate: number}, not {plants: number, rate: number}",
    ],
    [
      "another word to choose by",
      { state: "{state, select, late {no} early {ni} other {}}" },
      'state has the facts {state: "early" | "late"}, not {state: "late" | "soon"}',
    ],
  ])("is %s", (_, takes, said) => {
    expect(slips(takes)).toEqual([named + said]);
  });

  it.each([
    [
      "a brace left open",
      "{batches, plural, one {# ka} few {# kai} many {# kao}",
      /^plants can't be read: /,
    ],
    [
      "a brace without its other",
      "plants, count} plants",
      /^plants can't be read: a brace is alone/,
    ],
    [
      "no form for all the rest",
      "{plants, plural, one {#} few {#} many {#}}",
      /^plants can't be read: .*other/,
    ],
    [
      "no form for some numbers",
      "{plants, plural, one {# ka} other {# kao}}",
      /^plants can't be read: plants lacks the form many, few$/,
    ],
    [
      "a form that it has not",
      "{plants, plural, zero {#} one {#} few {#} many {#} other {#}}",
      /^plants can't be read: .*zero/,
    ],
    ["a way of writing that there is not", "{rate, percent}", /^plants can't be read: .*percent$/],
    ["a fact of two types", "{rate} and {rate, share}", /^plants can't be read: rate is /],
  ])("is %s", (_, plants, said) => {
    const [slip = "", ...others] = slips({ plants });
    expect(others).toEqual([]);
    expect(slip.slice(0, named.length)).toBe(named);
    expect(slip.slice(named.length).replace(/\n/g, " ")).toMatch(said);
  });

  it("ends npm run sentences, which names all of them", () => {
    const messages = {
      ...english.messages,
      takes: { ...english.messages.takes, blank: "{", more: "x" },
    };
    const run = () => sentenceModules([english, { ...invented, messages }], ["english"]);
    expect(run).toThrow(
      /takes\.blank can't[\s\S]*takes\.counted can't[\s\S]*takes\.more is not in/,
    );
  });
});

describe("what a language's sentences take from its words", () => {
  it("must be there", () => {
    expect(() => sentenceLanguages({ zaumish: {} }, {})).toThrow(
      "src/sentences/zaumish.ts has no src/core/words/zaumish.ts beside it",
    );
    expect(() => pluralRule({ name: "zaumish", locale: "zz" })).toThrow(
      'src/core/words/zaumish.ts, locales: there is no rule of plurals for "zz"',
    );
  });

  // Against the language data of the machine's JavaScript (Unicode CLDR).
  it.each(["en-GB", "fr", "es", "pt-BR", "id", "sw", "pl", "ar"])(
    "is the rule of plurals that CLDR has for %s",
    (locale) => {
      const { formOf } = pluralRule({ name: "any", locale });
      const rules = new Intl.PluralRules(locale);
      for (let number = 0; number <= 1000; number += 1) {
        expect([number, formOf(number)]).toEqual([number, rules.select(number)]);
      }
    },
  );
});
