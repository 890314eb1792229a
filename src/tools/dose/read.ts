/** Reads a dose question: which weights are the base, which is the flavor, and what is wanted. */
import type { Memory, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { readWhichWeight } from "./bare-weight.ts";
import { readPairs } from "./bowl-pairs.ts";
import { doseTurn } from "./dose-turn.ts";
import { type Draft, doseLeanedOn } from "./draft.ts";
import { eachNamed } from "./each-named.ts";
import { saidOfFood } from "./food-said.ts";
import { asOver, isOver } from "./more-said.ts";
import { noneNamed } from "./none-named.ts";
import { readNotThat } from "./not-that.ts";
import { inTurn } from "./of-turn.ts";
import { asksOtherBowl } from "./other-bowl.ts";
import { forParts } from "./parts-said.ts";
import { endOfBase } from "./percent-said.ts";
import { enoughFor, putIntoBowl } from "./put-in.ts";
import { forBowls } from "./several-bowls.ts";
import { isFarOver, readShareOfBowl } from "./share-of-bowl.ts";
import { readSharesOf } from "./shares-said.ts";
import { inGrams } from "./spoon-asked.ts";
import { tableAsked } from "./table-asked.ts";
import { readTimes } from "./times-said.ts";
import { readTwicePart } from "./twice-part.ts";

/** One draft a flavor that is asked for; most questions name one or none. */
export function readDose(reading: Reading, memory: Memory): Draft[] {
  const drafts = forBowls(forParts(readFlavors(reading, memory), reading, memory), reading, memory);
  // what the sentence says as a whole, whatever the flavor
  const over = isOver(reading);
  const food = saidOfFood(reading);
  const asksRight = shouldHave(reading.text);
  const otherBowl = asksOtherBowl(reading);
  const anew = { want: "flavor", fresh: true } as const;
  return drafts.map((draft) => ({
    ...(over && draft.flavor_g !== undefined ? asOver(draft) : draft),
    ...(draft.flavor_g === undefined &&
    (asksRight || (draft.base_g !== undefined && (freshBowl(reading.text) || otherBowl)))
      ? anew
      : {}),
    ...food,
    ...unitOfBowl(reading, draft),
    ...endOfBase(reading, memory, draft),
    ...farOver(draft, memory),
  }));
}

/** "what should i have put in the 350 to begin with": the right dose for that bowl, whatever is in it. */
const shouldHave = inTurn(
  /\b(?:what|how much) (?:should|ought) (?:i|we) (?:to )?(?:have )?(?:put|used?|added?|gone with|taken)\b.*\b(?:to (?:begin|start) with|first|originally|instead|at first|in the first place)\b|\b(?:what|how much) (?:should|ought) (?:i|we) (?:to )?have (?:put|used|added)\b/,
);

/** "and for a fresh bowl of 160 g": nothing is in that one. */
const freshBowl = inTurn(
  /\b(?:fresh|new|clean|next) (?:bowl|batch|lot|one|buttercream|ganache|filling|mix)\b/,
);

/** The bowl was weighed in ounces or pounds. */
function unitOfBowl({ amounts }: Reading, { base_g }: Draft): Draft {
  const said = amounts.find(
    ({ dim, unit, value }) =>
      dim === "weight" && (unit === "oz" || unit === "lb") && inBase(value, unit) === base_g,
  );
  return said ? { base_unit: said.unit as "oz" } : {};
}

/** "60 %", behind gel for a bowl: no dose. */
function farOver(draft: Draft, memory: Memory): Draft {
  const { percent, of_finished } = draft;
  return percent !== undefined && !of_finished && isFarOver({ ...doseLeanedOn(memory), ...draft }, percent)
    ? { far_over: true }
    : {};
}

type WholeWay = Way<{ reading: Reading; memory: Memory }, Draft | Draft[]>;

/** Sentences that say by themselves all that there is to read: the bowl, the flavor and what is wanted. */
const wholeWays: readonly WholeWay[] = [
  ({ reading }) => tableAsked(reading),
  ({ reading, memory }) => readNotThat(reading, memory),
  ({ reading, memory }) => enoughFor(reading, memory),
  ({ reading, memory }) => inGrams(reading, memory),
  ({ reading }) => readPairs(reading),
  ({ reading }) => readSharesOf(reading),
  ({ reading, memory }) => readWhichWeight(reading, memory),
  ({ reading, memory }) => readTimes(reading, memory),
  ({ reading, memory }) => readShareOfBowl(reading, memory),
  ({ reading, memory }) => readTwicePart(reading, memory),
  ({ reading, memory }) => putIntoBowl(reading, memory),
];

function readFlavors(reading: Reading, memory: Memory): Draft[] {
  const whole = firstOf(wholeWays, { reading, memory });
  if (whole) return [whole].flat();
  const turn = doseTurn(reading, memory);
  return turn.targets.length === 0 ? [noneNamed(turn)] : eachNamed(turn);
}
