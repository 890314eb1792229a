/**
 * Numbers that belong to something else in the sentence: "my 7 year old", "order #311", "card from 1998", "the 54
 * percent stuff", "party is at 5". Each kind is a row of what such a number stands with; where the rest of the turn
 * speaks of the matter that it could belong to, it stays, and is asked about where no calculator takes it.
 */
import { somebodyWords, type Words } from "../../../../data/words/told-beside.ts";
import type { Beside } from "../../../tools/contract/index.ts";
import { containers } from "./containers.ts";
import { dated } from "./dated.ts";
import { kitchenTold } from "./kitchen-told.ts";
import { matters } from "./matters.ts";
import { moments } from "./moments.ts";
import { named } from "./named.ts";
import { peopleTold } from "./people-told.ts";
import { prices } from "./prices.ts";
import type { ToldBeside } from "./told-beside.ts";

const rows: readonly ToldBeside[] = [
  ...peopleTold,
  ...kitchenTold,
  ...dated,
  ...named,
  ...containers,
  ...prices,
  ...moments,
];

/** Nobody tells so much beside a question; and a long line would cost the square of its length. */
const longest = 600;

const numberWords: ReadonlySet<string> = new Set(
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety".split(
    " ",
  ),
);
const hasNumber = (text: string): boolean =>
  /\d/.test(text) || text.split(/\W+/).some((word) => numberWords.has(word));

/** Those with short forms that would be taken for slips. */
const short = rows.filter(({ asTyped }) => asTyped);

/** What is left of a text as it was typed, before its slips are mended. */
export const withoutShortForms = (text: string, own?: ReadonlySet<string>) => withoutBeside(text, own, short);

/**
 * The text without the numbers that are told beside what is asked, and what they were.
 * @param own words of the names that the baker gave: "winter 7" is one of them
 */
export function withoutBeside(
  text: string,
  own: ReadonlySet<string> = new Set(),
  kinds: readonly ToldBeside[] = rows,
): { text: string; beside: Beside[] } {
  if (text.length > longest || !hasNumber(text)) return { text, beside: [] };
  const beside: Beside[] = [];
  let now = text;
  const words = text.match(/[a-z]+/g) ?? [];
  const numbered = text.match(/[a-z]+(?= \d)/g) ?? [];
  for (const row of kinds) {
    if (!row.marks.some((mark) => now.includes(mark))) continue;
    if (row.words && !holds(row.words, words)) continue;
    if (row.numbered && !holds(row.numbered, numbered)) continue;
    // set back to the start, since they are looked through one by one
    for (const found of [...now.matchAll(row.said)].reverse()) {
      const [said] = found;
      const [before, behind] = [now.slice(0, found.index), now.slice(found.index + said.length)];
      if (isMeant(row, `${before} ${behind}`) || isName(said, own)) continue;
      now = `${before}${leftOf(row, found)}${behind}`;
      beside.push({ said: said.replace(/^[\s,.(]+|[\s,)]+$/g, ""), is: row.is });
    }
  }
  // "im 1.80 m tall", and nothing else
  if (beside.length === 0) return { text, beside };
  const rest = tidied(now);
  return { text: saysNothing(rest) ? "ok" : rest, beside };
}

const leads: ReadonlySet<string> = new Set(
  "my our the his her their and so but oh today now ty thanks thank you thx cheers ok okay right bye".split(
    " ",
  ),
);

/** "my daughter is 9 today!": nothing is left but who it is. */
const saysNothing = (rest: string): boolean =>
  (rest.match(/[a-z\d]+/g) ?? []).every((word) => leads.has(word) || somebodyWords.has(word));

const holds = (one: Words, of: readonly string[]) => of.some((word) => one.has(word));

const leftOf = ({ leaves = "" }: ToldBeside, found: RegExpMatchArray): string =>
  leaves.replace(/\$(\d)/g, (_, group) => found[Number(group)] ?? "");

/** The rest of the turn is about what such a number could be of. */
const isMeant = ({ unless = [], beside }: ToldBeside, rest: string): boolean =>
  unless.some((matter) => matters[matter].test(rest)) || (beside !== undefined && !beside.test(rest));

const isName = (said: string, own: ReadonlySet<string>): boolean =>
  own.size > 0 && (said.match(/\d+/g) ?? []).some((each) => own.has(each));

/** Signs that stood around what is gone. */
const tidied = (text: string): string =>
  text
    .replace(/\(\s*\)/g, " ")
    .replace(/^[\s,.;:!-]+(?=\S)/, "")
    .replace(/([,;:])\s*(?=[,.;:?!])/g, "")
    .replace(/([.!?])\s*[,;:](?=\s)/g, "$1")
    .replace(/\s+/g, " ")
    .replace(/[\s,;:]+$/, "")
    .trim();
