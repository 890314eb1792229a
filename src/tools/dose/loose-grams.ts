/** Loose grams: of the flavor or of the mix, by the words around them, by what was found and by the bowl before. */
import { putWords } from "../../../data/words/putting.ts";
import { says } from "../lib/find.ts";
import { mostOf, readBareWeight } from "./bare-weight.ts";
import type { Draft } from "./draft.ts";
import type { LooseTurn, LooseWay } from "./loose-turn.ts";

/** "and 11 g in 200 g": flavor and base of another bowl. */
const oneInOther: LooseWay = ({ reading, unbound, bare, before, inBowl }) => {
  const [into, second] = unbound;
  // "and 9 g in 250"
  const number = bare[0]?.value ?? 0;
  const bowl_g = second?.grams ?? (number >= leastInAll_g ? number : undefined);
  const said =
    /<weight> (?:(?:had|has|have|went|gone|goes|go|put|were|was) )*(?:in|into|to|for) (?:(?:the|my|that|those|these|all|whole|full) )*\S*<(?:weight|number)>/;
  return before && into && bowl_g !== undefined && says(reading, said)
    ? { flavor_g: into.grams, base_g: bowl_g, want: inBowl ? "check" : before.want }
    : undefined;
};

/** "what would it be for 340 g", "how much would that come to in 340 g": of the same flavor, another bowl. */
const forOther: LooseWay = ({ reading, memory, loose, found, before }) =>
  before?.base_g !== undefined &&
  found.base_g === undefined &&
  loose !== undefined &&
  loose >= leastInAll_g &&
  says(reading, asksForOther)
    ? { ...(memory.follows ? {} : sameFlavor(before)), base_g: loose, want: "flavor", fresh: true }
    : undefined;
/** What goes in, and how strongly, where the turn doesn't take it along by itself. */
const sameFlavor = (before: Draft): Draft =>
  Object.fromEntries(
    (
      [
        "dose",
        "taste",
        "name",
        "base",
        "percent",
        "percent_high",
        "of_finished",
        "end",
        "whole_range",
      ] as const
    )
      .filter((key) => before[key] !== undefined)
      .map((key) => [key, before[key]]),
  );
const asksForOther =
  /(?:^| )(?:what|whats|how (?:much|many)(?: (?:g|grams|\S*<unit=g>))?) (?:(?:would|will|should|might|could|ought|does|do|is) )*(?:it|that|this|the (?:amount|dose|figure|range|number)) (?:(?:then|now|have|to|need|be|been|come|comes|work|works|out|as|go|up|at|change|become|take|want|look|like) )*(?:for|in|with|if i (?:had|have|made|make|were making|was making)|if (?:it|there) (?:was|were|is)) (?:(?:about|roughly|only|just|a|an|more|like|nearer|closer|to|say|the|around|some) )*\S*<(?:weight|number)>/;

/** "what percent is 9 g in 260", "is 9 g in 260 ok". */
const shareOfWhole: LooseWay = ({ reading, unbound, bare }) => {
  const [into, bowl] = unbound;
  const whole_g = bowl?.grams ?? bare[0]?.value;
  const said =
    /what (?:\S*<unit=%>|percentage|share) .*<weight> (?:\S+ )?(?:in|of|into) \S*<(?:weight|number)>|^(?:(?:so|and|is|are|would|will|was) )+\S*<weight> (?:in|into|to|of) \S*<(?:weight|number)>.* (?:ok|okay|enough|fine|alright|right|too)(?: |$)/;
  return into && whole_g && says(reading, said)
    ? { flavor_g: into.grams, base_g: whole_g, want: "check" }
    : undefined;
};

/** "and if i keep 3 g aside", of a flavor that was weighed for the bowl to be found. */
const keptAside: LooseWay = ({ reading, loose, before }) => {
  if (loose === undefined || before?.flavor_g === undefined || before.base_g !== undefined) return undefined;
  const aside =
    /(?:keep|keeping|put|set|hold|save|leave) (?:back )?\S*<(?:weight|number)> (?:of it )?(?:aside|back|for (?:later|next time))/;
  return loose < before.flavor_g && says(reading, aside) ? { flavor_g: before.flavor_g - loose } : undefined;
};

/** "if i use half the 8 g". */
const shareOfFlavor: LooseWay = ({ reading, loose, before }) => {
  const share = reading.amounts.find((each) => each.fraction && each.dim === "number" && each.value < 1);
  const isOfIt = share && /^ (?:of )?the /.test(reading.text.slice(share.at[1]));
  return isOfIt && loose !== undefined && before?.flavor_g === loose
    ? { flavor_g: loose * share.value }
    : undefined;
};

/** Less than this in all fills no more than eight macarons (7.2 g each of 38 mm, as bare-weight.ts has it): no bowl. */
const leastInAll_g = 60;

/** "so 370 g total": the bowl. */
const inAll: LooseWay = ({ reading, unbound, found }) => {
  const said = unbound.find((each) =>
    /^ (?:in )?(?:total|all|altogether)\b/.test(reading.text.slice(each.amount.at[1])),
  );
  return said && said.grams >= leastInAll_g && found.flavor_g === undefined
    ? { base_g: said.grams }
    : undefined;
};

/** Grams that the words around them place, whatever else is known. */
export const gramsWays: readonly LooseWay[] = [
  forOther,
  oneInOther,
  shareOfWhole,
  keptAside,
  shareOfFlavor,
  inAll,
];

const asksFlavor =
  /how (?:much|many)(?: g| grams| \S*<unit=g>)?(?: of)?(?: the| my)? \S*<[^>]*(?:dose|taste)=/;

/** Grams beside a bowl that the sentence weighs or points at: what is in it, where they aren't the bowl once more. */
function besideBowl({ reading, found, before }: LooseTurn, loose: number, base_g: number): Draft {
  // "im holding back 100 g": taken off the bowl before, or put on top of it
  const step = Math.abs(base_g - (before?.base_g ?? base_g));
  if (step > 0 && Math.abs(step - loose) < 1e-9) return {};
  if (says(reading, /(?:stays?|kept|keep|left|leave|leaving)\b.* \S*plain/)) return {};
  // "matcha powder for that 500 g": the bowl on the table, weighed once more
  if (Math.abs(base_g - loose) < 1e-9) return {};
  if (found.flavor_g === undefined) {
    // "i put in 5 g, can i add 3 more"
    const extra = reading.amounts.find(
      (each) =>
        ["weight", "number"].includes(each.dim) && /^ (?:g )?more\b/.test(reading.text.slice(each.at[1])),
    );
    if (extra && extra.value !== loose) return { flavor_g: loose + extra.value, want: "check" };
  }
  // "230 g buttercream and 150 g, how much flavor": so much is no flavor that was put in
  if (loose > base_g / mostOfBowl && says(reading, asksFlavor)) return {};
  return found.flavor_g === undefined && found.percent === undefined ? { flavor_g: loose } : {};
}

/** More than an eighth of a bowl is no flavor that was put in: all that the table has but purée and nut paste ends below. */
const mostOfBowl = 8;

/** "in 200 g too much?" */
const leadsInto =
  /^(?:(?:and|so|ok|if i put it|but|is it|it went|went|now) )*(?:in|into) (?:just |only |about )?\S*<(?:weight|number)>/;

/** From a fifth of the bowl before it is another bowl, where the mix is named; under a twelfth it is none. From memory. */
const [anotherBowl, noBowl] = [5, 12];

/** Grams behind a dose: of the flavor in that bowl, or another bowl. */
function behindDose({ reading, found, inBowl }: LooseTurn, loose: number, before: Draft): Draft {
  const { base_g, flavor_g } = before;
  const asFlavor: Draft = { flavor_g: loose, want: "check" };
  if (base_g === undefined) {
    if (flavor_g === undefined) return { base_g: loose };
    // "going with the ganache, its 300 g, so how much lavender": the bowl, and no other weight of the flavor
    if (loose >= leastInAll_g && says(reading, asksFlavor))
      return { base_g: loose, want: "flavor", fresh: true };
    // behind how much a flavor is enough for: the bowl it goes into, else another weight of the flavor
    return says(reading, leadsInto)
      ? { base_g: loose, ...(inBowl ? { want: "check" } : {}) }
      : { flavor_g: loose };
  }
  // "just the buttercream then, but 12 ounces": a bowl, and no flavor
  if (found.base !== undefined && !inBowl && loose > base_g / anotherBowl) return { base_g: loose };
  // "there's only 280 g, would that change it", of 300: so much is never stirred in
  if (
    inBowl &&
    loose >= base_g / 3 &&
    loose >= leastInAll_g &&
    flavor_g === undefined &&
    !says(reading, putIn)
  )
    return { base_g: loose };
  const bare = readBareWeight(reading, loose, before, mostOf(before));
  if (bare) return bare;
  if (flavor_g && base_g && Math.abs(Math.log(loose / flavor_g)) < Math.abs(Math.log(loose / base_g)))
    return { flavor_g: loose };
  // "call it 3 grams", of 300: no bowl shrinks so much, and no flavor is more
  const isFlavor = flavor_g === undefined && loose > 0 && loose < base_g / noBowl;
  return isFlavor || inBowl ? asFlavor : { base_g: loose };
}

/** It went in, whether it was meant to or not. */
const putIn = new RegExp(
  `(?:^| )(?:${putWords}|went|fell|landed|slipped|in there|in it|inside|already|got in|mixed|with|too (?:much|little|strong|weak)|overdo\\w*|overdid)(?: |$)`,
);

/** Not "how much rum for my ganache, weighing 300 g". */
const asksBack =
  /how (?:much|far)(?: (?!\S*<[^>]*(?:dose|taste)=)\S+){0,3} \S*<(?:[^>]*,)?base|how far|goes? how far|will (?:it|that|this) do|stretch/;

/** Grams that no words place: by what the sentence has already, else by the dose before, else by what is asked. */
export function ofGrams(turn: LooseTurn, loose: number): Draft {
  const { reading, found, before } = turn;
  if (found.base_g !== undefined) return besideBowl(turn, loose, found.base_g);
  if (found.flavor_g !== undefined) return { base_g: loose };
  if (before) return behindDose(turn, loose, before);
  return says(reading, asksBack) ? { flavor_g: loose } : { base_g: loose };
}
