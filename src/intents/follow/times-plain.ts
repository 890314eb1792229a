/** "double", "halved", "three times as much", "times 3": so many times what was worked out, put as every calculator takes it. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const numbers: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, five: 5 };
const verbs: Readonly<Record<string, number>> = {
  double: 2,
  doubled: 2,
  twice: 2,
  triple: 3,
  tripled: 3,
  treble: 3,
  quadruple: 4,
  quadrupled: 4,
  halve: 0.5,
  halved: 0.5,
  half: 0.5,
};
const lead =
  "(?:(?:and|now|then|so|please|pls|ok|what about|how about|what if its|lets|make it|make that|do it|all|just) )*";
const all =
  "(?: (?:both|them both|both of (?:them|those|these)|the both|it all|them all|all of (?:it|them)|everything|the lot|the two|for both))?";
const talk = "(?: (?:please|pls|then|now|instead|this time|for me|too))*[ .?!]*$";
let patterns: { alone: RegExp; asMuch: RegExp } | undefined;
const known = () => {
  patterns ??= {
    alone: new RegExp(`^${opening}${lead}(${Object.keys(verbs).join("|")})(${all})${talk}`),
    asMuch: new RegExp(
      `^${opening}${lead}(?:(?:(two|three|four|five|[2-5]) times|(?:times |x ?)(two|three|four|five|[2-5]))(?: as (?:much|many)| the amount)?|(two|three|four|five|[2-5])x)(${all})${talk}`,
    ),
  };
  return patterns;
};

interface Times {
  by: number;
  /** Said of more than one thing. */
  all: boolean;
  /** "double", "halved". */
  verb: boolean;
}

function timesSaid(text: string): Times | undefined {
  // hardly a turn is one of these few words
  if (text.length > 60) return undefined;
  const said = spaced(text);
  const verb = known().alone.exec(said);
  if (verb) return { by: verbs[verb[1] ?? ""] ?? 1, all: (verb[2] ?? "") !== "", verb: true };
  const [whole, before, behind, tight, both] = known().asMuch.exec(said) ?? [];
  const number = before ?? behind ?? tight;
  if (whole === undefined || number === undefined) return undefined;
  return { by: numbers[number] ?? Number(number), all: (both ?? "") !== "", verb: false };
}

const plainly = (by: number, tool: string): string =>
  tool === "convert"
    ? by === 0.5
      ? "half of that"
      : `${by} times that`
    : by === 0.5
      ? "half as much"
      : `make it ${["", "", "two", "three", "four", "five"][by]} times`;

const sized: ReadonlySet<string> = new Set(["dose", "ganache", "shells", "fill", "buttercream"]);

/** Behind one answer: where the words by themselves would be heard as a recipe's, or as a number of macarons. */
export function timesAlone({ text }: Reading, { last, turn }: State): string | undefined {
  const said = last && (sized.has(last.tool) || last.tool === "convert") ? timesSaid(text) : undefined;
  if (!last || !said || (turn?.all?.length ?? 0) > 1) return undefined;
  const isOwn = said.verb ? ["ganache", "convert"].includes(last.tool) : last.tool !== "convert";
  return isOwn ? plainly(said.by, last.tool) : undefined;
}

/** Behind several answers of one turn: each that can be of so many times as much, and how it is asked. */
export function timesOfAll(
  { text }: Reading,
  { turn }: State,
): { topics: readonly Topic[]; restOf(topic: Topic): string } | undefined {
  const every = turn?.all ?? [];
  const said = every.length > 1 ? timesSaid(text) : undefined;
  const topics = every.filter(({ tool }) => sized.has(tool) || tool === "convert" || tool === "scale");
  return said && topics.length > 0 ? { topics, restOf: ({ tool }) => plainly(said.by, tool) } : undefined;
}
