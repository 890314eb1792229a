/** The build makes the registry's calculators run only when they are asked for: nothing of them may get lost in that. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { lazily } from "../../src/tools/lazily.ts";
import { tools } from "../../src/tools/registry.ts";

it("hands on everything that a calculator declares, and loads it once, when it is looked into", () => {
  for (const tool of tools) {
    let loaded = 0;
    const late = lazily(tool.name, () => {
      loaded += 1;
      return tool;
    });
    expect(late.name).toBe(tool.name);
    expect(loaded).toBe(0);
    const { rivals, read, compute, ...rest } = tool;
    expect(late).toMatchObject(rest);
    expect(Object.keys(late)).toEqual(expect.arrayContaining(Object.keys(tool)));
    expect(late.rivals).toEqual(rivals ?? []);
    expect([typeof late.read, typeof late.compute]).toEqual([typeof read, typeof compute]);
    expect(loaded).toBe(1);
  }
});

it("finds every calculator under the name of its export, which the build goes by", () => {
  const registry = readFileSync(join(import.meta.dirname, "../../src/tools/registry.ts"), "utf8");
  const imported = [...registry.matchAll(/^import \{ (\w+) \} from/gm)].map(([, name]) => name ?? "");
  const names = imported.filter((name) => name !== "helpWith");
  expect(names).toHaveLength(tools.length - 1);
  expect([...names, "help"].sort()).toEqual(tools.map(({ name }) => name).sort());
});
