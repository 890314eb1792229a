/**
 * "salt in the other 140 g one", "powder color in one of the 130s": one of the bowls that were weighed or shared out,
 * called by what it weighs. A dose into that, of which nothing is in it yet.
 */
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { flavorsSaid, plainDose, talkBeside, wordsWithout } from "./part-gets.ts";
import type { State } from "./state.ts";

const called =
  /\b(?:in|into|for|to|on)(?: just| only)? (one of|each of|either of|another of|any of|all(?: of)?|the whole|the full)?(?: ?(the|that|those|my|a|another))?(?: (other|second|first|third|last|remaining|next|bigger|smaller))? ?(\d+(?:\.\d+)?) ?(?:g|gr|grams?|gramm)?('?s)?(?: (one|ones|bowls?|parts?|half|halves|lots?|batch|batches|tubs?|pots?|jars?|thirds?|quarters?))?(?= |[?.!,]|$)/;

/** What was weighed out by them is a bowl of that mix. */
const mixed: ReadonlySet<string> = new Set(["ganache", "buttercream"]);

interface Bowl {
  grams: number;
  thing: string;
}

/** Every weight of a mix that was spoken of, the latest last. */
function bowlsOf({ past = [], table }: State): Bowl[] {
  const said = past.flatMap(({ tool, inputs, table: own }): Bowl[] => {
    const { base_g, base, thing } = inputs;
    const mix = own?.mass;
    if (mixed.has(tool)) return mix?.thing === tool ? [{ grams: mix.grams, thing: tool }] : [];
    if (tool === "dose" && typeof base_g === "number" && typeof base === "string")
      return [{ grams: base_g, thing: base }];
    const of = own?.part?.thing ?? thing ?? own?.mass?.thing;
    if (tool !== "split" || typeof of !== "string") return [];
    return (own?.parts ?? []).map(({ grams }) => ({ grams, thing: of }));
  });
  const thing = table.part?.thing;
  return [...said, ...(thing ? (table.parts ?? []).map(({ grams }) => ({ grams, thing })) : [])];
}

/** Weights as they are said: to the gram. */
const isAbout = (one: number, other: number): boolean => Math.abs(one - other) < 0.5 + 1e-9;

/** The dose asked plainly; undefined where no such bowl was spoken of. Pure. */
export function inWeighedOne(reading: Reading, state: State): string | undefined {
  const tool = state.last?.tool ?? "";
  if (!/^(?:dose|split|ganache|buttercream|timer|note|convert|keep|method)$/.test(tool)) return undefined;
  const [found = "", of, , which, number, plural, noun] = called.exec(reading.text) ?? [];
  // "for 140 g" alone is another bowl
  if (!number || !(of ?? which ?? plural ?? noun ?? (mixed.has(tool) ? number : undefined))) return undefined;
  const start = reading.text.indexOf(found);
  const isOwn = ({ at }: Amount): boolean => at[0] >= start && at[1] <= start + found.length;
  const bowl = bowlsOf(state).findLast(({ grams }) => isAbout(grams, Number(number)));
  const said = flavorsSaid({ ...reading, amounts: reading.amounts.filter((each) => !isOwn(each)) });
  if (
    !bowl ||
    !said ||
    reading.whens.length > 0 ||
    reading.things.some(({ base }) => base !== undefined && base !== bowl.thing)
  )
    return undefined;
  const { flavors, amount } = said;
  const rest = `${reading.text.slice(0, start)}${" ".repeat(found.length)}${reading.text.slice(start + found.length)}`;
  const words = wordsWithout(rest, [
    ...flavors,
    ...(amount ? [amount] : []),
    ...reading.things.filter(
      ({ base, color }) =>
        base !== undefined || (color !== undefined && flavors.some((each) => each.dose?.endsWith("color"))),
    ),
  ]);
  if (!words.every((word) => talkBeside.has(word))) return undefined;
  return plainDose(flavors, amount, bowl.grams, bowl.thing);
}
