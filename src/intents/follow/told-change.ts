/** "my friend wants 12 more", "take 8 off", "i dropped six of them": told as a change of how many there are to be. */
import { smallNumbers } from "../../../data/words/numbers.ts";
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const number = `((?:(?:a|half a|one|two|three) )?dozen|\\d+|${Object.keys(smallNumbers).join("|")})`;
const them = "(?: of (?:them|those|these|it|the macarons|my macarons)| macarons| macs)";
const talk = "(?: (?:please|pls|then|now|though|instead|again|after all|as well|too|actually|today|already))";

const wants =
  "(?:needs?|needed|wants?|wanted|orders?|ordered|asks? for|asked for|would like|likes?|takes?|took|could use|fancies|added|adds?|requested|requests?|having|has ordered|have ordered|to have|to make)";
const somebody = "(?:(?:[a-z]+(?:'[a-z]+)?) ){1,5}?";

const adds = [
  `^${opening}${somebody}(?:(?:will|would|also|just|now|might|may|has|have) )*${wants} (?:another|an extra|an additional|extra) ${number}${them}?${talk}*$`,
  `^${opening}${somebody}(?:(?:will|would|also|just|now|might|may|has|have) )*${wants} ${number} (?:more|extra|additional|further|on top)${them}?${talk}*$`,
  `^${opening}(?:there(?: are|s|'s|re) |put |add |make )?(?:another |an extra )?${number} (?:more|extra|on top)?${them}? ?(?:are|is|were) (?:needed|wanted|ordered|asked for)${talk}*$`,
];

const takesOff = [
  `^${opening}(?:can you |could you |lets |please |i |we |you can |i can |we can )?(?:take|knock|leave|drop|skip|cancel|remove|cut|lose|subtract|deduct|minus|less)(?: (?:away|off|out|back|about))* ${number}${them}?(?: (?:off|away|out|less|fewer|from (?:it|that|them)))*${talk}*$`,
  `^${opening}${number}${them}? (?:are|is|were) [a-z ]{2,30}?(?: ,)? (?:and )?(?:forget|skip|ignore|leave out|dont count|do not count|never mind|drop)(?: (?:about|them|those|these|that|it))+${talk}*$`,
];

const lost =
  "(?:dropped|broke|lost|ate|smashed|binned|burnt|burned|squashed|gave away|given away|ruined|threw away|threw out|chucked|nicked|stole|pinched|scoffed)";
const areLost = [
  `^${opening}${somebody}(?:(?:have|has|just|already|'?ve|went and) )*${lost} (?:about )?${number}${them}?${talk}*$`,
  `^${opening}${number}${them}? (?:(?:were|are|is|was|got|have been|has been|went|have|just|been|all) )*(?:eaten|broken|dropped|lost|ruined|smashed|in the bin|binned|gone|missing|burnt|given away|squashed|nicked|no good)${talk}*$`,
];

const weight = "(\\d+(?:\\.\\d+)?) ?(?:g|grams|grammes|oz|ounces)";
const foundMore = `^${opening}(?:there(?: is|'s|s) (?:still |another )?|(?:i|we)(?: have|'ve|ve| found| got| have got|'ve got|ve got)? (?:still |another )?|found (?:another )?|got (?:another )?)${weight} (?:more|extra|left over)(?: of (?:it|that))?(?: (?:in|at|on|behind) (?:the|my) [a-z]+)?${talk}*$`;
const usedUp = `^${opening}${somebody}(?:(?:have|has|just|already|'?ve|went and) )*(?:${lost}|spilled|spilt|used|used up|nibbled) (?:about )?${weight} of (?:it|that|them)${talk}*$`;
let weighed: { more: RegExp; less: RegExp } | undefined;
const mixes = new Set(["ganache", "buttercream", "scale", "fill", "dose"]);

/** "there's 50 g more in the cupboard", "i ate 30 g of it": of what was weighed out to work from. */
function toldWeight({ text, amounts }: Reading, { last }: State): string | undefined {
  const [only, ...others] = amounts;
  if (!last || !mixes.has(last.tool) || only?.dim !== "weight" || others.length > 0) return undefined;
  // of a flavor it may be that, and no bowl
  if (last.tool === "dose" && (last.inputs.flavor_g !== undefined || only.value < 60)) return undefined;
  weighed ??= { more: new RegExp(foundMore), less: new RegExp(usedUp) };
  const plain = spaced(text).replace(/[ .!?]+$/, "");
  if (weighed.more.test(plain)) return `${only.text} more`;
  return weighed.less.test(plain) ? `${only.text} less` : undefined;
}

const any = (patterns: readonly string[]) => patterns.map((each) => new RegExp(each));
let known: { more: RegExp[]; fewer: RegExp[]; lost: RegExp[] } | undefined;

/** Words without which none of them is said. */
const hint =
  /\b(?:more|extra|another|additional|top|needed|take|knock|leave|drop|dropped|skip|cancel|remove|cut|lose|lost|subtract|deduct|minus|less|forget|ignore|count|broke|broken|ate|eaten|smashed|binned|burnt|burned|squashed|gave|given|ruined|threw|chucked|nicked|stole|pinched|scoffed|bin|gone|missing|no good)\b/;

/** The change said plainly: "12 more", "8 fewer". What is lost of shells that are yet to be piped says nothing. */
export function toldChange(reading: Reading, state: State): string | undefined {
  const { text, amounts } = reading;
  const { last, table } = state;
  const ofWeight = toldWeight(reading, state);
  if (ofWeight !== undefined) return ofWeight;
  const counts = last?.tool === "fill" || last?.tool === "shells" || last?.tool === "day";
  const had = last?.inputs.macarons ?? table.macarons;
  if (!counts || typeof had !== "number" || amounts.length !== 1) return undefined;
  const [only] = amounts;
  if (only?.dim !== "number" || only.fraction || !hint.test(text)) return undefined;
  known ??= { more: any(adds), fewer: any(takesOff), lost: any(areLost) };
  const plain = spaced(text).replace(/[ .!?]+$/, "");
  const found = (patterns: readonly RegExp[]) => patterns.some((each) => each.test(plain));
  const many = Math.abs(only.value);
  // behind how many a bowl of filling does: so many in all
  if (found(known.more))
    return last.inputs.macarons === undefined ? `${had + many} macarons` : `${many} more`;
  if (last.inputs.macarons === undefined) return undefined;
  return found(known.fewer) || (last.tool === "fill" && found(known.lost)) ? `${many} fewer` : undefined;
}
