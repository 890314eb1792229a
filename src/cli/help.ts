/** What `--help` prints, made of the options table. Plain ASCII, so that every terminal can show it. */
import { type Option, options, settings, statuses, summary, uses } from "./options.ts";

type Row = readonly [term: string, says: string];

/** "--home DIR", "--help, -h". */
export const spelt = ({ name, short, takes }: Option): string =>
  `--${name}${takes ? ` ${takes.name}` : ""}${short ? `, -${short}` : ""}`;

/** @param columns cells in a line; below 40 lines stay at 40 */
export function helpText(columns: number): string {
  const width = Math.max(40, columns);
  const blocks: readonly (readonly [title: string, rows: readonly Row[]])[] = [
    ["Usage", uses],
    ["Options", options.map((each): Row => [spelt(each), each.says])],
    ["Environment", settings],
    ["Exit status", statuses.map(([status, says]): Row => [String(status), says])],
  ];
  const size = Math.max(...blocks.flatMap(([, rows]) => rows.map(([term]) => term.length)));
  return [
    ...folded(`bowlside - ${summary}`, width),
    ...blocks.flatMap(([title, rows]) => ["", title, ...rows.flatMap((row) => rowLines(row, size, width))]),
    "",
    ...folded('In the chat "help" shows what to ask. The manual page, man bowlside, says more.', width),
  ].join("\n");
}

/** A term and what it says beside it; below it where the line is narrow. */
function rowLines([term, says]: Row, size: number, width: number): string[] {
  const beside = size + 4;
  if (width - beside < 30)
    return [`  ${term}`, ...folded(says, Math.max(20, width - 6)).map((line) => `      ${line}`)];
  return folded(says, width - beside).map(
    (line, at) => `${at === 0 ? `  ${term}`.padEnd(beside) : " ".repeat(beside)}${line}`,
  );
}

/** Broken at spaces; a word longer than a line stays whole. */
function folded(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
