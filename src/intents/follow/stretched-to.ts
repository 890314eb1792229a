/** "would it stretch to 160 g?", behind how much a flavor is enough for: a bowl of so much, and no flavor. */
import { leadingText } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

const lead = leadingText("or");
const it = "(?:it|that|this|they|those|these|the (?:lot|flavou?r\\w*|bottle|rest)|so much|i)";
const ways = [
  new RegExp(
    `^${lead}(?:will|would|could|can|does|do|might|should) ${it} (?:(?:still|even|just|also|all|make it|get me|get us|go|be|it) )*(?:stretch(?: (?:to|for|as far as))?|reach(?: to)?|do|cover|flavou?r|last(?: for)?|suffice(?: for)?|manage|go (?:to|for|round)|enough(?: for)?|be enough for|work for|see to|serve|far enough for|to) (?:about |around |a |the |my )?#`,
  ),
  new RegExp(
    `^${lead}(?:is|are|was) ${it} (?:(?:still|even|also|just|going to be) )*(?:enough|plenty|ok|okay|good|right|too little) (?:for|in) (?:about |around |a |the |my )?#`,
  ),
  new RegExp(
    `^${lead}(?:(?:what|how) about |and |also )?(?:for|into|in) (?:about |around |a |the |my )?# ?(?:then|instead|too)?[ ?.!]*$`,
  ),
  new RegExp(`^${lead}(?:enough|plenty) for (?:about |around |a |the |my )?#`),
];
/** "with 160 g then": a bowl, where it is too much for a flavor; else another weight of that. */
const either = new RegExp(
  `^${lead}(?:(?:what|how) about |and |also )?with (?:about |around |a |the |my )?# ?(?:then|instead|too)?[ ?.!]*$`,
);

/** A bowl weighs at least so many times what flavors it. From memory. */
const times = 5;

/** The sentence put plainly; undefined where no flavor was asked that way round. Pure. */
export function stretchedTo({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const [only, ...others] = amounts;
  if (last?.tool !== "dose" || !only || only.of || only.fraction || others.length > 0) return undefined;
  const isBare = only.dim === "number" && only.unit === "";
  if (only.dim !== "weight" && !isBare) return undefined;
  const { flavor_g, base_g, base } = last.inputs;
  if (typeof flavor_g !== "number" || base_g !== undefined) return undefined;
  if (things.some((each) => !each.unit)) return undefined;
  const said = `${text.slice(0, only.at[0])}#${text.slice(only.at[1])}`;
  const isBowl = gramsOf(only) >= times * flavor_g && either.test(said);
  return isBowl || ways.some((each) => each.test(said))
    ? `what about ${only.text}${isBare ? " g" : ""} of ${typeof base === "string" ? base : "buttercream"}`
    : undefined;
}
