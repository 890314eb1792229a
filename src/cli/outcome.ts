/** What a step comes to: checked, computed, held against what was asked, and given up where it answers another question. */
import { type Asked, askedFor, holds } from "../intents/chosen/asked-for.ts";
import { keepsWords } from "../intents/chosen/left-over.ts";
import { type Names, next } from "../intents/converse.ts";
import { freshState } from "../intents/follow/state.ts";
import type { Step } from "../intents/follow/step.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { Mended, Outcome, Reading, World } from "../tools/contract/index.ts";
import { checkInputs } from "../tools/lib/check.ts";
import { asksOunces, inBenchUnit, inOunces } from "../tools/lib/ounces.ts";
import { compared } from "./compared.ts";

/** What a step came to in a world: it is looked at before it is carried out, more than once. */
const known = new WeakMap<Step, { world: World; outcome: Outcome }>();

/**
 * Pure: a step's outcome in this world.
 * @returns asking or declined where what was said isn't all in it, or it holds no figure of what was asked
 */
export function computeWith(step: Step, world: World): Outcome {
  const before = known.get(step);
  if (before?.world === world) return before.outcome;
  const outcome = computed(step, world);
  known.set(step, { world, outcome });
  return outcome;
}

function computed(step: Step, world: World): Outcome {
  const checked = checkInputs(step.tool, step.inputs);
  if (!checked.ok) return checked.outcome;
  const outcome = inBenchUnit(step.tool.name, step.tool.compute(checked.inputs, world), world);
  if (outcome.status === "answered" && step.left) return unsure(step.left);
  const doubted = keepsWords.has(step.tool.name)
    ? undefined
    : step.reading.mended.find(({ either }) => either);
  if (outcome.status === "answered" && doubted) return whichNumber(doubted);
  const asked = outcome.status === "answered" ? askedFor(step.reading) : undefined;
  if (!holds(step.tool.name, asked, outcome.figures)) return elsewhere(step.tool.name, asked);
  const told = step.against ? compared(outcome, step.against) : outcome;
  return withTaken(
    step.unit === "oz" || asksOunces(step.tool.name, step.reading, told, world) ? inOunces(told) : told,
    step.reading,
  );
}

/** What an amount was worked out from stands first of what was taken for the answer, and how a slip that counts was read. */
function withTaken(outcome: Outcome, { amounts, mended }: Reading): Outcome {
  const taken = [
    ...mended.flatMap(({ said, read, counts }) => (counts ? `"${said}" read as "${read}"` : [])),
    ...amounts.flatMap((amount) => amount.taken ?? []),
  ];
  return outcome.status === "answered" && taken.length > 0
    ? { ...outcome, assumed: [...taken, ...(outcome.assumed ?? [])] }
    : outcome;
}

/** A weight that was said and isn't in the sum: no number is given until it is clear what it is for. */
function unsure(left: readonly string[]): Outcome {
  const [is, its, it] = left.length > 1 ? ["are", "their", "them"] : ["is", "its", "it"];
  const question = `What ${is} the ${left.join(" and the ")} for? I haven't found ${its} place yet: ask once more with what ${it === "it" ? "it is" : "each is"} of, or without ${it}.`;
  return { status: "asking", headline: question, question };
}

/** "fofty five": it may be one number or another, and a guess would be a wrong figure. */
export function whichNumber({ said, either = [] }: Mended): Outcome {
  const question = `Is "${said}" ${either.join(" or ")}? I don't want to guess a number.`;
  return { status: "asking", headline: question, question };
}

/** An answer without a figure of what was asked for is another question's. */
function elsewhere(tool: string, asked: Asked | undefined): Outcome {
  const { said = "" } = asked ?? {};
  if (tool === "dose" && asked?.isIngredient)
    return {
      status: "declined",
      headline: `I have no rule for how much ${said} goes into that, so I give no figure. I dose flavors, extracts, pastes, powders, salt and color.`,
    };
  const question = `You asked for "${said}", and what I would work out holds no figure of it. What is it for, and how much of that is there?`;
  return { status: "asking", headline: question, question };
}

/**
 * "cream for 200 g dark chocolate", behind a dose: where the calculator of the turn before has no answer to it, and
 * another would have one had it been the first thing said, then it is that one's.
 */
export function otherwise(
  found: readonly Step[],
  reading: Reading,
  world: World,
  understanding: Understanding,
  names: Names,
): Step[] | undefined {
  const [step, ...more] = found;
  if (!step || more.length > 0 || !world.last) return undefined;
  if (computeWith(step, world).status !== "declined") return undefined;
  const alone = next(reading, freshState(), names, understanding);
  if (!Array.isArray(alone) || alone[0]?.tool === step.tool) return undefined;
  return alone.every((each) => computeWith(each, world).status === "answered") ? alone : undefined;
}

/** Runs a step; where it asks for what the turn before knew, runs it again with that. */
export async function settle(
  step: Step,
  run: (step: Step) => Promise<Outcome>,
): Promise<{ outcome: Outcome; inputs: Record<string, unknown> }> {
  const outcome = await run(step);
  if (outcome.status !== "asking" || !step.fallback) return { outcome, inputs: step.inputs };
  const again = await run({ ...step, inputs: step.fallback });
  return again.status !== "asking"
    ? { outcome: again, inputs: step.fallback }
    : { outcome, inputs: step.inputs };
}
