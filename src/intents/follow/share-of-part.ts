/**
 * "and if i only use half of the butter, what smbc then", behind the cocoa for a buttercream that was made of so much of it:
 * that mix again, from so much less, and no smaller bowl to flavor.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { about, type State, type Topic } from "./state.ts";

/** Which input of a mix holds an ingredient. */
const slots: Readonly<Record<string, string>> = {
  butter: "butter_g",
  whites: "whites_g",
  "granulated sugar": "sugar_g",
  sugar: "sugar_g",
  cream: "cream_g",
};
const slotOf = (ingredient: string | undefined, chocolate: string | undefined): string | undefined =>
  chocolate
    ? "chocolate_g"
    : (slots[ingredient ?? ""] ?? (/chocolate$/.test(ingredient ?? "") ? "chocolate_g" : undefined));

/** What asks for the mix. */
const asks = /\b(?:what|whats|how much|how many|which)\b/;
const mixes: ReadonlySet<string> = new Set(["buttercream", "ganache"]);
const ofThe = /^ (?:of )?(?:the |that |my |this )?(?:\w+ )?$/;

/** The sentence put as the mix is asked, and the question that it was in; undefined where it isn't said so. Pure. */
export function shareOfPart(
  { text, amounts, things }: Reading,
  { last, past = [] }: State,
): { text: string; topic: Topic } | undefined {
  if (!last || mixes.has(last.tool) || !asks.test(text)) return undefined;
  const [share, ...others] = amounts;
  const isShare = share?.dim === "number" && (share.fraction || share.unit === "times") && share.value < 1;
  if (!share || !isShare || others.length > 0 || things.some(({ dose, taste }) => dose ?? taste))
    return undefined;
  const part = things.find(({ at }) => at[0] >= share.at[1] && ofThe.test(text.slice(share.at[1], at[0])));
  const slot = part && !part.base ? slotOf(part.ingredient, part.chocolate) : undefined;
  const base = things.find((each) => each.base)?.base;
  if (!part || !slot || (base !== undefined && !mixes.has(base))) return undefined;
  const topic = past.findLast(
    ({ tool, inputs }) =>
      mixes.has(tool) &&
      typeof inputs[slot] === "number" &&
      (base === undefined || (about[base]?.includes(tool) ?? false)),
  );
  const grams = Number(topic?.inputs[slot]) * share.value;
  if (!topic || !(grams > 0)) return undefined;
  const { chocolate, use } = topic.inputs;
  const mix =
    topic.tool === "ganache" ? `${chocolate ?? ""} ganache${use ? ` for ${use}` : ""}`.trim() : "buttercream";
  return {
    text: `${mix} from ${grams} g ${topic.tool === "ganache" && slot === "chocolate_g" ? "chocolate" : part.text}`,
    topic,
  };
}
