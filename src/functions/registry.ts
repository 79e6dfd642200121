import * as ofAll from "../sentences/made/parameter-help";
import type { Message, Said, Shown } from "./entry";
import type { SheetFunction } from "./function-of";
import { helps } from "./helps.table";
import type { Parameter } from "./parameter";
import { type FunctionName, runs } from "./runs.table";

export interface ParameterEntry {
  /** As it stands in the formula helper. */
  readonly name: string;
  /** One sentence: what to give. */
  readonly sentence: string;
  readonly optional: boolean;
}

export interface FunctionEntry extends Said<string>, Shown<string>, Pick<SheetFunction, "run"> {
  readonly name: FunctionName;
  readonly parameters: readonly ParameterEntry[];
}

/**
 * Every custom function, in the order of the reference. The built file knows them by their stubs, and
 * leaves this list and all that is said in it out.
 */
export const registry: readonly FunctionEntry[] = /* @__PURE__ */ entries();

function entries(): readonly FunctionEntry[] {
  const { ifLeftOut: _, ...shared } = ofAll;
  return (Object.keys(runs) as FunctionName[]).map((name) => {
    const { parameters, run } = runs[name];
    const { says, example, onSample, exampleHeadings } = helps[name];
    const { sentence, answers } = says;
    const sentences: Readonly<Record<string, Message>> = { ...shared, ...says };
    return {
      sentence: said(sentence),
      answers: said(answers),
      example,
      ...(onSample === undefined ? {} : { onSample }),
      ...(exampleHeadings === undefined ? {} : { exampleHeadings: exampleHeadings.map(said) }),
      name,
      parameters: Object.entries<Parameter<unknown>>(parameters).map(
        ([parameter, { optional, usual }]) => ({
          name: parameter,
          sentence: withUsual(said(sentences[parameter] ?? ""), usual),
          optional,
        }),
      ),
      run,
    };
  });
}

function said(message: Message): string {
  return typeof message === "string" ? message : message();
}

/** The usual value is said by the parameter itself, so that no sentence can tell another. */
function withUsual(sentence: string, usual?: number): string {
  return usual === undefined ? sentence : ofAll.ifLeftOut({ sentence, usual: String(usual) });
}
