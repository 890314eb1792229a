/** "plus 30 butter", "oh and the butter, 30 g", "forgot 20 glucose": nothing but one more part of the bowl that was spoken of. */
import type { Thing } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import { type BaseWay, summed } from "./base-turn.ts";

const talk: ReadonlySet<string> = new Set(
  "and plus with also oh ah hm ok so sorry wait actually now then i ive im ill we weve forgot forgotten missed didnt say mention count the my some about another more extra further bit of add added adding stir stirred stirring beat beating melt melting mix mixed tip tipped in into it that there theres is was are goes went going gone put putting to too as well on top please ganache mix bowl g grams".split(
    " ",
  ),
);
/** What joins; "and" and "with" alone could be of another bowl. */
const joins =
  /(?:^| )(?:plus|also|another|more|extra|further|forgot\w*|missed|add\w*|stir\w*|beat\w*|melt\w*|mix\w*|tip\w*|theres|goes|went|gone|too|as well|on top|in)(?: |$)/;
/** On top of what there is of it already, and not in its place. */
const onTop = /(?:^| )(?:plus|another|more|extra|further|add|adding|added|on top)(?: |$)/;

/** A bowl takes up to half its weight of one more part; more is another bowl. From memory. */
const mostAdded = 1 / 2;

/** Of a mix, and no flavor of it. */
const isPart = ({ ingredient, base, dose, taste }: Thing): boolean =>
  ingredient !== undefined && ingredient !== "salt" && !base && !dose && !taste;
/** "add 2 eggs": pieces, and no grams. */
const pieces = /whites|yolk|egg/;
/** "and in 30 g butter": that is another bowl. */
const into = /^(?:(?:and|also|so|ok|now|then) )*(?:in|into|to) /;

export const partMore: BaseWay = ({ reading, earlier }) => {
  const [amount, ...others] = reading.amounts;
  const [thing, ...more] = reading.things;
  if (earlier?.base_g === undefined || !amount || !thing || others.length + more.length > 0) return undefined;
  const isWeight = amount.dim === "weight" || (amount.dim === "number" && amount.unit === "");
  if (amount.dim === "number" && pieces.test(thing.ingredient ?? "")) return undefined;
  if (!isWeight || amount.fraction || !isPart(thing) || into.test(reading.mask)) return undefined;
  const words = reading.mask.split(" ").filter((each) => /^[a-z]/.test(each) && !each.includes("<"));
  if (!words.every((each) => talk.has(each))) return undefined;
  const grams = gramsOf(amount);
  if (grams > earlier.base_g * mostAdded) return undefined;
  const flavor: { flavor_g?: number; want?: "check" } =
    earlier.flavor_g === undefined ? {} : { flavor_g: earlier.flavor_g, want: "check" };
  const name = thing.ingredient ?? thing.text;
  const had = earlier.parts?.find((each) => each.name === name);
  if (had && !onTop.test(reading.mask)) return undefined;
  if (!earlier.parts)
    return joins.test(reading.mask) ? { base_g: earlier.base_g + grams, ...flavor } : undefined;
  return {
    ...summed(
      had
        ? earlier.parts.map((each) => (each === had ? { ...each, grams: each.grams + grams } : each))
        : [...earlier.parts, { name, grams }],
    ),
    ...flavor,
  };
};
