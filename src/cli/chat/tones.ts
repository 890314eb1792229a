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
  caution: { color: "yellow" },
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

/** NO_COLOR with anything in it means no color, whatever else is set. */
export function wantsColor(env: Readonly<Record<string, string | undefined>>): boolean {
  return !env.NO_COLOR;
}
