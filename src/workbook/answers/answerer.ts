import type { CallShape } from "../../wire/call-shape";
import type { Fields } from "./fields";

/** How the request of a call is read, and what answers it. */
interface Answerer<Request, Answer> {
  readonly asked: Fields<Request>;
  answer(request: Request): Answer;
}

/** What answers the calls of one file of src/wire. */
export type AnswerersOf<Calls> = {
  readonly [Name in keyof Calls]: Calls[Name] extends CallShape<infer Request, infer Answer>
    ? Answerer<Request, Answer>
    : never;
};
