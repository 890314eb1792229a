/** Texts for terminals that know nothing but ASCII: the same said with other letters, never a number changed. */
import type { Answer } from "../tools/contract/index.ts";

const spelt: Readonly<Record<string, string>> = {
  "°": "",
  "×": "x",
  "·": "*",
  "÷": "/",
  "−": "-",
  "–": "-",
  "—": "-",
  "…": "...",
  "±": "+/-",
  "≈": "about ",
  "≤": "<=",
  "≥": ">=",
  "→": "->",
  "⁄": "/",
  "²": "^2",
  "³": "^3",
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "‘": "'",
  "’": "'",
  "“": '"',
  "”": '"',
  "€": "EUR ",
  "£": "GBP ",
  "¥": "JPY ",
  "\u00a0": " ",
  "\u202f": " ",
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
};

/** A text in ASCII; what has no other spelling becomes a question mark. Degrees go, "148 °C" is "148 C". */
export function inAscii(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: all of ASCII
  if (/^[\u0000-\u007f]*$/.test(text)) return text;
  const known = (each: string) => each.replace(/\P{ASCII}/gu, (sign) => spelt[sign] ?? sign);
  // apart first: "1½" is no 11/2
  const apart = text.replace(/(\d)(?=[¼½¾⅐-⅞])/g, "$1 ");
  return known(known(apart).normalize("NFKD"))
    .replace(/\p{M}/gu, "")
    .replace(/\P{ASCII}/gu, "?");
}

/** All that an answer says in words. Names of things in figures and items are words too. */
export function answerInAscii(answer: Answer): Answer {
  return deep(answer) as Answer;
}

function deep(value: unknown): unknown {
  if (typeof value === "string") return inAscii(value);
  if (Array.isArray(value)) return value.map(deep);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, deep(each)]));
}
