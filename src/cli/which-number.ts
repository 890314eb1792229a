/** A word that could be one number or another was asked about: the answer is put in its place, and the line read again. */
import { smallNumbers, tens } from "../../data/words/numbers.ts";
import type { Answer, Mended, Reading } from "../tools/contract/index.ts";
import { whichNumber } from "./outcome.ts";

export interface Doubt {
  line: string;
  said: string;
  either: readonly string[];
}

const numberOf = (word: string): number | undefined =>
  Object.hasOwn(smallNumbers, word) ? smallNumbers[word] : Object.hasOwn(tens, word) ? tens[word] : undefined;

/** The doubt that this line left, where the answer asks about it. */
export function doubtOf(line: string, { mended }: Reading, answers: readonly Answer[]): Doubt | undefined {
  const doubted: Mended | undefined = mended.find(({ either }) => either);
  const { question } = doubted ? whichNumber(doubted) : {};
  const isAsked = question !== undefined && answers.some((each) => each.question === question);
  return doubted?.either && isAsked ? { line, said: doubted.said, either: doubted.either } : undefined;
}

const agrees =
  /^\W*(?:yes|yep|yeah|yup|ja|si|oui|right|correct|exactly|it is|thats it|that's it)\b[\w ,]{0,20}[.!]*$/i;

const withNumber = (line: string, said: string, meant: string) =>
  line.replace(new RegExp(`\\b${said}\\b`, "i"), meant);

/** "forty", "i meant forty five", "45", "yes" to one alone: the line with that number; undefined where none of them is said. */
export function settled({ line, said, either }: Doubt, reply: string): string | undefined {
  const [only, ...others] = either;
  if (only !== undefined && others.length === 0 && agrees.test(reply)) return withNumber(line, said, only);
  const words = reply.toLowerCase().match(/[a-z]+|\d+/g) ?? [];
  const fits = (word: string, each: string) => {
    const value = numberOf(each);
    const number = /^\d+$/.test(word) ? Number(word) : undefined;
    return (
      word === each || (number !== undefined && [number, 10 * Math.floor(number / 10)].includes(value ?? -1))
    );
  };
  const meant = either.filter((each) => words.some((word) => fits(word, each)));
  // a sentence of its own is no answer
  if (meant.length !== 1 || words.length > 6) return undefined;
  return withNumber(line, said, meant[0] ?? said);
}
