/** How the same turns fare with slips of the keyboard in them, dictated, or with talk around them. */
import { baker } from "../support/ask.ts";
import { chance } from "../support/chance.ts";
import { type Conversation, fault } from "../support/judge.ts";
import { saidOtherwise } from "../support/said-otherwise.ts";
import { slipped, withSlip, wordsToSlip } from "../support/slips.ts";
import { type Verdict, verdictOf } from "./verdict.ts";

/** Every sentence as it is, with slips in it, and said otherwise: always the same ones. */
const typings: Readonly<Record<string, (say: string, next: () => number) => string>> = {
  "as typed": (say) => say,
  "a slip in one word": (say, next) => {
    const words = wordsToSlip(say);
    const word = words[Math.floor(next() * words.length)];
    return word ? withSlip(say, word, slipped(word.word.toLowerCase(), next)) : say;
  },
  "slips in three of ten words": (say, next) =>
    wordsToSlip(say).reduceRight(
      (text, word) => (next() < 0.3 ? withSlip(text, word, slipped(word.word.toLowerCase(), next)) : text),
      say,
    ),
  ...saidOtherwise,
};

/** What is to be found again in its own words can't be slipped in. */
const keepsWords = (each: Conversation["turns"][number]) => each.expect?.some(({ has }) => has) ?? true;

/** How each way of typing fares: one turn of a conversation at a time is slipped in, those before it stand. */
export async function typed(conversations: readonly Conversation[]) {
  const rows: { typing: string; counts: Record<Verdict, number> }[] = [];
  for (const [typing, change] of Object.entries(typings)) {
    const next = chance(1);
    const counts = { right: 0, wrong: 0, asked: 0, declined: 0 };
    for (const { now, turns } of conversations)
      for (const [at, turn] of turns.entries()) {
        if (keepsWords(turn)) continue;
        const { ask } = baker(now ? { now } : {});
        for (const { say } of turns.slice(0, at)) await ask(say);
        const answers = await ask(change(turn.say, next));
        const wrong = turn.expect?.some((each, place) => fault(each, answers[place]) !== undefined) ?? false;
        counts[verdictOf(wrong, answers)] += 1;
      }
    rows.push({ typing, counts });
  }
  return rows;
}
