/** From what was typed to text that can be read: no control characters, one kind of dash, fractions spelt out. */
import { fractionSigns } from "../../../data/words/numbers.ts";
import { plainly } from "./phrases.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: taking them out is the point
const escapes = /\u001b(?:\[[0-?]*[ -/]*[@-~]|\][^\u0007\u001b]*(?:\u0007|\u001b\\)?|[@-Z\\-_])/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: taking them out is the point
const controls = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]+/g;

/** The line without terminal escapes and control characters: what is shown, stored and given back as `asked`. */
export function sanitise(line: string): string {
  return line.replace(escapes, "").replace(controls, " ").replace(/ {2,}/g, " ").trim();
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: the letters that need no folding
const isPlain = /^[\u0000-\u007f]*$/;

/** Signs and letters beyond ASCII as those within it. */
const ascii = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${fractionSigns[sign] ?? sign}`)
    .replace(/⁄/g, "/")
    .replace(/[‘’‛′´]/g, "'")
    .replace(/[“”″]/g, '"')
    .replace(/[‐-―−]/g, "-")
    .replace(/[×✕✖]/g, "x")
    .replace(/÷/g, "/")
    .replace(/[→⇒➔➜]/g, "->")
    .replace(/º/g, "°")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe");

/**
 * Lower case, plain quotes and dashes, "½" as "1/2" with a space before it, accents folded.
 * NFKC is not used: it would turn "1½" into eleven halves.
 */
export function folded(asked: string): string {
  const text = (isPlain.test(asked) ? asked : ascii(asked)).replaceAll("`", "'").toLowerCase();
  // "100 g cream -> firm dark ganache": what it is for, and nothing to be made firm
  return text.includes(">")
    ? text.replace(/(?:-+>|=>)(?= ?(?:an? )?(?:firm|stiff|loose|soft))/g, " for ").replace(/-+>|=>/g, " to ")
    : text;
}

/** A folded text with its turns of phrase put plainly. */
export const plain = (text: string): string => plainly(text).replace(/\s+/g, " ").trim();

/** From what was typed to text that can be read, whose words nobody mended. */
export const normalise = (asked: string): string => plain(folded(asked));
