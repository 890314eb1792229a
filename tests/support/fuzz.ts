/**
 * Conversations that nobody would type, the same for the same seed: sentences by a small grammar over the word tables,
 * phrases of the calculators bent in many ways, and bytes. What is held against each answer is in `unsound`.
 */
import { smallNumbers } from "../../data/words/numbers.ts";
import { units } from "../../data/words/units.ts";
import { understanding } from "../../src/intents/understanding.ts";
import type { Answer } from "../../src/tools/contract/index.ts";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "./ask.ts";
import { type Chance, chance } from "./chance.ts";

const trade = [...understanding(tools).reader.lexicon.words()];
const unitWords = units.flatMap(({ words }) => words);
const phrases = tools.flatMap((tool) => [...tool.examples, ...tool.elsewhere].map(({ say }) => say));
const joints =
  "and , then plus of for to in at with without into instead per each between minus what how much many is are when ? . ! ( ) - / % : $ € half double why".split(
    " ",
  );

/** A line for each call. @param corpus more sentences to bend, beside the calculators' own phrases */
export function lines(random: Chance, corpus: readonly string[] = []): () => string {
  const pool = [...phrases, ...corpus];
  const upTo = (count: number) => Math.floor(random() * count);
  const one = <T>(list: readonly T[]): T => list[upTo(list.length)] as T;
  const several = (most: number, make: () => string) =>
    Array.from({ length: 1 + upTo(most) }, make).join(random() < 0.05 ? "" : " ");
  const number = () =>
    one([
      () => String(upTo(1000)),
      () => String(upTo(10)),
      () => (random() * 10 ** (upTo(12) - 4)).toFixed(upTo(5)),
      () => `${upTo(20)}/${upTo(20)}`,
      () => `${upTo(9)} ${1 + upTo(3)}/${upTo(5)}`,
      () => `-${upTo(500)}`,
      () => one(Object.keys(smallNumbers)),
      () =>
        one(["0", "1e9", "1e400", "9".repeat(upTo(320)), "1,000", "1.250,5", "½", "0.0000001", "100000000"]),
      () => `${upTo(24)}:${upTo(60)}`,
      () => `2026-${1 + upTo(14)}-${1 + upTo(32)}`,
    ])();
  const word = () =>
    one([
      () => one(trade),
      () => one(trade),
      () => `${number()} ${one(unitWords)}`,
      () => `${number()} ${one(trade)}`,
      () => `${number()}${one(unitWords)} ${one(trade)}`,
      () => one(joints),
      () => one(joints),
      number,
    ])();
  const bent = (say: string): string =>
    one([
      () => say,
      () => say.replace(/\d+(?:[.,]\d+)?/, number),
      () => say.replace(/\d+(?:[.,]\d+)?/g, number),
      () => shuffled(say.split(" ")).join(" "),
      () => say.slice(upTo(say.length)),
      () => say.slice(0, upTo(say.length)),
      () => `${say} ${one(joints)} ${one(pool)}`,
      () => say.split(" ").toSpliced(upTo(9), 1, word()).join(" "),
      () => say.split(" ").toSpliced(upTo(9), 0, word()).join(" "),
      () => {
        const at = upTo(say.length);
        return say.slice(0, at) + String.fromCharCode(32 + upTo(95)) + say.slice(at + upTo(2));
      },
      () => say.toUpperCase(),
    ])();
  function shuffled<T>(list: T[]): T[] {
    for (let at = list.length - 1; at > 0; at--) {
      const other = upTo(at + 1);
      [list[at], list[other]] = [list[other] as T, list[at] as T];
    }
    return list;
  }
  const bytes = () =>
    new TextDecoder().decode(Uint8Array.from({ length: upTo(60) }, () => upTo(256))).replace(/\0/g, " ");
  const letters = () => String.fromCodePoint(...Array.from({ length: 1 + upTo(40) }, () => upTo(0xd800)));
  return () => {
    const kind = random();
    if (kind < 0.4) return several(14, word);
    if (kind < 0.65) return bent(one(pool));
    if (kind < 0.9) return bent(bent(one(pool)));
    return kind < 0.95 ? bytes() : letters();
  };
}

const weights = new Set(["g", "kg", "mg", "oz", "lb"]);
const noNumber = /\bNaN\b|\bInfinity\b|\[object |\bundefined\b/;

function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/**
 * What no answer may hold, or undefined: a number that isn't finite, as a number or in words, and a weight below
 * nothing. @param said everything typed in the conversation so far, which answers may repeat
 */
export function unsound(answer: Answer, said: string): string | undefined {
  if (numbersIn(answer).some((each) => !Number.isFinite(each))) return "a number that isn't finite";
  const words = noNumber.exec(JSON.stringify(answer))?.[0];
  if (words && !said.includes(words)) return `says ${words}`;
  const below = (answer.figures ?? []).find(
    ({ value = 0, low = 0, high = 0, unit }) => weights.has(unit) && Math.min(value, low, high) < 0,
  );
  if (answer.status === "answered" && below) return `a weight below nothing: ${JSON.stringify(below)}`;
  return undefined;
}

export interface Fault {
  said: string[];
  why: string;
}

/** Turns of one conversation. */
const together = 10;

/**
 * Runs so many turns, in conversations of ten.
 * @param before called ahead of each turn with the conversation up to it, for whoever watches for a hang
 */
export async function fuzz(
  turns: number,
  seed: number,
  corpus: readonly string[] = [],
  before: (said: readonly string[]) => void = () => {},
): Promise<Fault[]> {
  const line = lines(chance(seed), corpus);
  const faults: Fault[] = [];
  for (let done = 0; done < turns; ) {
    const { ask } = baker();
    const said: string[] = [];
    for (let turn = 0; turn < together && done < turns; turn++, done++) {
      said.push(line());
      before(said);
      try {
        const answers = await ask(said.at(-1) ?? "");
        for (const answer of answers) {
          const why = unsound(answer, said.join("\n"));
          if (why) faults.push({ said: [...said], why: `${why}: ${answer.tool}: ${answer.headline}` });
        }
      } catch (error) {
        faults.push({
          said: [...said],
          why: error instanceof Error ? (error.stack ?? error.message) : String(error),
        });
      }
    }
  }
  return faults;
}
