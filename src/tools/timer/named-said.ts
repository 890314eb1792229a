/** Another name for a timer in words that give no order to rename: "the boil one should be named raspberry". */
import { opening } from "../../../data/words/openers.ts";
import type { Memory } from "../contract/index.ts";
import { type Piece, textOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { matching } from "./find.ts";
import { remembered } from "./rename.ts";

const named = "(?:called|named|renamed|relabell?ed|labell?ed|titled|known as)(?: (?:to|as|:))?";
const ought =
  "(?:should|ought to|must|has to|needs to|can|could|shall|will|would|is to|was to|is supposed to|was meant to|better)";
const wished =
  "(?:(?:(?:can|could|would|will) (?:you|we|i)|(?:i|we)(?: would|d)? (?:want|need|like|prefer)|i want|we want|id like|id rather|id prefer|lets|let me|just|please|want|need|have|make|get|see) )+";
const talk = "(?:(?:now|rather|really|actually|instead|please|from now on|then) )*";
const tails = "(?: (?:instead|please|pls|now|then|from now on|thanks|actually|really|though|[.!?]))*";

/** Each manner, with what is renamed and what it is called from then on. */
const manners = (which: string, to: string): string[] => [
  // "the boil one should be named raspberry", "can the syrup one be called caramel"
  `(?:(?:can|could|may|should|shall|would) )?${which} (?:${ought} )?${talk}(?:be|get|is|was) ${talk}${named} ${to}`,
  // "i want the syrup one called caramel", "lets have it named caramel"
  `${wished}${which} (?:to be |be )?${named} ${to}`,
  // "give it the name caramel"
  `(?:give|hand) ${which} (?:the|a|another|this) (?:new |other |better |different )?(?:name|title|label)(?: (?:of|:|,))? ${to}`,
  // "its name is caramel", "the syrup timers new name: caramel"
  `${which} (?:new |other |right |real )?(?:name|label|title) (?:(?:${ought} )?(?:be|is)|:|=|to be) ${talk}${to}`,
  `(?:the )?(?:new |other |right |real )?(?:name|label|title) (?:of|for|on) ${which} (?:(?:${ought} )?(?:be|is)|:|=|to be) ${talk}${to}`,
  // "label that one caramel"
  `(?:label|relabel|title|tag) (?=(?:it|that|this|(?:\\S+ ){1,4}(?:one|timer)) )${which} (?:as )?${to}`,
  // "the syrup should read caramel"
  `${which} (?:should|ought to|must|has to|needs to) (?:read|say) ${to}`,
  // "thats the caramel really, rename it"
  `${which}(?: is|s) ${talk}(?:for )?(?:the |my )?${to}${tails} (?:, )?(?:so )?(?:(?:please|can you|could you) )*(?:rename (?:it|that|the timer)|call it that|change (?:the|its) name)`,
];

/** A new one is none to rename: "i want a timer called caramel". */
const none =
  "(?!(?:a|an|another|one|new|some|any|how|what|whats|which|when|why|where|who|everything|(?:my |the )?(?:\\S+ )?(?:recipe|formula|note|batch|batter|bottle|file|box|flavou?r|macarons?|mix))\\b)";
const some = `${none}(?:\\S+ ){0,4}?\\S+`;
const name = "(?!(?:what|which|who|how|it|that|this|so|one)(?: |$))\\S+(?: \\S+){0,4}";

/** Signs behind a timer, where any of its words will do. */
export const namesIt = manners(some, name).map((each) => `^${opening}${each}${tails}$`);
/** Signs that stand alone, by the word itself. */
export const namesTimer = manners(`${none}(?:\\S+ ){0,4}?(?:timers?|alarms?|countdowns?)(?: one)?`, name).map(
  (each) => `^${opening}${each}${tails}$`,
);

const orders = manners(`(?<which>${some})`, `(?<to>${name}?)`).map(
  (each) => new RegExp(`^${opening}${each}${tails}$`),
);
/** Every manner holds one of these: they are looked for before any is compiled. */
const namingWords =
  /\b(?:called|call|(?:re)?named?|names|titles?d?|(?:re)?label(?:l?ed)?|labels?|known as|tag|read|say)\b/;
const asked = /^(?:what|which|who|how|it|that|this|so)(?: |$)/;
const itself = /^(?:it|its|that|thats|this|that one|this one|(?:the|that|this) (?:timers?|one))$/;

/** @returns a new name for a timer that runs; nothing where none is meant */
export function namedSaid(pieces: readonly Piece[], memory: Memory): Draft | undefined {
  if (pieces.some((each) => each.amount?.dim === "time" || each.when)) return undefined;
  const text = textOf(pieces);
  if (!namingWords.test(text)) return undefined;
  for (const order of orders) {
    const { which, to } = order.exec(text)?.groups ?? {};
    if (!which || !to || asked.test(to)) continue;
    const said = which
      .replace(/^(?:the|my|that|this) /, "")
      .replace(/ ?\b(?:timers?|alarms?|countdowns?|one|ones)$/, "");
    const isIt = itself.test(which) || said === "" || (said === "that" && order === orders.at(-1));
    const draft: Draft = { do: "rename", to: to.replace(/^(?:the|my|a|an) /, "") };
    if (isIt) return memory.last?.tool === "timer" ? { ...draft, ...remembered(memory) } : undefined;
    const known = memory.names.timers.map((label) => ({ label }));
    if (matching(said, known).length > 0 || / (?:timers?|alarms?)$/.test(which))
      return { ...draft, name: said };
  }
  return undefined;
}
