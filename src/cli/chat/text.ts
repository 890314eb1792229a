/** Text as a terminal sees it: what the eye takes for one character, its cells, what may be shown. */

// made when a text first needs it: it costs more than a whole answer
let segmenter: Intl.Segmenter | undefined;
/** Signs of one cell each that never join: ASCII, Latin letters with accents, dashes, arrows, signs of arithmetic, bars. */
const single =
  /^[\x20-\x7e\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e\u2190-\u21ff\u2200-\u22ff\u2500-\u259f]*$/;
/** Classes of characters take long to compile, and most text is plain: they are made when first needed. */
const once = (make: () => RegExp): (() => RegExp) => {
  let made: RegExp | undefined;
  return () => {
    made ??= make();
    return made;
  };
};
const emoji = once(() => /\p{Emoji_Presentation}|\ufe0f|\p{Regional_Indicator}{2}/u);
const wide = once(
  () =>
    /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97f\uac00-\ud7a3\uf900-\ufaff\ufe10-\ufe19\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}]/u,
);
const unseen = once(() => /^[\p{Mark}\p{Default_Ignorable_Code_Point}\p{Control}]+$/u);
// What would move the cursor, start an escape or turn the reading direction of the rest of the screen.
// biome-ignore lint/suspicious/noControlCharactersInRegex: taking them out is the point
const unshowable = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufeff]/g;
const blank = /[\t\n\u2028\u2029]/g;

/** The text in units that the eye and the arrow keys take for one character. */
export function graphemes(text: string): string[] {
  if (single.test(text)) return text.split("");
  segmenter ??= new Intl.Segmenter(undefined, { granularity: "grapheme" });
  return Array.from(segmenter.segment(text), (each) => each.segment);
}

/** How many cells of the terminal one grapheme takes: 0, 1 or 2. */
export function cells(grapheme: string): number {
  if (single.test(grapheme)) return grapheme.length;
  if (unseen().test(grapheme)) return 0;
  return emoji().test(grapheme) || wide().test(grapheme) ? 2 : 1;
}

/** How many cells a text takes in one line. */
export function width(text: string): number {
  return single.test(text) ? text.length : graphemes(text).reduce((sum, each) => sum + cells(each), 0);
}

/** Pads to `size` cells; `padEnd` would count code units. */
export function padded(text: string, size: number): string {
  return text + " ".repeat(Math.max(0, size - width(text)));
}

/** One line that is safe to show: line ends and tabs as spaces, no control characters. */
export function printable(text: string): string {
  return text.replace(blank, " ").replace(unshowable, "");
}

/** The index where the grapheme before `index` starts. */
export function before(text: string, index: number): number {
  let start = 0;
  let at = 0;
  for (const each of graphemes(text)) {
    if (at >= index) break;
    start = at;
    at += each.length;
  }
  return start;
}

/** The index where the grapheme at `index` ends. */
export function after(text: string, index: number): number {
  let end = 0;
  for (const each of graphemes(text)) {
    end += each.length;
    if (end > index) break;
  }
  return end;
}

/**
 * Shortens to `size` cells by leaving out the middle: "shells tray 1" and "shells tray 2" stay apart.
 * @param gap what stands for the part left out
 */
export function shortened(text: string, size: number, gap: string): string {
  if (width(text) <= size) return text;
  const tail = Math.floor((size - width(gap)) * 0.4);
  const units = graphemes(text);
  const head = taken(units, size - width(gap) - tail);
  const end = taken([...units].reverse(), tail).reverse();
  return `${head.join("").trimEnd()}${gap}${end.join("")}`;
}

function taken(units: readonly string[], size: number): string[] {
  const kept: string[] = [];
  let room = size;
  for (const each of units) {
    room -= cells(each);
    if (room < 0) break;
    kept.push(each);
  }
  return kept;
}
