/** "customer rang, she wants 40 not 28. batter?": how many there are to be now, with what is asked of them beside. */
import type { Reading } from "../../tools/contract/index.ts";
import type { OrderChanged } from "./order-changed.ts";
import { orderBefore, otherMatter, saidAnew } from "./order-said.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const who = "one|order|lady|customer|client|woman|man|person|guy|couple|office|cafe|shop|party|lot|table";

/** Somebody wants so many, and nothing more is said of it. */
const nowWants = new RegExp(
  `\\b(?:she|he|they|it|its|it's|theyre|we|who|${who}|bride|mum|mom|boss|friend|neighbou?r) (?:(?:now|then|just|actually|really|only|does|do|turns out|is|are|was|were|would|will|says|say|they|she|he|in fact|after all) )*(?:(?:wants?|needs?|asked for|asks for|ordered|orders|takes?|likes?|said|having|fancies|changed (?:it|that) to|for) )?(?:(?:now|only|just|all of|like) )*#(?: (?:macarons|macs|of them))?(?: (?:now|instead|after all|then|in all|altogether|really))*(?: ?,? ?(?:not|instead of|rather than|and not|no longer)(?: (?:the|just|only))* \\d+)?(?: (?:now|any more|anymore))?(?=[ ,.;?!]*$| ?[,.;] | (?:so|and) )`,
);
/** What is asked of them, and nothing that is done with a part of them. */
const asksOfThem =
  /(?:^|[,.;] ?|\b(?:so|and|then|now|what|whats|much|many|the|new) )(?:batter|fillings?|trays?|shells|whites|eggs)\b/;
const notAll =
  /\b(?:if|more|extra|fewer|less|another|additional|each|half|left|broke\w*|crack\w*|split|boxe?s?|per)\b/;

/** The order said anew with what is asked; undefined where no number takes its place. Pure. */
export function orderNow({ text, amounts, whens }: Reading, state: State): OrderChanged | undefined {
  const [only, ...others] = amounts;
  if (only?.dim !== "number" || only.unit !== "" || only.fraction || others.length > 0) return undefined;
  if (whens.length > 0 || only.value < 2 || !asksOfThem.test(text) || notAll.test(text)) return undefined;
  const said = spaced(`${text.slice(0, only.at[0])}#${text.slice(only.at[1])}`);
  const found = nowWants.exec(said);
  const order = found ? orderBefore(state) : undefined;
  // "it's 150. trays?", with an oven's heat between: no macarons
  if (found && /^it/.test(found[0]) && order?.topic !== state.last) return undefined;
  const rest = found ? `${said.slice(0, found.index)} ${said.slice(found.index + found[0].length)}` : "";
  // "trays and filling?" are two questions
  const isOne = rest.match(/\b(?:batter|fillings?|trays?|shells|whites|eggs)\b/g)?.length === 1;
  return order && isOne && !otherMatter.test(rest) && !rest.includes("#")
    ? { text: saidAnew(order, `${only.value} macarons`, rest), topic: order.topic }
    : undefined;
}
