/** Whether a text holds an amount, in digits or spelt out: "two eggs" and "half of it" do, "one more thought" doesn't. */
import {
  factorWords,
  groupWords,
  magnitudes,
  partWords,
  smallNumbers,
  tens,
} from "../../../data/words/numbers.ts";
import { units } from "../../../data/words/units.ts";

const tables = [smallNumbers, tens, magnitudes, partWords, factorWords, groupWords];
const spelt: ReadonlySet<string> = new Set([...tables.flatMap((table) => Object.keys(table)), "couple"]);
const between: ReadonlySet<string> = new Set("and a of more large big small egg".split(" "));
/** What is counted besides measures, and what a share may be of. */
const counted: ReadonlySet<string> = new Set([
  ...units.flatMap(({ words }) => words),
  ..."macaron macarons macs shell shells tray trays boxes bowl bowls batch batches recipe recipes egg eggs white whites".split(
    " ",
  ),
  ..."yolk yolks part parts color colors colour colours dollar dollars pound pounds euros pence cents".split(
    " ",
  ),
  ..."the it this that them these those".split(" "),
]);
/** Of these a share is told only with an "of": "two of them". */
const afterOf: ReadonlySet<string> = new Set(["them", "these", "those"]);
/** So many words may stand between a number and what it counts. */
const most = 3;

/** Words that a space or a hyphen alone parts, row by row: a sign ends a row. */
const rowsOf = (text: string): string[][] =>
  (text.toLowerCase().match(/[a-z']+(?:[ -][a-z']+)*/g) ?? []).map((row) =>
    row.replaceAll("'s", "").split(/[ -]/),
  );

export function hasAmount(text: string): boolean {
  if (/[\d½¼¾⅓⅔]/.test(text)) return true;
  return rowsOf(text).some((row) => row.some((word, at) => spelt.has(word) && countsBehind(row, at + 1)));
}

const measures: ReadonlySet<string> = new Set(units.flatMap(({ words }) => words));
/** A digit, a number word or a unit: without one of them there is no amount, whatever is read. */
export const mayHoldAmount = (text: string): boolean =>
  /[\d½¼¾⅓⅔⅛]/.test(text) ||
  (text.toLowerCase().match(/[a-z']+/g) ?? []).some((word) => spelt.has(word) || measures.has(word));

/** What the number in front of `from` counts: behind a few small words, in one word or two. */
function countsBehind(row: readonly string[], from: number): boolean {
  for (let at = from; at < row.length && at <= from + most; at++) {
    const word = row[at] ?? "";
    const isCounted = counted.has(word) && (!afterOf.has(word) || row[at - 1] === "of");
    if (isCounted || counted.has(`${word} ${row[at + 1]}`)) return true;
    if (!between.has(word) && !spelt.has(word)) return false;
  }
  return false;
}
