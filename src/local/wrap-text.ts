/**
 * A text in lines of at most `width` characters, 1 or more, parted between words where possible.
 *
 * @example wrapText("late, then due", 6) // ["late,", "then", "due"]
 */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (let word of text.split(/\s+/)) {
    if (line !== "" && line.length + 1 + word.length > width) {
      lines.push(line);
      line = "";
    }
    while (word.length > width) {
      lines.push(word.slice(0, width));
      word = word.slice(width);
    }
    line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
