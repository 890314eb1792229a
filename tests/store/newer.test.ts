import * as fs from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { version } from "../../src/store/schema.ts";
import { open, sample, sampleText } from "./sample.ts";
import { fileOf, noting } from "./support.ts";

describe("a record of a newer version", () => {
  let newer = "";
  beforeAll(() => {
    newer = sampleText
      .replace(`"version": ${version}`, `"version": ${version + 1}`)
      .replace('"bench"', '"oven_log": [1],\n"bench"');
  });

  test("is read as far as it can be, and said to be newer", async () => {
    const { record, notice, names } = await open(newer);
    expect(record).toEqual(sample);
    expect(notice).toContain("newer version");
    expect(names).toEqual(["record.json"]);
  });

  test("is never written: the change is refused, with what to try, and no byte moves", async () => {
    const { home, store } = await open(newer);
    const refused = await store.change(noting("x"));
    expect(refused).toMatchObject({ ok: false, problem: { kind: "newer", file: fileOf(home) } });
    expect(await store.change(() => ({ effects: [], value: 3 }))).toEqual({ ok: true, value: 3 });
    expect([fs.readdirSync(home), fs.readFileSync(fileOf(home), "utf8")]).toEqual([["record.json"], newer]);
  });

  test("is known as newer when it is cut short as well", async () => {
    const { home, store } = await open(newer.slice(0, -40));
    expect(await store.change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "newer" } });
    expect(fs.readFileSync(fileOf(home), "utf8")).toBe(newer.slice(0, -40));
  });
});
