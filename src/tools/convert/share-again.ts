/** "and 20%", "make it a third", behind a share of something: another share of the same whole. */
import { opening } from "../../../data/words/openers.ts";
import type { Amount, Reading } from "../contract/index.ts";
import type { ConvertInputs } from "./convert.ts";
import { digits } from "./sum-unit.ts";
import { askingAgain } from "./words.ts";

type Draft = Partial<ConvertInputs>;

const lead = `${opening}(?:(?:${askingAgain}|or|what about|how about|what if|if|its|it is|it was|it were|it|was|is|whats|what is|how much is|how much would|make it|make that|try|at|say|again|same|with|for|another|not|n) (?:, )?)*`;
const share = "\\S*<(?:percent|number,fraction|factor)>";
const behind =
  "(?: (?:of the (?:same|same number|same amount|whole)|then|instead|too|as well|please|pls|now|be|rather))*(?: [?])?$";

/** Signs for the cues and for the reader: shares, and nothing else. */
export const shareTurn = `^${lead}${share}(?: (?:, |and |or |, and )?${share})*${behind}`;

const turn = new RegExp(shareTurn.replaceAll("[?]", "\\?"));

/** "(15 / 100) * 640", "3 / 4 * 260": a share under one, and what it is of. */
const shareOfWhole = /^\(?([\d.]+) \/ ([\d.]+)\)? \* ([\d.]+)$/;

const shareSaid = (amount: Amount): string | undefined => {
  if (amount.high !== undefined || amount.value <= 0) return undefined;
  if (amount.dim === "percent") return `(${digits(amount.value)} / 100)`;
  return amount.fraction && amount.value < 1 ? `(${amount.fraction.join(" / ")})` : undefined;
};

/** One draft for each share that is said; none where anything else is. */
export function shareAgain({ mask, amounts }: Reading, before: Draft): Draft[] {
  const [, up, down, whole] = shareOfWhole.exec(before.sum ?? "") ?? [];
  const isShare = whole !== undefined && (down === "100" || Number(up) < Number(down));
  if (!isShare || !turn.test(mask) || amounts.length === 0) return [];
  const said = amounts.map(shareSaid);
  return said.every((each) => each !== undefined)
    ? said.map((each) => ({ ...before, sum: `${each} * ${whole}` }))
    : [];
}
