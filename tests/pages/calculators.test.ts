/** The calculators' pages are current, one each and no more, and what stands in them as answered is. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { tools } from "../../src/tools/registry.ts";
import { root } from "../support/built.ts";
import { calculatorPage, indexPage, isAnswered, questionsOf } from "./calculators.ts";

const folder = join(root, "data/pages");

describe.each(tools.map((tool) => [tool.name, tool] as const))("%s", (name, tool) => {
  it("has a page that is current: npm run pages writes it anew", async () => {
    await expect(await calculatorPage(tool)).toMatchFileSnapshot(join(folder, `${name}.md`));
  });

  it("answers at least three questions on it, and most of them", async () => {
    const asked = await questionsOf(tool);
    const answered = asked.filter((each) => isAnswered(tool, each));
    expect(answered.length).toBeGreaterThanOrEqual(Math.min(3, asked.length));
    expect(answered.length).toBeGreaterThan(asked.length / 2);
    // what isn't answered is understood all the same
    for (const { say, answers } of asked)
      for (const each of answers)
        expect([say, each.tool, each.status === "declined"]).toEqual([say, name, false]);
  });
});

it("the list of them is current", async () => {
  await expect(indexPage()).toMatchFileSnapshot(join(folder, "README.md"));
});

it("no page is left over from a calculator that is gone", () => {
  const wanted = new Set([...tools.map(({ name }) => `${name}.md`), "README.md", "numbers.md"]);
  expect(readdirSync(folder).filter((name) => name.endsWith(".md") && !wanted.has(name))).toEqual([]);
});
