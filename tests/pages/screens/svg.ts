/** A terminal's screen as a picture: what a real program wrote, read by a terminal emulator, drawn cell by cell. */
import xterm from "@xterm/headless";

const cell = { width: 8.4, height: 18, size: 14 };
const margin = 14;
const ground = "#fdf6ee";
const ink = "#33272a";

/** The sixteen colors by their numbers, dark enough to be read on a light ground. */
const palette = [
  ..."#33272a #b3261e #3f6f2a #8a5a00 #2d5aa0 #8e2f6b #0f6a73 #6b5d5f".split(" "),
  ..."#6b5d5f #b3261e #3f6f2a #8a5a00 #2d5aa0 #8e2f6b #0f6a73 #33272a".split(" "),
];

interface Run {
  at: number;
  text: string;
  style: string;
}

/** Draws everything that `written` leaves in a terminal of a size, without empty lines at the end. */
export async function svgOf(written: string, columns: number, rows: number, title: string): Promise<string> {
  const terminal = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true, scrollback: 500 });
  await new Promise<void>((resolve) => terminal.write(written, resolve));
  const lines = runsOf(terminal);
  const width = Math.round(columns * cell.width + 2 * margin);
  const height = lines.length * cell.height + 2 * margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="100%" height="100%" rx="8" fill="${ground}"/>`,
    `<g font-family="monospace" font-size="${cell.size}" fill="${ink}" xml:space="preserve">`,
    ...lines.flatMap((runs, row) => {
      const y = margin + row * cell.height + 14;
      return runs.map(
        ({ at, text, style }) =>
          `<text x="${tidy(margin + at * cell.width)}" y="${y}" textLength="${tidy(text.length * cell.width)}"${style}>${escaped(text)}</text>`,
      );
    }),
    "</g>",
    "</svg>",
    "",
  ].join("\n");
}

/** The lines of the screen as stretches of one style; blanks draw nothing. */
function runsOf(terminal: InstanceType<typeof xterm.Terminal>): Run[][] {
  const buffer = terminal.buffer.active;
  const lines: Run[][] = [];
  for (let y = 0; y < buffer.length; y++) {
    const line = buffer.getLine(y);
    const runs: Run[] = [];
    for (let x = 0; line && x < line.length; x++) {
      const each = line.getCell(x);
      const text = each?.getChars() ?? "";
      if (!each || text === "" || (text === " " && !each.isInverse())) continue;
      const color = each.isFgPalette() ? ` fill="${palette[each.getFgColor()] ?? ink}"` : "";
      const style = `${color}${each.isBold() ? ' font-weight="bold"' : ""}${each.isDim() ? ' fill-opacity="0.75"' : ""}`;
      const last = runs.at(-1);
      const gap = last ? x - (last.at + last.text.length) : 0;
      // a blank between two words of one style belongs to them
      if (last && last.style === style && gap <= 1) last.text += " ".repeat(gap) + text;
      else runs.push({ at: x, text, style });
    }
    lines.push(runs);
  }
  while (lines.at(-1)?.length === 0) lines.pop();
  return lines;
}

const tidy = (value: number) => Number(value.toFixed(1));
const escaped = (text: string) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
