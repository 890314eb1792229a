/** What became of the ganache that was spoken of: "300 g of it and its split now, all greasy", "i threw the 60 in". */
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const split =
  /\b(?:its|it's|it is|it has|it|thats|that has|the ganache(?: has| is)?) (?:(?:now|just|all|gone|has|went|and|completely|only|really) )*(?:split|separated|broken|broke|curdled)\b(?! (?:it|them|this|that|into|in (?:two|three|four|half|\d)|between|evenly|up))/;
/** What is seen of it: by itself it would be said of shells. */
const seen = /\b(?:greas\w*|oil\w*|grain\w*|fat|butter floating|puddle|weep\w*|wet|shiny|curdl\w*|lumpy)\b/;

/** "its split now, all greasy": its fault, whatever the surface looks like. */
function hasSplit({ text, amounts, things }: Reading, { last }: State): string | undefined {
  if (last?.tool !== "ganache" || !split.test(spaced(text)) || !seen.test(text)) return undefined;
  const [weight, ...others] = amounts;
  if (
    others.length > 0 ||
    (weight && weight.dim !== "weight") ||
    things.some(({ dose, taste }) => dose ?? taste)
  )
    return undefined;
  return weight ? `${weight.text} of ganache has split` : "the ganache has split";
}

const putIn =
  /^(?:[a-z' ]+ )?(?:i|we|ive|i've|weve) (?:(?:just|have|only|all|then) )*(?:threw|put|added|stirred|melted|tipped|chucked|mixed|popped|folded) (?:in )?(?:the|those|that|all|your) (?:extra |other |full )?\d+(?:\.\d+)? ?(?:g|grams?)?(?: more| extra)?(?: of)?(?: (?:dark|milk|white|choc|chocolate|cream|it))*(?: (?:in|into it|in it|to it|on top|as you said))*(?: (?:then|now|already|after all))* ?[.,;] ?/;
/** "ok 50 in. now its 490, rum for it". */
const isIn =
  /^(?:(?:ok|okay|right|so|and|there|done|good|the|all|that) )*\d+(?:\.\d+)? ?(?:g|grams?)?(?: of (?:choc|chocolate|cream))? (?:is |are |went |gone |has gone )?in(?: now| then| there| already)*(?:[.,;] ?| (?=(?:so|and|which|making|that) ))(?=.*\d)/;
/** "no leave it at piping, ...": what it is for stays as it was worked out first. */
const staysSo =
  /^(?:(?:no|nah|ok|hm|actually|well|or|rather|maybe|lets),? )*(?:(?:i|we)(?:ll|'ll| will)? )?(?:leave|keep|stay|stick|make)(?: (?:it|that|this))? (?:at|with|to|for|as)? ?(?:the |a )?(?:piping|pipeable|firm|rolling|loose|pouring|filling)(?: (?:one|then|consistency|after all))* ?[,.;] ?/;

/** "i threw the 60 in. 330 g of ganache, how much espresso": what was answered has been done, and what is asked now. */
function hasAdded({ text: whole, amounts, things }: Reading, { last, past = [] }: State): string | undefined {
  const lead = staysSo.exec(whole)?.[0].length ?? 0;
  const text = whole.slice(lead);
  const told = (putIn.exec(text) ?? isIn.exec(text))?.[0];
  if (
    told === undefined ||
    amounts.length < 2 ||
    !amounts.some(({ at, dim }) => at[0] >= lead + told.length && (dim === "weight" || dim === "number"))
  )
    return undefined;
  const isOf = (tool: string | undefined) => tool === "ganache" || tool === "dose";
  const topic = past.findLast(({ tool }) => isOf(tool));
  if (!isOf(last?.tool) || !topic) return undefined;
  const [bowl, ...others] = amounts.filter(({ at, dim }) => at[0] >= lead + told.length && dim === "weight");
  const isNamed =
    !bowl ||
    !(topic.tool === "ganache" || topic.inputs.base === "ganache") ||
    others.length > 0 ||
    bowl.of ||
    things.some(({ base }) => base);
  // "60 in, so 420 g. rum?": of the ganache
  const behind = isNamed
    ? text.slice(told.length)
    : `${whole.slice(lead + told.length, bowl.at[1])} of ganache${whole.slice(bowl.at[1])}`;
  const rest = behind.trim();
  const asksFlavor = things.some(({ dose, taste, base }) => !base && (dose ?? taste));
  return asksFlavor || /\b(?:how|what|whats|is|ok|enough)\b/.test(rest) ? rest : undefined;
}

/** The sentence put plainly; undefined where nothing of the kind is told. Pure. */
export const toldOfGanache = (reading: Reading, state: State): string | undefined =>
  hasSplit(reading, state) ?? hasAdded(reading, state);
