/** The mix that a question about its composition names: weighed lines, a kind and a weight, or what lies on the table. */
import type { Memory, Reading } from "../contract/index.ts";
import { pointsBack, says, weighed } from "../lib/find.ts";
import type { Draft } from "./turn.ts";

export function readMix(reading: Reading, memory: Memory): Draft {
  const lines = readLines(reading);
  const base = reading.things.some((each) => each.base === "buttercream")
    ? ({ base: "buttercream" } as const)
    : {};
  if (lines.lines && lines.lines.length > 1) return { ...lines, ...base };
  const whole = weighed(reading).find((each) => (each.thing?.base || !each.thing) && each.grams > 1)?.grams;
  const parts = lines.lines?.[0];
  const chocolate = reading.things.find((each) => each.chocolate)?.chocolate;
  if (parts && chocolate && / chocolate$/.test(parts.name) && !base.base)
    return { chocolate, chocolate_g: parts.grams };
  if (parts) return { ...lines, ...base };
  const back =
    // "whats the a_w", behind the mix that was worked out
    (reading.amounts.length === 0 && reading.things.every((each) => each.ingredient === "water")) ||
    pointsBack(reading) ||
    says(reading, /(?:^| )(?:my|the|this|that) \S*<base=(?:ganache|buttercream)>/);
  const table = memory.table.recipe;
  if (whole === undefined && table?.length && back && !chocolate)
    return { lines: table.map(({ name, grams }) => ({ name, grams })), ...base };
  return { ...(whole !== undefined ? { total_g: whole } : {}), ...(chocolate ? { chocolate } : {}), ...base };
}

/** Every weighed ingredient of the sentence; a chocolate's cacao percentage picks its row. */
export function readLines(reading: Reading): Draft {
  const cacao = reading.amounts.find(
    (each) =>
      each.dim === "percent" &&
      each.value >= 40 &&
      each.value <= 100 &&
      !/^ ?(?:of )?(?:fat|water|sugar)/.test(reading.text.slice(each.at[1])),
  )?.value;
  const lines = weighed(reading).flatMap(({ grams, thing }) => {
    // a purée stands as what it is called: no row knows it, and the answer says so
    const name = thing?.chocolate
      ? `${thing.chocolate} chocolate`
      : (thing?.ingredient ?? (thing?.dose === "purée" ? thing.text : undefined));
    if (!name) return [];
    const ndb = thing?.chocolate === "dark" && cacao !== undefined ? darkRow(cacao) : undefined;
    return [{ name, grams, ...(ndb ? { ndb } : {}) }];
  });
  return lines.length > 0 ? { lines } : {};
}

/** Dark chocolate by its cacao. Source: USDA SR, NDB 19902 (45-59 %), 19903 (60-69 %), 19904 (70-85 %). */
const darkRow = (cacao: number) => (cacao < 60 ? "19902" : cacao < 70 ? "19903" : "19904");
