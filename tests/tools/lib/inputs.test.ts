/** The limits of each kind of input, and that breaking one comes back as an answer in a sentence. */
import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { tool } from "../../../src/tools/contract/index.ts";
import { checkInputs } from "../../../src/tools/lib/check.ts";
import * as inputs from "../../../src/tools/lib/inputs.ts";

const takes = (schema: z.ZodMiniType, value: unknown) => schema.safeParse(value).success;
const sentence = (schema: z.ZodMiniType, value: unknown) => schema.safeParse(value).error?.issues[0]?.message;

describe("limits, each just inside and just outside", () => {
  test.each<[kind: string, schema: z.ZodMiniType, within: number[], outside: number[]]>([
    ["a weight", inputs.weight_g, [0.001, 1_000_000], [0, -1, 1_000_000.1]],
    ["what is in the bowl", inputs.inBowl_g, [0, 1_000_000], [-0.001, 1_000_001]],
    ["a share", inputs.share_percent, [0.001, 99.999], [0, 100, 400, -3]],
    ["a count", inputs.count("macarons"), [1, 100_000], [0, 0.9, -1, 100_001]],
    ["a diameter", inputs.diameter_mm, [10, 150], [9.9, 150.1]],
    ["a time", inputs.time_min, [0.5, 525_600], [0, -1, 525_601]],
    ["a temperature", inputs.temperature_c, [-273.15, -18, 0, 1000], [-273.2, 1001]],
    ["money", inputs.money, [0, 12.5], [-0.01]],
  ])("%s", (_, schema, within, outside) => {
    for (const each of within) expect(takes(schema, each), `${each}`).toBe(true);
    for (const each of outside) expect(takes(schema, each), `${each}`).toBe(false);
    for (const each of [Number.NaN, Number.POSITIVE_INFINITY, "5", null, undefined])
      expect(takes(schema, each), `${each}`).toBe(false);
  });

  test("a text is neither empty nor endless", () => {
    expect([takes(inputs.text, "a"), takes(inputs.text, ""), takes(inputs.text, "a".repeat(10_001))]).toEqual(
      [true, false, false],
    );
  });
});

describe("the sentence says what was said", () => {
  test.each<[schema: z.ZodMiniType, value: number, said: RegExp]>([
    [inputs.weight_g, -20, /-20 g/],
    [inputs.weight_g, 2_000_000, /2000000 g.*tonne/],
    [inputs.share_percent, 400, /400 %.*below 100 %/],
    [inputs.count("macarons"), 0, /macarons.*0/],
    [inputs.diameter_mm, 5, /5 mm.*10 mm/],
    [inputs.diameter_mm, 200, /200 mm.*150 mm/],
    [inputs.inBowl_g, -5, /-5 g in the bowl/],
  ])("%#", (schema, value, said) => {
    expect(sentence(schema, value)).toMatch(said);
  });
});

describe("checkInputs", () => {
  const shop = tool<{ base_g?: number; spare_g?: number }>({
    name: "shop",
    purpose: "for this test",
    inputs: () =>
      z.strictObject({ base_g: z.optional(inputs.weight_g), spare_g: z.optional(inputs.weight_g) }),
    cues: [],
    examples: [],
    elsewhere: [],
    read: () => ({}),
    compute: () => ({ status: "answered", headline: "done" }),
  });

  test("what fits is handed on", () => {
    expect(checkInputs(shop, { base_g: 200 })).toEqual({ ok: true, inputs: { base_g: 200 } });
  });

  test("what doesn't is impossible, in the schema's words, each once, and without figures", () => {
    const checked = checkInputs(shop, { base_g: 0, spare_g: 0 });
    expect(checked).toEqual({
      ok: false,
      outcome: {
        status: "impossible",
        headline: "A weight has to be above zero; this says 0 g.",
        // what the next turn goes on without
        slot: "base_g",
      },
    });
  });

  test("an input that isn't declared is refused", () => {
    expect(checkInputs(shop, { base_kg: 2 }).ok).toBe(false);
  });
});
