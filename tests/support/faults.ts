/** What every answer promises of its shape: a status, a line, figures in known units, a rule with its basis. */
import { units } from "../../data/words/units.ts";
import type { Outcome } from "../../src/tools/contract/index.ts";

/** Units that a figure may have; money is in ISO 4217 codes. */
const allowed = new Set([
  ..."g mg kg oz lb ml l tsp tbsp cup °C °F mm cm in s min h d % aw :1 shells macarons whites trays".split(
    " ",
  ),
  "fl oz",
  // plain arithmetic
  "",
  // how long they keep frozen: a span that no number of minutes says exactly
  "months",
  ...units.filter((row) => row.dim === "money" && /^[A-Z]{3}$/.test(row.unit)).map((row) => row.unit),
]);

/** What else is counted is its own unit: "eggs" in "eggs". */
const isCount = (name: string, unit: string) => /^[a-z]+s$/.test(unit) && name.endsWith(unit);

const statuses = ["answered", "asking", "impossible", "declined"];
const bases = ["published", "common practice", "from memory", "arithmetic", "your bench"];

/** What is wrong with an outcome, in words; nothing when it is as promised. */
export function faults(outcome: Omit<Outcome, "slot">): string[] {
  const { status, headline, figures = [], rule, question } = outcome;
  return [
    ...(statuses.includes(status) ? [] : [`status ${status}`]),
    ...(headline.trim() ? [] : ["no headline"]),
    ...(/NaN|undefined|Infinity|\[object/.test(headline) ? [`headline: ${headline}`] : []),
    ...(status !== "answered" && figures.length > 0 ? [`${status} with figures`] : []),
    ...(status === "asking" && !question ? ["asks without a question"] : []),
    ...figures.flatMap(({ name, unit, value, low, high }) => [
      ...(allowed.has(unit) || isCount(name, unit) ? [] : [`${name} in "${unit}"`]),
      ...(value === undefined && (low === undefined || high === undefined)
        ? [`${name} without a number`]
        : []),
      ...([value, low, high].every((each) => each === undefined || Number.isFinite(each))
        ? []
        : [`${name} is no number`]),
    ]),
    ...(rule && !bases.includes(rule.basis) ? [`basis ${rule.basis}`] : []),
    ...(rule?.basis === "published" && !rule.source ? ["published, without its source"] : []),
  ];
}
