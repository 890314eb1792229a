/**
 * "customer rang, two more boxes", "three boxes less", "an extra half dozen on that order, batter again", "the second one
 * wants 12 fewer": what is put to the order before or taken off it, by what a box held, and no order of its own.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { type Order, orderBefore, otherMatter, saidAnew } from "./order-said.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

export interface OrderChanged {
  text: string;
  topic: Topic;
}

const size = "(?<size> of #(?: macarons| macs)?)?";
const box = `(?:(?!more|less|fewer|of|for|in|on)[a-z]+ )?(?<box>boxe?s?|tins?|packs?)${size}`;
const macs = "(?:(?: of)?(?: the| those| them)?(?: macarons| macs))?";
const n = "(?<n>#)";
const onIt =
  "(?:on|to|onto|with|from|off|in) (?:(?:top of )?(?:that|the|this|her|his|their|my|our)(?: \\w+)? (?:order|lot|list|one)|that|it|them)";
const who = "(?:one|order|lady|customer|client|woman|man|person|guy|couple|office|cafe|shop|party|lot|table)";
const wants =
  "(?:(?:only|just|now|actually|really|will|would|says she|says they) )*(?:wants?|needs?|takes?|likes?|asked for|asks for|ordered|orders?|is|gets?|having|has)";
const which = `the (?:first|second|third|fourth|last|other) ${who} ${wants}`;

const more: readonly string[] = [
  `${n} (?:more|extra|additional|further) ${box}`,
  `\\b(?:another|an extra|an additional|a further|one more|extra) (?:${n} )?${box}`,
  `\\b(?:add|adding|adds|added|plus|chuck in|throw in|tack on)(?: on)? ${n} ${box}(?: more| on)?`,
  `${n} ${box} (?:more|extra|on top|besides|added)\\b`,
  `\\b(?:an extra|another|an additional|a further|add|adding|plus|extra) ${n}${macs}(?: more| extra)? ${onIt}`,
  `${n} (?:more|extra)${macs} ${onIt}`,
  `\\b${which} ${n} (?:more|extra)\\b`,
  `\\b(?:she|he|they|we|customer|client|bride|${who}) ${wants} ${n} (?:more|extra)${macs}(?= ?[,.;?!]| ?$| (?:now|so|and))`,
  // "another dozen", alone
  `^(?:(?:and|ok|so|now|oh|then|no|sorry) ,? ?)*(?:another|an extra|an additional|a further) ${n}${macs}(?: (?:please|pls|then|too|as well|now|on top))*(?=[ ?.!]*$)`,
];

const gone =
  "(?:(?:(?:were|was|are|is|got|have been|has been) )?(?:cancelled|canceled|called off|dropped|not needed))";
const fewer: readonly string[] = [
  `${n} (?:less|fewer) ${box}`,
  `${n} ${box} (?:less|fewer|off|short|${gone})\\b`,
  `\\b(?:take|took|knock|cancels?|cancell?ed|drop|dropped|drops|lose|minus|less|without|leave|scrap|skip|forget|remove)(?: off| out| away)? ${n} (?:of (?:the|those|them|her|my) )?${box}(?: off| out| away)?`,
  `${n} (?:fewer|less)${macs} ${onIt}`,
  `\\b(?:take|knock|drop|leave|cut)(?: off| out)? ${n}${macs} (?:off )?${onIt}`,
  `\\b${which} ${n} (?:fewer|less)\\b`,
];

interface Change {
  count: number;
  boxes: boolean;
  each?: number;
  up: boolean;
  /** What the sentence says besides. */
  rest: string;
}

const asPattern = (source: string): RegExp => new RegExp(source);
let known: { more: RegExp[]; fewer: RegExp[] } | undefined;
/** Words without which none of them is said. */
const hint = /#|box|tin|pack|\bcouple\b/;

/** Numbers that are no amounts: "a couple more boxes", "one of the boxes", "a box less". */
const aCouple = /\b(?:a )?couple(?: of)? (?=more |(?:\w+ )?(?:boxes|tins|packs)\b)/;
const oneOf = /\b(?:one (?=of (?:the|those|them|her|my|his|their) )|an? (?=(?:box|tin|pack)\b))/;

/** The change by its words; undefined where another number is said. */
function changeIn({ text, amounts, whens }: Reading): Change | undefined {
  const isCount = amounts.every(({ dim, unit, fraction }) => dim === "number" && unit === "" && !fraction);
  if (!isCount || whens.length > 0 || amounts.length > 2) return undefined;
  const said = spaced(
    amounts.reduceRight((left, { at: [from, to] }) => `${left.slice(0, from)}#${left.slice(to)}`, text),
  );
  if (!hint.test(said)) return undefined;
  const isSpelt = !said.includes("#");
  const put = isSpelt ? said.replace(aCouple, "# ").replace(oneOf, "# ") : said;
  const spelt = isSpelt && put.includes("#") ? [aCouple.test(said) ? 2 : 1] : [];
  known ??= { more: more.map(asPattern), fewer: fewer.map(asPattern) };
  const [less, plus] = [firstIn(known.fewer, put), firstIn(known.more, put)];
  const found = less ?? plus;
  if (!found) return undefined;
  const { n: counted, size: sized, box: boxes } = found.groups ?? {};
  const before = put.slice(0, found.index);
  const rest = `${before} ${put.slice(found.index + found[0].length)}`;
  // "batter for two more boxes" is what those take
  const isOwn = !less && /\b(?:for|in) (?:the |those |just |only )*$/.test(before);
  if (isOwn || rest.includes("#")) return undefined;
  const numbers = [...spelt, ...amounts.map(({ value }) => Math.abs(value))];
  const count = counted === undefined ? 1 : numbers.shift();
  const each = sized === undefined ? undefined : numbers.shift();
  return count === undefined
    ? undefined
    : { count, boxes: boxes !== undefined, up: !less, rest, ...(each ? { each } : {}) };
}

const firstIn = (patterns: readonly RegExp[], put: string): RegExpExecArray | null | undefined =>
  patterns.map((each) => each.exec(put)).find((each) => each !== null);

/** The order as it is now; in boxes, where all of it is. */
function changed(
  order: Order,
  { count, boxes, each, up }: Change,
  in_box: number | undefined,
): string | undefined {
  const size = boxes ? (each ?? in_box) : 1;
  if (size === undefined) return undefined;
  const now = order.macarons + (up ? 1 : -1) * count * size;
  if (now <= 0) return undefined;
  const holds = in_box ?? 0;
  return boxes && size === holds && now % holds === 0 && order.macarons % holds === 0
    ? `${now / holds} boxes of ${holds}`
    : `${now} macarons`;
}

/** "and 12 more", behind a plan or what there is to buy; the others move their number themselves. */
const bareMore =
  /^(?:(?:and|ok|so|now|oh|then|no|sorry|actually|make it|make that|add) ,? ?)*# (more|extra|fewer|less)(?: macarons| macs)?(?: (?:please|pls|then|too|as well|now))*[ ?.!]*$/;
const planning: ReadonlySet<string> = new Set(["day", "buy"]);

function bareChange({ text, amounts, whens }: Reading, { last }: State): Change | undefined {
  const [only, ...others] = amounts;
  if (!planning.has(last?.tool ?? "") || !only || others.length > 0 || whens.length > 0) return undefined;
  if (only.dim !== "number" || only.unit !== "" || only.fraction) return undefined;
  const [, way] = bareMore.exec(spaced(`${text.slice(0, only.at[0])}#${text.slice(only.at[1])}`)) ?? [];
  return way === undefined
    ? undefined
    : { count: Math.abs(only.value), boxes: false, up: /^(?:more|extra)$/.test(way), rest: "" };
}

/** "10 more on it", behind a timer: minutes. */
const putOnIt =
  /^(?!.*\b(?:macarons|macs)\b).*\b(?:on|onto|to|off|from) (?:it|that)(?= ?[,.;?!]| ?$| (?:please|pls|now|then))/;
const isOfTimer = ({ text }: Reading, { boxes }: Change, { turn }: State): boolean =>
  !boxes && turn?.topics.some(({ tool }) => tool === "timer") === true && putOnIt.test(text);

/** The order said anew; undefined where nothing is put to it or taken off it. Pure. */
export function orderChanged(reading: Reading, state: State): OrderChanged | undefined {
  const change = changeIn(reading) ?? bareChange(reading, state);
  const order = change && !isOfTimer(reading, change, state) ? orderBefore(state) : undefined;
  if (!change || !order || otherMatter.test(change.rest)) return undefined;
  const now = changed(order, change, state.in_box);
  return now === undefined ? undefined : { text: saidAnew(order, now, change.rest), topic: order.topic };
}
