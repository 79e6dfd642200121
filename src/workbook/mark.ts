/** Every tab of ours begins with these words, so that a tab of the person's own is never taken for it. */
export const MARK = "Nursery batches:";
