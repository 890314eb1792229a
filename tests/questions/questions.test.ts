/**
 * Conversations in the words of bakers, each answer worked by hand from the rules in data/rules. A turn is right when
 * every expected answer is found in order; it is wrong when something was answered all the same, which is the costly
 * kind.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";
import { type Conversation, fault } from "../support/judge.ts";

const folder = join(import.meta.dirname, "learned");
const files = readdirSync(folder).filter((name) => name.endsWith(".jsonl"));

/** Of all turns of a file at least so many right, and at most so many wrong. */
const [leastRight, mostWrong] = [0.95, 0.025];

interface Verdict {
  id: string;
  say: string;
  why: string;
  wrong: boolean;
}

async function judged(conversation: Conversation): Promise<{ turns: number; faults: Verdict[] }> {
  const { ask } = baker(conversation.now ? { now: conversation.now } : {});
  const faults: Verdict[] = [];
  let turns = 0;
  for (const { say, expect: wanted } of conversation.turns) {
    const answers = await ask(say);
    if (!wanted) continue;
    turns += 1;
    const why = wanted.map((each, at) => fault(each, answers[at])).find(Boolean);
    if (why)
      faults.push({
        id: conversation.id,
        say,
        why,
        wrong: answers.some((each) => each.status === "answered"),
      });
  }
  return { turns, faults };
}

describe.each(files)("%s", (file) => {
  test(`at least ${leastRight * 100} % right, at most ${mostWrong * 100} % wrong`, async () => {
    const lines = readFileSync(join(folder, file), "utf8").split("\n").filter(Boolean);
    const results: Awaited<ReturnType<typeof judged>>[] = [];
    for (const line of lines) results.push(await judged(JSON.parse(line)));
    const turns = results.reduce((sum, each) => sum + each.turns, 0);
    const faults = results.flatMap((each) => each.faults);
    const told = faults.map(({ id, say, why }) => `${id}: ${say}\n    ${why}`).join("\n");
    expect(turns).toBeGreaterThan(100);
    expect((turns - faults.length) / turns, told).toBeGreaterThanOrEqual(leastRight);
    expect(faults.filter((each) => each.wrong).length / turns, told).toBeLessThanOrEqual(mostWrong);
  });
});
