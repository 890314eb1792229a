/** How loud a line is. The words say what a line is; weight and color only help to find it. */

export type Tone =
  | "asked"
  | "headline"
  | "figure"
  | "rule"
  | "assumed"
  | "caution"
  | "question"
  | "item"
  | "step"
  | "plain"
  | "quiet"
  | "ring"
  | "trouble";

export interface Line {
  text: string;
  tone: Tone;
}

/** What ink's Text takes. */
export interface Style {
  bold?: boolean;
  dimColor?: boolean;
  color?: string;
}

const colored: Readonly<Record<Tone, Style>> = {
  asked: { color: "cyan" },
  headline: { bold: true },
  figure: {},
  rule: { dimColor: true },
  assumed: { dimColor: true },
  caution: { dimColor: true, color: "yellow" },
  question: { bold: true },
  item: {},
  step: {},
  plain: {},
  quiet: { dimColor: true },
  ring: { bold: true, color: "magenta" },
  trouble: { bold: true, color: "red" },
};

/** The style of a tone. Without color only weight is left: dim is a gray on many terminals, so it goes. */
export function styleOf(tone: Tone, color: boolean): Style {
  return color ? colored[tone] : colored[tone].bold ? { bold: true } : {};
}

const colors: Readonly<Record<string, number>> = { red: 31, yellow: 33, magenta: 35, cyan: 36 };

/** A line with its style as escape sequences, the same as the view gives it. */
export function painted({ text, tone }: Line, color: boolean): string {
  const { bold, dimColor, color: name } = styleOf(tone, color);
  const code = name ? colors[name] : undefined;
  const dim = dimColor ? `\u001b[2m${text}\u001b[22m` : text;
  const hued = code ? `\u001b[${code}m${dim}\u001b[39m` : dim;
  return bold ? `\u001b[1m${hued}\u001b[22m` : hued;
}
