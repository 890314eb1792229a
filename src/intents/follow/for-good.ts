/**
 * "no, they are 4 cm, change it for good", "mine rest 45 min, keep that": behind a size of macarons or how long a step
 * takes, hers from now on, and not this once.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { type State, sizing } from "./state.ts";

/** Words that keep it. */
const keeping = [
  "for good",
  "for ever",
  "forever",
  "permanently",
  "permanent",
  "from now on",
  "from here on",
  "from today",
  "for next time",
  "in future",
  "in the future",
  "by default",
  "as default",
  "as the default",
];
/** They keep "that", where that is all they are said of. */
const verbs: ReadonlySet<string> = new Set("save keep remember store".split(" "));
const pronouns: ReadonlySet<string> = new Set("it that this them".split(" "));
/** What a turn has that only tells the size. */
const talk: ReadonlySet<string> = new Set(
  `no nope sorry actually oh wait and but so ok they theyre are is its it that this them mine my i we pipe make made bake
  them those always now please pls too also well change set put save keep remember store note for good ever forever
  permanently permanent from on here today next time in the future by default as across wide each all of macarons macs
  macaron shells shell size diameter to at be should meant really rather then instead our usual
  come comes out me s re`.split(/\s+/),
);

const keeps = (words: readonly string[]): boolean =>
  keeping.some((each) => ` ${words.join(" ")} `.includes(` ${each} `)) ||
  words.some((word, at) => verbs.has(word) && pronouns.has(words[at + 1] ?? ""));

/** A step's own words, and how its setting is called. */
const steps: Readonly<Record<string, { name: string; words: ReadonlySet<string> }>> = {
  rest: { name: "rest", words: new Set("rest resting rests dry drying".split(" ")) },
  bake: { name: "bake", words: new Set("bake baking bakes".split(" ")) },
  cool: { name: "cooling", words: new Set("cool cooling cools".split(" ")) },
};
const ofTime: ReadonlySet<string> = new Set(
  "need needs take takes time for only has have it's about".split(" "),
);

/** The size or the time as a setting is told; undefined where it isn't kept, or something else is said too. */
export function forGood({ text, amounts }: Reading, { last }: State): string | undefined {
  const [only, ...others] = amounts;
  if (!last || !only || only.high !== undefined || others.length > 0) return undefined;
  const rest = `${text.slice(0, only.at[0])} ${text.slice(only.at[1])}`.toLowerCase();
  const words = rest.split(/[^a-z0-9?]+/).filter(Boolean);
  if (!keeps(words)) return undefined;
  const isOfSize = sizing.has(last.tool) || last.tool === "bench";
  if (only.dim === "length" && isOfSize)
    return words.every((word) => talk.has(word)) ? `my macarons are ${only.text} from now on` : undefined;
  const step = last.tool === "method" ? steps[String(last.inputs.step)] : undefined;
  if (only.dim !== "time" || !step) return undefined;
  return words.every((word) => talk.has(word) || ofTime.has(word) || step.words.has(word))
    ? `my ${step.name} time is ${only.text} from now on`
    : undefined;
}
