/**
 * A tab that is there only once the page has asked for it.
 *
 * @param before what is answered without it
 * @param after  what is answered from then on
 */
export function onceMade<Before, After>(before: Before, after: After) {
  let isMade = false;
  return {
    /** Answers what reads the tab. */
    read: () => (isMade ? after : before),
    /** Answers what makes it. */
    make: <Made>(made: Made) => {
      return () => {
        isMade = true;
        return made;
      };
    },
  };
}
