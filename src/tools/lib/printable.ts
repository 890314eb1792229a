/**
 * What the standard fonts of a PDF have: the letters of WinAnsi (ISO 32000-1, annex D.2). What they lack is left
 * blank on the paper and named, never dropped.
 */
import type { Paper } from "../contract/index.ts";
import { listed } from "./show.ts";

const more = new Set("€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ");

const has = (letter: string): boolean =>
  /^[\u0020-\u007e\u00a1-\u00ac\u00ae-\u00ff]$/.test(letter) || more.has(letter);

/** The same said with letters that there are: never another number, never another word. */
const spelt: Readonly<Record<string, string>> = {
  "\u00a0": " ",
  "\u2009": " ",
  "\u202f": " ",
  "\t": " ",
  "\u00ad": "",
  "\u200b": "",
  "\ufeff": "",
  "−": "-",
  "‐": "-",
  "‑": "-",
  "‒": "-",
  "―": "-",
  μ: "µ",
  "⁄": "/",
  "∕": "/",
  "′": "'",
  "″": '"',
  "≤": "<=",
  "≥": ">=",
  "≈": "~",
  "→": "->",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  ﬁ: "fi",
  ﬂ: "fl",
};

export interface Printable {
  text: string;
  /** Signs of which a blank stands on the paper. */
  missing: string[];
}

/** A text as it can be printed. Line ends stay. */
export function printable(text: string): Printable {
  const missing = new Set<string>();
  // apart first: "1⅓" is no 11/3
  const apart = text.normalize("NFC").replace(/(\d)(?=[⅓⅔⅛⅜⅝⅞])/g, "$1 ");
  const printed = apart.replace(/[^\u0020-\u007e\n](?:\p{M}|\u200d)*/gu, (sign) => {
    const known = has(sign) ? sign : spelt[sign];
    if (known !== undefined) return known;
    missing.add(sign);
    return "_";
  });
  return { text: printed, missing: [...missing] };
}

/** A paper as it can be printed, and the cautions that name what can't. */
export function printablePaper(paper: Paper): { paper: Paper; cautions: string[] } {
  const missing = new Set<string>();
  const deep = (value: unknown): unknown => {
    if (typeof value === "string") {
      const done = printable(value);
      for (const sign of done.missing) missing.add(sign);
      return done.text;
    }
    if (Array.isArray(value)) return value.map(deep);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, deep(each)]));
  };
  const done = deep(paper) as Paper;
  const signs = [...missing].map((sign) => `"${sign}"`);
  return {
    paper: done,
    cautions: signs.length
      ? [
          `${listed(signs)} can't be printed with the fonts that every PDF reader has: each is a blank (_) on the paper; write it in by hand.`,
        ]
      : [],
  };
}
