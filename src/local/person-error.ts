/** A mistake that the person at the keyboard can mend; the message is one sentence for them. */
export class PersonError extends Error {
  override readonly name = "PersonError";
}
