/** What is charged for, in one breath with the order: "charge $14 ingredients $3 of boxes at 60%". No price is named. */
import type { Phrase } from "./phrase.ts";

const money =
  "(?:(?:us|nz|au|ca)?[$£€] ?\\d+(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)? ?(?:dollars?|euros?|pounds|quid|bucks))";
const goods =
  "(?:ingredients?|materials|groceries|food|stuff|butter|almonds?|packag(?:ing|es)|packing|box(?:es)?|bags|ribbons?|stickers|labels|wrapping|labou?r|work)";
const order = "(?:charge|charging|price|sell|ask|quote)";
const line = `${money} (?:of )?(?:the )?${goods}`;

export const billOrdered = (): readonly Phrase[] => [
  {
    marks: ["charge", "charging", "price", "sell", "ask ", "quote"],
    from: new RegExp(
      `\\b(${order}(?:,|:| for| with| on)?) (${line}(?:(?:,? and|,|;| \\+|) ${line})*)(?!,? ?(?:and )?${money})(?= |[,.;?]|$)(?! of \\d)`,
      "g",
    ),
    to: (_said, lead = "", list = "") => {
      const lines = [...list.matchAll(new RegExp(`(${money}) (?:of )?(?:the )?(${goods})`, "g"))];
      return `${lead} ${lines.map(([, sum, what]) => `${sum} of ${what}`).join(" and ")}`;
    },
  },
];
