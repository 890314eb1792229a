/** The program as it is shipped, in parts and with patterns that wait, answers as its sources do. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { turnJson } from "../../../src/cli/json.ts";
import { baker } from "../../support/ask.ts";
import { builtProgram, type Program, root } from "../../support/built.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

const learned = join(root, "tests/questions/learned");
/** What writes or reads a file says where. */
const names = /file|print|label|csv|pdf|spreadsheet|calendar|export|import|\bread\b|load|copies|backup/i;
const lines = readdirSync(learned)
  .flatMap((name) => readFileSync(join(learned, name), "utf8").split("\n").filter(Boolean))
  .filter((_, at) => at % 30 === 0)
  // a blank line begins another conversation
  .flatMap((line) => [...(JSON.parse(line) as { turns: { say: string }[] }).turns.map(({ say }) => say), ""])
  .map((say) => say.replaceAll("\n", " "))
  .filter((say) => !names.test(say));

it("line for line", async () => {
  expect(lines.length).toBeGreaterThan(800);
  const { stdout, stderr } = await program.run(["--json"], {
    input: `${lines.join("\n")}\n`,
    env: { TZ: process.env.TZ ?? "" },
  });
  expect(stderr).toBe("");
  const shipped = stdout.trim().split("\n");
  const { session } = baker({ now: "2026-03-14T09:30:00" });
  const own: string[] = [];
  for (const line of lines) {
    const turn = await session.ask(line);
    if (turn.answers.length > 0) own.push(turnJson(turn));
  }
  const differ = own.flatMap((each, at) =>
    each === shipped[at] ? [] : [{ own: each, shipped: shipped[at] }],
  );
  expect(differ.slice(0, 3)).toEqual([]);
  expect(shipped.length).toBe(own.length);
});
