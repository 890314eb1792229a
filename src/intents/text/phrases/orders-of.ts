/** "two orders of 24", "one lady wants 18, the other one 30": several orders of one turn. What is made is their sum. */
import { isSized, isToldOf, isWeighed, many, manySaid } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

const some = "([2-9]|two|three|four|five|six|seven|eight|nine|ten)";
const order = "(?:orders|customers|parties|ladies|people|clients|lots|sets|weddings|platters|towers|batches)";
const macs = "(?: (?:macarons?|macaroons?|macs))?";
const end =
  "(?=[ ]?[,.;?!:]| (?:for|at|by|on|both|each|all|to|so|and|due|ready|please|this|next|tomorrow|today|how|what|batter|picked|they)\\b| ?$)";
const joint = "(?:,? and|,|;|\\.| &|,? but| -)+ ";
const needs =
  "(?: (?:wants?|wanted|needs?|takes?|ordered|orders?|asked for|would like|is|for|of|gets?|is having|'s getting))?";
const one =
  "(?:the )?(?:one|first|first one|1st|one (?:lady|customer|woman|man|guy|client|order|bride|girl|mum|mom|person|neighbou?r|colleague)|(?:first|1st) (?:lady|customer|order|client))";
const other =
  "(?:the |and |an)?(?:other|other one|second|second one|2nd|other (?:lady|customer|woman|man|guy|client|order|bride|girl|mum|mom|person|neighbou?r|colleague)|(?:second|2nd) (?:lady|customer|order|client)|one|another)";

/** Somebody, and how many she wants. */
const wishes =
  "(?:wants?|wanted|needs?|needed|takes?|ordered|orders|asked for|gets?|would like|'d like|is having|is after)";
const wish = `(?:(?:my|the|her|his|our|their|your|a) )?(?:[a-z]+ ){1,2}?${wishes} (?:${many} boxes of )?${many}${macs}`;
const eachWish = new RegExp(`\\b${wishes}`, "g");
const oneWish = new RegExp(`${wishes} (?:(${many}) boxes of )?(${many})`, "g");
/** Asked of one of them. */
const ofOne =
  /\b(?:each|per (?:order|batch|customer|person)|for (?:each|one)(?: (?:of them|order|batch))?)[ ?.!]*$/;

/** Two days are two plans; a size, a tray or a price of each is no count. */
const days =
  /\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow)\b.*\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow)\b/;
const isOther = (whole: string): boolean =>
  !isSized.test(whole) ||
  isToldOf.test(whole) ||
  days.test(whole) ||
  isWeighed.test(whole) ||
  /\b(?:trays? (?:holds?|fits?|takes?)|\d ?(?:mm|cm|min|minutes|h|hours))\b/.test(
    whole.replace(/\b(?:at|of|in) \d+(?:\.\d+)? ?(?:mm|cm)\b/g, ""),
  );

export const ordersOf = (): readonly Phrase[] => [
  // "300 g chocolate for two orders, what else": weighed, however many orders it is for
  {
    marks: [" orders", " customers", " parties", " flavo"],
    from: /(?<=[ \d](?:g|gr|grams|kg|oz) (?:of )?(?:[a-z]+ ){0,2}[a-z]+),? (?:for|in|across) (?:my |the )?(?:two|three|four|five|both|several|2|3|4|5) (?:orders|customers|parties|weddings|clients)(?=,|\.|;|\?)/g,
    to: "",
  },
  // "750 g smbc, three flavors, what's in it": what it is made of is of no flavor
  {
    marks: [" flavo"],
    from: /(?<=[ \d](?:g|gr|grams|kg|oz) (?:of )?(?:[a-z]+ ){0,2}[a-z]+),? (?:for |in |into )?(?:two|three|four|five|2|3|4|5) flavou?rs(?=(?:,|\.|;) (?:and |so )?(?:what(?:'s|s| is| goes| do i put) in(?:to)?(?: it| there)?|ingredients|the recipe|whites,? (?:and )?sugar,? (?:and )?butter)[ ?.!]*$)/g,
    to: "",
  },
  {
    marks: [" of ", " each"],
    from: new RegExp(
      `\\b${some} (?:separate |different |small |big )?${order}(?: (?:in|today|on|for|this week|to do|to make|came in)\\b)*(?:(?:,|:)? (?:each )?(?:of|for|with|at) (${many})${macs}(?: each)?|(?:,|:)? (${many})${macs} each)${end}`,
      "g",
    ),
    to: (said, ...found) => {
      const [number = "", first, second] = found;
      const each = manySaid(first ?? second ?? "");
      const whole = found.at(-1) ?? "";
      if (each < 2 || isOther(whole)) return said;
      return `${ofOne.test(whole) ? each : manySaid(number) * each} macarons`;
    },
  },
  {
    marks: ["other", "second", "another", " one ", "2nd"],
    from: new RegExp(
      `(?:\\b(?:two|2|a couple of) (?:orders|customers|ladies|clients|people)(?: (?:in|today|came in|to do|for today|this week|for the weekend|now))*(?:,|:|\\.|;| -)? )?\\b${one}${needs} (${many})${macs}${joint}${other}${needs} (${many})${macs}${end}`,
      "g",
    ),
    to: (said, ...found) => {
      const [first = "", second = ""] = found;
      const counts = [manySaid(first), manySaid(second)];
      return counts.some((each) => each < 2) || isOther(found.at(-1) ?? "")
        ? said
        : `${counts.reduce((all, each) => all + each, 0)} macarons`;
    },
  },
  // "my gran wants 15 and my aunt wants 20"
  {
    marks: [" want", " need", " order", " asked", " takes", " gets", " like"],
    only: (text) => (text.match(eachWish)?.length ?? 0) > 1 && !isOther(text),
    from: new RegExp(`(?<![\\d.,/-])\\b${wish}(?:${joint}${wish})+${end}`, "g"),
    to: (said) => {
      const counts = [...said.matchAll(oneWish)].map(
        ([, boxes = "one", number = ""]) => manySaid(boxes) * manySaid(number),
      );
      return counts.length < 2 || counts.some((each) => each < 2)
        ? said
        : `${counts.reduce((all, each) => all + each, 0)} macarons`;
    },
  },
];
