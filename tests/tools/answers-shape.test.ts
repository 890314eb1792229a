/** Every answer to the hand-written questions is of the shape that is promised, whatever it says. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";
import { faults } from "../support/faults.ts";

interface Conversation {
  id: string;
  turns: { say: string }[];
}

const conversations = ["hand-one", "hand-two"].flatMap((name) =>
  readFileSync(`tests/questions/learned/${name}.jsonl`, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line): Conversation => JSON.parse(line)),
);

const names = new Set(tools.map((each) => each.name));

test("figures in known units, no figures but in answers, a rule with its basis and source", async () => {
  expect(conversations.length).toBeGreaterThan(300);
  const wrong: string[] = [];
  for (const { id, turns } of conversations) {
    const chat = baker();
    for (const { say } of turns)
      for (const answer of await chat.ask(say)) {
        const found = [...faults(answer), ...(names.has(answer.tool) ? [] : [`tool ${answer.tool}`])];
        wrong.push(...found.map((each) => `${id} "${say}": ${each}`));
      }
  }
  expect(wrong).toEqual([]);
});
