/** "a couple of dozen for the neighbour", "5 dozen for pickup on friday": what is ordered by the dozen here are macarons. */
import { dozens, isNamed, isSized, isToldOf } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

/** What may stand behind them that is no name of what they are. */
const behind =
  "(?= ?(?:$|[,.;?!:(]| - )| (?:for|at|by|on|with|in|to|so|and how|how|what|please|pls|altogether|total|now|then|this|next|tomorrow|tonight|due|ready|needed|wanted|ordered|picked|being|half|all|each is)(?![a-z]))";
/** A price's, a box's, or one more than there was: that is another count. */
const ahead =
  "(?<![\\d.,/:-])(?<!\\b(?:box|boxes|tin|tins|tray|trays|pack|packs|per|each|every|by|a|an|another|extra|more) (?:of |with |holds? |the )?)";
/** Only the first count of a turn: "3 dozen, no, 4 dozen" is taken back by what hears such. */
/** A size told ahead of it leaves the order no question of its own either. */
const others =
  /\d ?(?:mm|cm)\b.*\bdozen|\bdozens?\b.*\bdozens?\b|\b(?:boxes|box|shells|people|guests|kids)\b.*\bdozen|\d+ (?:shells|trays|boxes|tins)\b|\b(?:no|sorry|wait|actually|instead|make it|rather)\b/;

/** A number that is no size, time or date: of another count, and which is asked about isn't known. */
const isCounted = (whole: string): boolean =>
  /\d|\bmore\b/.test(
    whole
      .replace(new RegExp(`\\b${dozens}`), "")
      .replace(
        /\b(?:at |by |for |around )?\d+(?:[.:]\d+)? ?(?:mm|cm|am|pm|a m|p m|o ?clock|oclock|h|st|nd|rd|th|%)(?![a-z])|\b(?:at|by|before|around) (?:about )?\d+(?:[:.]\d\d)?(?![\d.]| ?[a-z%])/g,
        "",
      )
      .replace(
        /\b(?:at|by|before|around) \d+(?::\d\d)?(?= (?:in|on|this|next|tomorrow|today|sharp|please|pls)\b)/g,
        "",
      ),
  );

export const dozensAlone = (): readonly Phrase[] => [
  // "a gross of macarons", "two gross": a dozen dozens
  {
    marks: [" gross"],
    from: /(?<![\d.,/-])\b(a|one|two|2|1|half a) gross(?: (?:of )?(?=macarons?|macaroons?|macs|shells|them\b)|(?= ?[,.;?!]| (?:for|at|by|on|please)\b| ?$))/g,
    to: (_said, number = "") => {
      const count = /^half/.test(number) ? 72 : /^(?:two|2)$/.test(number) ? 288 : 144;
      return `${count} `;
    },
  },
  {
    marks: [" dozen"],
    from: new RegExp(`${ahead}\\b(${dozens})(?: of (?:them|those|these)| ones)?${behind}`, "g"),
    to: (said, ...found) => {
      const whole = found.at(-1) ?? "";
      return isSized.test(whole) &&
        !isToldOf.test(whole) &&
        !isNamed.test(whole) &&
        !others.test(whole) &&
        !isCounted(whole)
        ? `${found[0] ?? said} macarons`
        : said;
    },
  },
];
