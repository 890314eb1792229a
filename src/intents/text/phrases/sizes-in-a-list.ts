/** "45 macarons at 4.5 cm: batter, filling and how many trays?": what is asked of one order stands in a list. */
import { leadingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${leadingText("i need", "give me", "tell me", "for")})`;
const order =
  "((?:\\d{1,3}) ?(?:macarons?|macaroons?|macs)(?: (?:at|of|with) \\d+(?:\\.\\d+)? ?(?:mm|cm)(?: (?:shells|each|across))?)?)";
const ask = "(?:(?:how (?:much|many)|what(?:'s|s)?|the|number of|amount of|weight of) )*";
const one = `${ask}(?:batter|filling|trays|shells|whites|egg whites)(?: (?:do i need|will i need|is that|needed))?`;
const joint = "(?:,? and |,? plus |, ?| \\+ | & |; ?|\\? ?)";
const list = `(${one}(?:${joint}${one})+)`;

const items = new RegExp(one, "g");
const counted = /trays|shells|whites/;

/** Each with the order that it is asked of. */
function apart(said: string, before: string, asked: string, of: string): string {
  const all = [...asked.matchAll(items)].map(([item]) => item.replace(new RegExp(`^${ask}`), ""));
  const names = new Set(all);
  // two of them are heard as they are
  if (names.size !== all.length || !names.has("batter") || !names.has("filling") || all.length < 3)
    return said;
  return `${before}${all.map((item) => `${counted.test(item) ? "how many" : "how much"} ${item} for ${of}`).join("? ")}`;
}

export const sizesInAList = (): readonly Phrase[] => [
  // "batter for 22 macarons? filling for them too"
  {
    marks: [" too", " as well"],
    from: /(?<=\b(?:batter|filling|shells)\b[^?]*\d[^?]*)(?:\?|[,.;])(?: and)? (?:the )?(batter|filling)(?: for (?:them|those|it|all of them|that))? (?:too|as well)(?= ?[?.!]*$)/g,
    to: "? and the $1 for them",
  },
  {
    marks: ["filling"],
    from: new RegExp(`^(?=.{0,160}$)${lead}${order}(?:,|:|;|\\.| -)? ?(?:so |and )?${list} ?[?.!]*$`, "g"),
    to: (said, before = "", of = "", asked = "") => apart(said, before, asked, of),
  },
  {
    marks: ["filling"],
    from: new RegExp(`^(?=.{0,160}$)${lead}${list} (?:for|to make) (?:the |my )?${order} ?[?.!]*$`, "g"),
    to: (said, before = "", asked = "", of = "") => apart(said, before, asked, of),
  },
];
