/** "as a pdf", "a sheet of 12 labels, 70 x 50 mm, on a4": how a label is to be printed. */
import type { Amount, Reading } from "../contract/index.ts";
import { paperSaid } from "../lib/paper-size.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./turn.ts";

const asksPaper =
  /(?:^| )(?:pdfs?|print|prints|printed|printing|printable|print out|printout)(?: |$)|(?:^| )(?:sheets?|pages?)\S* (?:of|with|full of) .*(?:labels?|stickers)(?: |$)|^(?:and |as |make it |in |print )*(?:a |one )?sheet\S* of \S*<number>|(?:^| )label sheets?\S*(?: |$)/;

/** Nothing where no paper is asked for. */
export function printSaid(reading: Reading): Draft {
  const paper = paperSaid(reading);
  const copies = copiesSaid(reading) ?? (isOne(reading) ? 1 : undefined);
  if (!asksPaper.test(reading.mask) && copiesSaid(reading) === undefined) return {};
  return {
    as_pdf: true,
    ...(copies !== undefined ? { copies } : isPageful.test(reading.text) ? { full_page: true } : {}),
    ...sizeSaid(reading),
    ...(paper ? { paper } : {}),
  };
}

/** "that label", "a us label", where no labels are spoken of. */
const isOne = ({ text }: Reading): boolean =>
  /\b(?:label|lable)\b(?! sheets?)/.test(text) && !/\b(?:labels|lables)\b/.test(text);

/** "a sheet of labels", "print labels for ...". */
const isPageful = /\b(?:sheets?|pages?|full|labels|lables|stickers)\b/;

/** "12 labels", "a dozen copies", "twelve of them", "a sheet of 12". */
function copiesSaid({ amounts, text }: Reading): number | undefined {
  return amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      (/\bsheet of $/.test(text.slice(0, each.at[0])) ||
        /^(?: (?:more|small|blank|printed|printable|pdf|of the|of those|of these|of that|us|eu))* (?:labels?|lables?|copies|stickers|of them|of those|times)\b/.test(
          text.slice(each.at[1]),
        )),
  )?.value;
}

/** Two lengths with "x" or "by" between them; the first, without a unit, has the second's. */
function sizeSaid({ amounts, text }: Reading): Draft {
  for (const [n, first] of amounts.entries()) {
    const second = amounts[n + 1];
    if (second?.dim !== "length") continue;
    const between = text.slice(first.at[1], second.at[0]);
    // "90 x eighty mm" was read as ninety times
    if (!/^ ?(?:x|by|\*) ?$/.test(between) && !(first.unit === "times" && between.trim() === "")) continue;
    return { label_width_mm: mm(first, second.unit), label_height_mm: mm(second, second.unit) };
  }
  return {};
}

const mm = (amount: Amount, unit: string): number =>
  inBase(amount.value, amount.dim === "length" ? amount.unit : unit);

/** A length of a label's side is no weight and no line of its recipe. */
export const isPrintOnly = ({ as_pdf }: Draft, reading: Reading): boolean =>
  as_pdf === true && reading.amounts.every((each) => each.dim === "number" || each.dim === "length");
