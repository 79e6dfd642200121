/**
 * Reads a file that the person has opened or dropped, in a thread of its own: the page can end it
 * (see read-in-worker.ts).
 */
import { fileDrafts } from "../../file-drafts";
import { PersonError } from "../../person-error";
import type { ReadAnswer, ReadTask } from "../file-messages";

addEventListener("message", ({ data }: MessageEvent<ReadTask>) => {
  postMessage(answer(data));
});

function answer({ bytes, fileName, addInNames }: ReadTask): ReadAnswer {
  try {
    return { drafts: fileDrafts(bytes, fileName, addInNames) };
  } catch (error) {
    if (error instanceof PersonError) return { trouble: error.message };
    throw error;
  }
}
