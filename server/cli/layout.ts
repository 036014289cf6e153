// Plain text on a terminal: wrapped paragraphs and columns that line up.

/** Columns of a usual terminal, less a margin. */
export const WIDTH = 100;

/** Breaks a text into lines of at most `width` columns; a longer word stands on a line of its own. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}

/** A text wrapped behind an indent, every line with its end. */
export const paragraph = (text: string, indent: number): string =>
  wrap(text, WIDTH - indent)
    .map((line) => `${' '.repeat(indent)}${line}\n`)
    .join('');

/**
 * A name and what belongs to it, the second column wrapped and lined up.
 * @param column where the second column starts
 */
export function entry(name: string, text: string, column: number, indent = 2): string {
  const head = `${' '.repeat(indent)}${name}`;
  const lines = wrap(text, WIDTH - column);
  if (lines.length === 0) return `${head}\n`;
  const [first = '', ...rest] = lines;
  const joined =
    head.length + 2 > column ? `${head}\n${' '.repeat(column)}${first}` : `${head.padEnd(column)}${first}`;
  return `${[joined, ...rest.map((line) => ' '.repeat(column) + line)].join('\n')}\n`;
}
