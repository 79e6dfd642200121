import type { CallResult, SidebarCallName } from "../../wire/calls";
import { scriptVersion } from "../host/version";
import { writingFault } from "../host/writing-error";
import { type Field, record } from "./fields";
import { sidebarAnswers } from "./sidebar-answers.table";

/**
 * Answers a call of the sidebar. What goes back is plain text and numbers, since anything else would
 * arrive as nothing at all; what goes wrong is a code with its
 * facts, or one sentence of another room.
 */
export function sidebarCall(name: SidebarCallName, request: unknown): CallResult<unknown> {
  const version = scriptVersion();
  try {
    const { asked, answer } = sidebarAnswers[name] as AnyAnswerer;
    const answered = answer(asked === null ? null : record(asked)(request));
    return { ok: true, data: JSON.parse(JSON.stringify(answered)), version };
  } catch (error) {
    const fault = writingFault(error, "page");
    return fault.code === "said"
      ? { ok: false, error: fault.sentence, version }
      : { ok: false, fault, version };
  }
}

/** Of any call: that its request fits its answer is seen to where they are listed. */
interface AnyAnswerer {
  readonly asked: Readonly<Record<string, Field<unknown>>> | null;
  answer(request: unknown): unknown;
}
