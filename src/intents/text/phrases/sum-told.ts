/** "5 boxes of a dozen, that's 60", "a gross, that's 144": what an order comes to, worked out by the baker herself. */
import { isNamed, isWeighed, many, manySaid } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

const thats =
  "(?:,|;|:|\\.| -)+ (?:so |and )?(?:that's|thats|that is|that makes|which makes|which is|makes|i make that|ie|i\\.e\\.)";

/** What is asked of a batch is all that is wanted; another question or order stands for itself. */
const isToldElse = /\?|\b(?:how|what|timers?|notes?|log|price|cost|label|plan|split|save|set)\b|[€£$%]/;
const asked =
  "(?:(?:how (?:much|many)|what(?:'s|s)?|grams of) (?:the |of the )?|(?<=[,.;:] )(?:the |so )?)(?:batter|filling|butter ?cream|ganache|smbc|shells|trays|whites|egg whites)";
const named =
  "(?:all|just|only|those|these|the|the last|the first|the extra|the other|the next|the missing)(?: of)?(?: the| those| these)?";
/** "three orders": how many orders, and no count of what is made. */
const numbers = new RegExp(
  `\\b${many}\\b(?! (?:[a-z]+ )?(?:orders|boxes|customers|clients|people|ladies|flavou?rs|colou?rs|kinds|sorts|lots|batches|trays|tins|days|bowls|guests|kids|parties|fillings)\\b)`,
  "g",
);

export const sumTold = (): readonly Phrase[] => [
  // "how many boxes worth... well how many macarons is it": asked anew before it is answered
  {
    marks: ["well", "rather", "i mean", "no,", "sorry", "actually"],
    from: /(?<=^|[,.;] )how (?:many|much) (?:[a-z]+ ){0,5}[a-z]+(?: ?[,.;-])+ ?(?:(?:well|or rather|rather|i mean|i meant|no|sorry|actually|or|ok|wait|hm),? )+(?=how (?:many|much) )/g,
    to: "",
  },
  // "60 (ten boxes of 6)"
  {
    marks: ["("],
    from: new RegExp(
      `(?<![\\d.,/-])\\b(${many})( (?:macarons?|macs))? ?\\((?:so |ie |i\\.e\\. |that's |thats )?(${many}) (?:boxes|tins|packs|bags|trays|lots|sets) (?:of|with) (${many})\\)`,
      "g",
    ),
    to: (said, ...found) => {
      const [sum = "", , boxes = "", each = ""] = found;
      return manySaid(sum) === manySaid(boxes) * manySaid(each) ? `${manySaid(sum)} macarons` : said;
    },
  },
  // "buttercream for filling 60, how much to make"
  {
    marks: [" fill"],
    from: new RegExp(
      `(?<=\\b(?:butter ?cream|ganache|smbc|curd|caramel|filling|jam|much|enough)\\b[^?.]{0,40})\\b(for filling|to fill) (${many})(?=[,.;?!]|$| (?:how|please|pls|and|with|at)\\b)(?![,.]\\d)`,
      "g",
    ),
    to: (said, ...found) => (isNamed.test(found.at(-1) ?? "") ? said : `${said} macarons`),
  },
  // "48 waiting, 24 of them for tomorrow. how much filling for all 48": one of the numbers told, named again
  {
    marks: [" for "],
    from: new RegExp(
      `^(?=.{0,240}$)(.*?)\\b(${asked}(?: (?:do|will|would|should) i (?:need|want|make)| is (?:that|it)| that is)? (?:for|to fill)) ${named} (${many})(?: (?:of them|macarons?|macs|ones))?(?=[ ?.!]*$)`,
      "g",
    ),
    to: (said, before = "", ask = "", number = "") => {
      const count = manySaid(number);
      const told = [...before.matchAll(numbers)].map(([each]) => manySaid(each));
      const sizes = before.match(/\d+(?:\.\d+)? ?(?:mm|cm)\b/g) ?? [];
      if (!told.includes(count) || sizes.length > 1 || isWeighed.test(before) || isToldElse.test(before))
        return said;
      return `${ask} ${count} macarons${sizes.map((size) => ` at ${size}`).join("")}`;
    },
  },
  // the sum is of what is asked: "that's 130 shells, batter for 130 shells?"
  {
    marks: [" that", "which", "makes"],
    from: new RegExp(
      `^(?=.{0,240}$).*${thats} (\\d{1,4}) (shells|macarons)(?:,|\\.|;| -)? (?:and |so )*((?:how (?:much|many) |what |whats |the )?(?:batter|filling|trays|whites|shells)(?: do i need| is that)? for )(?:all |the |those |all the )?\\1(?: \\2)?(?=[ ?.!]*$)`,
      "g",
    ),
    to: "$3$1 $2",
  },
  // "144 macarons, that's 144", "12 boxes of 6, that's 72": said once is enough
  {
    marks: [" that", "which", "makes"],
    from: new RegExp(
      `(?<![\\d.,/-])\\b(${many})( (?:macarons?|macaroons?|macs))?(?: (boxes|tins|packs) (?:of|with) (${many})( macarons?)?)?${thats} (\\d{1,4})(?: (?:macarons?|macs|in all|altogether|total|in total|of them))*(?=[,.;?!]|$)`,
      "g",
    ),
    to: (said, ...found) => {
      const [first = "", macs = "", boxes, each, named = "", sum = ""] = found;
      const count = boxes === undefined ? manySaid(first) : manySaid(first) * manySaid(each ?? "");
      if (count !== Number(sum)) return said;
      return boxes === undefined ? `${sum}${macs || " macarons"}` : `${first} ${boxes} of ${each}${named}`;
    },
  },
];
