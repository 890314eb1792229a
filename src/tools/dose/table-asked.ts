/** Which flavors there are doses for, and what goes with what, which no table says. */
import { type DoseRow, doseRows } from "../../../data/rules/doses.ts";
import type { Outcome, Reading } from "../contract/index.ts";
import { percent } from "../lib/show.ts";
import type { Draft } from "./draft.ts";

const flavors = "(?:flavou?r(?:s|ings?)?|tastes?|colou?rs|doses)";
const lead =
  "^(?:(?:so|and|ok|hi|please|pls|can you|could you|for the party|any ideas?|idea|help me|um|hm|i dont know|not sure|,) ?)*";
const end = "(?: (?:please|pls|then|for me|today|this time|[a-z]+ time)| ?[?.!])*$";

/** "which flavors do you know", "list the flavors", "what can i flavor buttercream with". */
const known = new RegExp(
  `${lead}(?:(?:what|which|how many)(?: kinds? of| sorts? of)? ${flavors} (?:(?:do|can|could|have) (?:you|u)|(?:can|could) (?:i|we)|(?:are|is) (?:there|in))\\b(?: (?:know|have|got|do|dose|weigh|handle|use|a dose for|doses for|the table|to choose from|take|work with|measure|rules for|for))*|(?:list|show|tell|give)(?: me)?(?: (?:all|the|your|of))* (?:known )?${flavors}(?: (?:you know|you have|there are|list|table))?|what (?:can|could|do) i (?:flavou?r|dose) (?:it|buttercream|ganache|a? ?filling)?(?: with)?)${end}`,
);
/** "what goes with pistachio", "suggest a flavor", "what flavor should i make". */
const pairing = new RegExp(
  `${lead}(?:(?:what|which)(?: (?:other|else|two|three))?(?: ${flavors}| fillings?| ganache| buttercream| jam)? (?:else )?(?:go|goes|pair|pairs|match|matches|works?|tastes?(?: good| nice| best)?|suits?|fits?|would go|would work)(?: (?:well|nicely|best|good|together|great))* (?:with\\b.*|together(?: (?:well|nicely|best|in a box))?)|(?:suggest|recommend|pick|choose|propose)(?: me| us)? (?:a|an|some|any|the|two|three|me)?(?: (?:nice|good|new|other|fun|seasonal|summer|winter|spring|autumn))*? ?(?:${flavors}|fillings?|combinations?|combo|pairings?)\\b.*|(?:what|which) (?:${flavors}|combinations?|combo) (?:should|shall|would|could|do) (?:i|we|you) (?:make|do|bake|choose|pick|go (?:for|with)|take|recommend|suggest|like)\\b.*|(?:what|which)(?: other)? (?:${flavors}|fillings?) (?:is|are) (?:good|nice|best|popular|in season)\\b.*)$`,
);

/** Nothing where an amount is told, or a day: then it is of a bowl or of an order. */
export function tableAsked({ text, things, amounts, whens }: Reading): Draft | undefined {
  if (amounts.some(({ dim, of }) => dim !== "number" || of !== undefined) || whens.length > 0)
    return undefined;
  if (known.test(text)) return { list: "known" };
  // "what works best with a fan oven" is of no taste
  const isOfTastes =
    !/\bwith\b/.test(text) ||
    things.some(({ taste, ingredient, chocolate, base }) => taste ?? ingredient ?? chocolate ?? base);
  return pairing.test(text) && isOfTastes ? { list: "pairing" } : undefined;
}

const shown = ({ name, buttercream, ganache, batter }: DoseRow): string =>
  [
    ...(buttercream ? [`${percent(...buttercream)} of buttercream`] : []),
    ...(ganache ? [`${percent(...ganache)} of ganache`] : []),
    ...(batter ? [`${percent(...batter)} of batter`] : []),
  ].reduce((all, each, at) => `${all}${at === 0 ? "" : ", "}${each}`, `${name}: `);

/** What there is a rule for, a row each; what goes together is turned down and the rows are named. */
export function doseTable(list: "known" | "pairing"): Outcome {
  if (list === "pairing")
    return {
      status: "declined",
      headline:
        'What tastes well together no table of mine says, so I name none. "list the flavors" shows what I have doses for, "my best batches" what you rated.',
    };
  return {
    status: "answered",
    headline: `${doseRows.length} kinds of flavor and color, each of any taste`,
    rule: {
      text: "by weight of the mix they go into; the directions on your own bottle go before",
      basis: "from memory",
    },
    items: doseRows.map((row) => ({ text: shown(row) })),
  };
}
