/** From what was typed to text that can be read: no control characters, one kind of dash, fractions spelt out. */
import { fractionSigns } from "../../data/words/numbers.ts";

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
const folded = (text: string): string =>
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
    .replace(/[→⇒➔➜]/g, " to ")
    .replace(/º/g, "°")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe");

/** An hour of the afternoon, or one that "at" or "by" says is none of the clock's lengths; others stay lengths. */
const clockOf = (
  whole: string,
  lead: string | undefined,
  hour: string,
  minute: string | undefined,
): string =>
  Number(hour) < 24 && ((Number(hour) > 12 && minute) || /^(?:at|by|until|till)/.test(lead ?? ""))
    ? `${lead ?? ""}${hour}:${minute ?? "00"}`
    : whole;

/**
 * Lower case, plain quotes and dashes, "½" as "1/2" with a space before it, accents folded.
 * NFKC is not used: it would turn "1½" into eleven halves.
 */
export function normalise(asked: string): string {
  return (
    (isPlain.test(asked) ? asked : folded(asked))
      .replaceAll("`", "'")
      .replace(/-+>|=>/g, " to ")
      .toLowerCase()
      .replace(/\b(?:lol|haha+|hehe+|lmao|omg|hihi)\b/g, " ")
      .replace(/\ball (?:told|up)\b/g, "in total")
      .replace(
        /,? ?\bif (?:it is|its|it's|that is|that's) not too much (?:trouble|bother),?|,? ?\bif you (?:would be so kind|don'?t mind|wouldn'?t mind),?/g,
        " ",
      )
      .replace(/\bthank you (?:kindly|very much|so much|ever so much)\b/g, "thank you")
      // "14h30", "at 9h": the clock as it is written in French
      .replace(/\b((?:at|by|until|till|for) )?(\d{1,2}) ?h ?([0-5]\d)?\b(?! ?(?:\d|min))/g, clockOf)
      .replace(/\bwill not\b/g, "wont")
      .replace(/\b(does|did) not\b/g, "$1nt")
      .replace(/\bw\/ ?(?=[a-z\d])/g, "with ")
      // "60 40": shares of a whole
      .replace(/\b([1-9]0) ([1-9]0)\b(?! ?(?:g|%|min|c|f|mm|ml))/g, (whole, a, b) =>
        Number(a) + Number(b) === 100 ? `${a}/${b}` : whole,
      )
      // "3 quarters of a cup"
      .replace(
        /\b(\d) (quarters|thirds|eighths)\b/g,
        (_, n, part) => `${n}/${{ quarters: 4, thirds: 3, eighths: 8 }[part as "quarters"]}`,
      )
      // "already got 10 in" is no length
      .replace(/\b(got|put|have|added|dropped|tipped) (\d+(?:\.\d+)?) in(?= ?[?.!]*$)/g, "$1 $2 inside")
      .replace(/\ba whole one\b/g, "1")
      // "94 g whites / 122 g almond flour"
      .replace(/(?<=[a-z]) \/ (?=\d)/g, ", ")
      // "ring at 11 love"
      .replace(/(?<=\d) (?:love|dear|darling|mate|pet|hun)\b/g, "")
      // "nut-free" names what isn't there: one word, so that no nut is read in it
      .replace(/\b([a-z]+)-free\b/g, " $1free ")
      // "freeze-dried", "cream-cheese"
      .replace(/(?<=[a-z])-(?=[a-z])/g, " ")
      // "12/15 min" is from twelve to fifteen
      .replace(/\b(\d{1,2})\/(\d{2}) ?(?=(?:min|mins|minutes?)\b)/g, (whole, from, to) =>
        Number(from) >= 5 && Number(from) < Number(to) ? `${from}-${to} ` : whole,
      )
      // "10ish min"
      .replace(/(?<=\d) ?-?ish\b/g, "")
      .replace(/\s+/g, " ")
      .trim()
  );
}
