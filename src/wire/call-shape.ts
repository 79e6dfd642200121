/** What a call is given and gives. A request of null is a call without an argument. */
export interface CallShape<Request, Answer> {
  readonly request: Request;
  readonly answer: Answer;
}
