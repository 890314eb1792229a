/**
 * "the cream colour is two thirds of it and the other coral", "split that evenly by color": the bowl that was weighed out
 * before is to be shared out, by a share of one of two, or by the kinds that were ordered.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { orderBefore } from "./order-said.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

/** What is shared out once it was weighed. */
const mixes: ReadonlySet<string> = new Set(["batter", "filling", "buttercream", "ganache"]);
const weighing: ReadonlySet<string> = new Set("shells scale fill ganache buttercream convert".split(" "));

const name = "(?:the |my )?([a-z]+(?: [a-z]+)?)";
const kind = "(?: (?:colou?r(?:ed)?|part|one|bowl|bit|half|side))?";
const gets = "(?: (?:is|are|gets?|takes?|will be|should be|to be|has|being|wants|needs|makes up))+";
const ofIt =
  "(?: of (?:it|that|this|them|the (?:batter|bowl|lot|mix|whole|total|filling|buttercream|ganache)))?";
const rest =
  "(?: ?,)?(?: and| with| then)?(?: the)? (?:other|rest|remainder|remaining|left over|leftover)(?: (?:one|part|bowl|half|third|quarter|bit|goes|is|stays|gets|will be|for|in|to be|of it))*";
const tail =
  "(?: ?,)?(?: (?:how (?:much|many)|grams?|g|weights?|what(?:s| is)?|each|of each|do i|in|is|for|weigh|per|part|bowl|please|pls|then|,))*[ ?.!]*$";
const twoParts = new RegExp(
  `^(?:(?:and|so|ok|now|then|right) ,? ?)*${name}${kind}${gets} #${ofIt}${rest} ([a-z]+(?: (?!each|grams)[a-z]+)?)${tail}`,
);

const byKind =
  /^(?:(?:and|so|ok|now|then|please|can you|right) ,? ?)*(?:split|divide|share|portion|part|weigh)(?: (?:that|it|this|them|the (?:batter|lot|bowl|filling|buttercream|mix)))?(?: (?:out|up|off))?(?: (evenly|equally|even|fairly))?(?: (?:by|per|between|among|into|for(?: each)?|over)) (?:the |each |those )?(?:\w+ )?(?:colou?rs?|flavou?rs?|kinds?|tastes?|sorts?|orders?)(?: (evenly|equally|please|pls|then|each))*[ ?.!]*$/;

function byShare({ text, amounts, things }: Reading, bowl: string): string | undefined {
  const [share, ...others] = amounts;
  const isShare = share?.dim === "percent" || (share?.dim === "number" && share.fraction && share.value < 1);
  if (
    !share ||
    !isShare ||
    others.length > 0 ||
    things.some((each) => each.dose && !each.dose.includes("color"))
  )
    return undefined;
  const put = spaced(`${text.slice(0, share.at[0])}#${text.slice(share.at[1])}`);
  const [, one = "", other = ""] = twoParts.exec(put) ?? [];
  if (one === "" || /\b(?:it|that|one|they|this|what|how)\b/.test(`${one} ${other}`)) return undefined;
  // cream and coffee are colors where batter is shared out
  const said = one.replace(/ (?:colou?r(?:ed)?|part|one|bowl|bit)$/, "");
  const isColor = / colou?r/.test(text) ? " color" : "";
  return `split ${bowl}, ${share.text} ${said}${isColor}, the rest ${other}`;
}

/** Undefined where no bowl lies there, or it isn't said so. Pure. */
export function bowlParted(reading: Reading, state: State): string | undefined {
  const { last, table } = state;
  const mass = table.mass;
  if (!last || !mass?.thing || !weighing.has(last.tool) || !mixes.has(mass.thing) || reading.whens.length > 0)
    return undefined;
  const bowl = `${mass.grams} g ${mass.thing}`;
  const shared = byShare(reading, bowl);
  if (shared) return shared;
  const found = reading.amounts.length === 0 ? byKind.exec(spaced(reading.text)) : null;
  const kinds = found ? (orderBefore(state)?.kinds ?? []) : [];
  const isEven =
    found?.slice(1).some((each) => each !== undefined && !/please|pls|then|each/.test(each)) ?? false;
  if (kinds.length < 2) return undefined;
  return `split ${bowl}, ${kinds.map(({ name, count }) => `${isEven ? 1 : count} parts ${name}`).join(", ")}`;
}
