/** Works a dose out. Every direction is one formula: flavor = base × p / 100, and its inverses. */
import { type DoseRow, doseRows, liquidTeaspoon_g } from "../../../data/rules/doses.ts";
import { bases } from "../../../data/words/things.ts";
import type { Bottle, Figure, Item, Outcome, Rule, World } from "../contract/index.ts";
import { type BestDose, bestDose } from "../lib/best-dose.ts";
import { friendlyDay } from "../lib/days.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { capital, listed, percent, plain, weight, weightRange } from "../lib/show.ts";
import { inBase } from "../lib/units.ts";
import type { DoseInputs } from "./dose.ts";

const labelCaution = "The directions on your bottle are the limit.";

/** The percentages in force, and where they come from. */
interface Dose {
  row: DoseRow;
  name: string;
  low: number;
  high: number;
  rule: Rule;
  base: string;
  assumed: string[];
  cautions: string[];
  items: Item[];
}

/**
 * @throws never: what can't be worked out comes back as `asking`, `impossible` or `declined`.
 */
export function answerDose(inputs: DoseInputs, world: World): Outcome {
  if (inputs.unweighable)
    return asking(
      `How much does it weigh in grams? ${capital(inputs.unweighable)} can weigh many things.`,
      /drop/.test(inputs.unweighable) ? "flavor_g" : "base_g",
    );
  if (inputs.unknown && inputs.dose === undefined && inputs.taste === undefined)
    return {
      status: "declined",
      headline: `I don't know ${inputs.unknown}, so I give no figure. Say its form with it, as in "pistachio paste", "lemon extract" or "raspberry powder".`,
    };
  if (
    inputs.dose === undefined &&
    inputs.base === undefined &&
    inputs.base_g === undefined &&
    inputs.flavor_g === undefined
  )
    return asking("How much buttercream or ganache is it for, in grams?", "base_g");
  const dose = find(inputs, world);
  if ("status" in dose) return dose;
  if (inputs.base_g === undefined && inputs.flavor_g === undefined)
    return asking(`How much ${dose.base} is it for, in grams?`, "base_g");
  if (inputs.want === "check" && inputs.base_g === undefined && inputs.flavor_g !== undefined)
    return asking(`How many grams of ${dose.base} is it in?`, "base_g");
  const outcome =
    inputs.base_g === undefined
      ? backward(inputs, dose, world)
      : inputs.want === "mend" && (inputs.flavor_g !== undefined || inputs.percent === undefined)
        ? mend(inputs, dose, world)
        : inputs.flavor_g !== undefined && inputs.want !== "flavor"
          ? check(inputs, dose, world)
          : forward(inputs, dose, world);
  const assumed = [
    ...dose.assumed,
    ...(inputs.by_volume ? ["a liquid's ml counted as grams: an estimate"] : []),
  ];
  return {
    ...outcome,
    ...(outcome.rule || outcome.status !== "answered" ? {} : { rule: dose.rule }),
    ...(assumed.length ? { assumed } : {}),
    ...(outcome.status === "answered" ? { cautions: [...(outcome.cautions ?? []), ...dose.cautions] } : {}),
    ...(dose.items.length ? { items: dose.items } : {}),
    leaves: { ...outcome.leaves, filling: dose.base },
  };
}

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** The row, its column and what replaces it: a percentage that was said, or the baker's own bottle. */
function find(inputs: DoseInputs, world: World): Dose | Outcome {
  const id = inputs.dose ?? "flavor";
  if (id === "color") return asking("Is it gel color or powder color?", "dose");
  if (id === "powder")
    return asking("Which powder is it: freeze-dried fruit, cocoa, tea or coffee?", "taste");
  const row = doseRows.find((each) => each.id === id);
  const isColor = / color$/.test(id);
  const base = inputs.base ?? (isColor ? "batter" : "buttercream");
  const name = nameOf(inputs, row);
  if (base === "batter" && (row?.liquid || id === "vanilla paste")) return liquidInBatter(name);
  const column = bases.find((each) => each.id === base)?.column ?? "any";
  const tableRange = row?.[column === "any" ? "buttercream" : column];
  const bottle = bottleFor(inputs, world.bottles);
  const own =
    bottle?.low_percent !== undefined
      ? ([bottle.low_percent, bottle.high_percent ?? bottle.low_percent] as const)
      : undefined;
  const strong = own ? undefined : strongFor(inputs, world.bottles);
  const strength = inputs.strength ?? strong?.strength ?? 1;
  const range = tableRange && ([tableRange[0] / strength, tableRange[1] / strength] as const);
  const said =
    inputs.percent !== undefined
      ? ([inputs.percent, inputs.percent_high ?? inputs.percent] as const)
      : undefined;
  const wantsRule = said === undefined;
  if (!row || (!range && !own && wantsRule))
    return {
      status: "declined",
      headline: `There is no rule for ${name} in ${base}, so I give no figure. Try a little, weigh it, and note what worked.`,
      cautions: [labelCaution],
    };
  const rated = bestDose({ taste: inputs.taste, row: row.id, base }, world);
  // Her usual dose stands where she asks for it, never over the directions of her own bottle.
  const usual = inputs.usual && !said && !own ? rated?.usual : undefined;
  const [low, high] = said ?? own ?? (usual && ([usual.percent, usual.percent] as const)) ?? range ?? [0, 0];
  const rule: Rule = usual
    ? {
        text: `${percent(low)} of the ${base}'s weight, your usual: your last ${usual.batches.length} batches rated ${listed(usual.batches.map((each) => plain(each.rating)))}`,
        basis: "your bench",
      }
    : own && !said
      ? {
          text: `${percent(low, high)} of the ${base}'s weight, from your ${bottle?.taste} bottle`,
          basis: "your bench",
        }
      : said
        ? {
            text: `${percent(low, high)} ${inputs.of_finished ? "of the finished weight" : `of the ${base}'s weight`}, as you said`,
            basis: "arithmetic",
          }
        : inputs.strength !== undefined
          ? {
              text: `${percent(...(tableRange ?? [0, 0]))} of the ${base}'s weight by the table, for a flavor ${plain(strength)} times as strong: ${percent(low, high)}`,
              basis: row.basis,
            }
          : strong
            ? {
                text: `${percent(...(tableRange ?? [0, 0]))} of the ${base}'s weight by the table, your ${strong.taste} bottle is ${plain(strength)} times as strong: ${percent(low, high)}`,
                basis: "your bench",
              }
            : { text: `${percent(low, high)} of the ${base}'s weight`, basis: row.basis };
  const assumed = [
    ...(inputs.bare && row.id === "flavor" && !own ? ["a concentrated flavor"] : []),
    ...(row.id === "oil" ? ["super strength oil"] : []),
    ...(row.id === "purée" ? ["reduced first"] : []),
    ...(inputs.base === undefined
      ? [`it goes into ${base}`]
      : column === "any"
        ? ["the filling is a buttercream"]
        : []),
    ...(inputs.usual && !usual && !said
      ? [
          own
            ? "your bottle's directions, before your usual dose"
            : "the table's range: no two liked batches agree on a dose yet",
        ]
      : []),
  ];
  const beyond =
    usual && range && (usual.percent < range[0] || usual.percent > range[1])
      ? [
          `The table has ${percent(...range)}; your usual is ${usual.percent > range[1] ? "over" : "under"} it.`,
        ]
      : [];
  const cautions = [...beyond, ...(row.caution ? [row.caution] : []), labelCaution];
  return { row, name, low, high, rule, base, assumed, cautions, items: pastNotes(inputs, rated, world) };
}

/** How figures name it: "flavor" for a concentrated one, else the thing's own name. */
function nameOf(inputs: DoseInputs, row: DoseRow | undefined): string {
  if (row?.id === "flavor" || inputs.dose === undefined) return "flavor";
  if (inputs.name && inputs.name !== inputs.taste) return inputs.name;
  const form: Record<string, string> = {
    extract: "extract",
    oil: "oil",
    "fruit powder": "freeze-dried powder",
    purée: "purée",
    "nut paste": "paste",
    zest: "zest",
    "vanilla paste": "bean paste",
    "fruit paste": "paste",
    "other powder": "powder",
    "tea powder": "powder",
    "coffee powder": "powder",
  };
  const word = form[inputs.dose];
  if (inputs.taste && word) return `${inputs.taste} ${word}`;
  return inputs.taste ?? row?.name ?? inputs.dose;
}

const liquidInBatter = (name: string): Outcome => ({
  status: "answered",
  headline: `Leave ${name} out of the shell batter; flavor the filling instead.`,
  rule: {
    text: "no figure for liquid flavor in shell batter: the filling carries the flavor",
    basis: "common practice",
  },
  cautions: ["Liquid flavor upsets the batter: it can spread, crack or bake without feet."],
});

function forward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const base_g = inputs.base_g ?? 0;
  const part = (p: number) => (inputs.of_finished ? (base_g * p) / (100 - p) : (base_g * p) / 100);
  const [low, high] = [part(dose.low), part(dose.high)];
  const one = dose.low === dose.high;
  const grams: Figure = one
    ? { name: dose.name, value: low, unit: "g" }
    : { name: dose.name, low, high, unit: "g" };
  const over = inputs.of_finished ? "(100 − p)" : "100";
  const sum = inputs.parts
    ? `${inputs.parts.map((each) => `${each.name} ${plain(each.grams)}`).join(" + ")} = ${plain(base_g)} g; `
    : "";
  const spoons = inputs.spoon ? inSpoons(inputs, dose, grams) : undefined;
  const scaleNote = scaleCaution(low, world.bench.scale_g, base_g, dose.base);
  return {
    status: "answered",
    headline: spoons?.headline ?? `${doseText(low, high, world.bench.scale_g)} ${label(inputs, dose)}`,
    figures: [...(spoons?.figures ?? []), grams],
    cautions: [...(spoons?.cautions ?? []), ...scaleNote],
    working: [
      `${sum}${dose.name} = base × p / ${over}`,
      ...[...new Set([dose.low, dose.high])].map(
        (p) =>
          `${plain(base_g)} × ${plain(p)} / ${inputs.of_finished ? `(100 − ${plain(p)})` : "100"} = ${plain(part(p), 3)} g`,
      ),
    ],
    leaves: { mass: { grams: base_g, thing: dose.base } },
  };
}

const label = (inputs: DoseInputs, dose: Dose) =>
  dose.name === "flavor" && inputs.taste ? `${inputs.taste} flavor` : dose.name;

/** A dose is never nothing: what the scale would show as 0 is written out. */
const doseText = (low: number, high: number, scale_g: number | undefined): string =>
  low > 0 && weight(low, scale_g) === "0"
    ? `${[...new Set([plain(low, 3), plain(high, 3)])].join(" to ")} g`
    : weightRange(low, high, scale_g);

/** A dose of few steps of the scale: what it can show instead, and for how much base that is right. */
function scaleCaution(grams: number, scale_g: number | undefined, base_g: number, base: string): string[] {
  if (scale_g === undefined || grams <= 0 || grams >= scale_g * 5) return [];
  const shown = Math.max(1, Math.round(grams / scale_g)) * scale_g;
  const nearest =
    Math.abs(shown / grams - 1) < 1e-9
      ? ""
      : ` It can show ${plain(shown, 3)} g, right for ${plain((base_g * shown) / grams, 0)} g ${base}: make that much, or use a finer scale.`;
  return [
    `Your scale reads ${plain(scale_g)} g steps: ${plain(grams, 3)} g is only ${plain(grams / scale_g, 1)} of them.${nearest}`,
  ];
}

/** Spoons of a liquid by estimate; of a powder only where the portion table knows it. */
function inSpoons(
  inputs: DoseInputs,
  dose: Dose,
  grams: Figure,
): { headline: string; figures: Figure[]; cautions: string[] } {
  const unit = inputs.spoon ?? "tsp";
  const each = dose.row.liquid
    ? unit === "tsp"
      ? liquidTeaspoon_g
      : inBase(1, unit)
    : gramsOfVolume(inputs.name ?? "", 1, unit)?.grams;
  if (each === undefined)
    return {
      headline: `${weightRange(grams.low ?? grams.value ?? 0, grams.high ?? grams.value ?? 0)} ${dose.name}; there is no known weight for a ${unit} of it`,
      figures: [],
      cautions: ["A spoon of this powder isn't in the table: weigh it."],
    };
  const convert = (value: number | undefined) => (value === undefined ? undefined : value / each);
  const [low, high, value] = [convert(grams.low), convert(grams.high), convert(grams.value)];
  const figure: Figure = { name: dose.name, ...(value !== undefined ? { value } : { low, high }), unit };
  const text = value !== undefined ? plain(value, 2) : `${plain(low ?? 0, 2)} to ${plain(high ?? 0, 2)}`;
  return {
    headline: `about ${text} ${unit} ${dose.name}`,
    figures: [figure],
    cautions: [`An estimate: ${plain(each, 2)} g counted to the ${unit}. A scale is surer.`],
  };
}

function backward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const flavor_g = inputs.flavor_g ?? 0;
  const need = (p: number) => (inputs.of_finished ? (flavor_g * (100 - p)) / p : (flavor_g / p) * 100);
  const [low, high] = [need(dose.high), need(dose.low)];
  const figure: Figure =
    low === high ? { name: "base", value: low, unit: "g" } : { name: "base", low, high, unit: "g" };
  return {
    status: "answered",
    headline: `${weightRange(low, high, world.bench.scale_g)} ${dose.base} for ${plain(flavor_g)} g ${label(inputs, dose)}`,
    figures: [figure],
    working: [
      `base = ${dose.name} / p`,
      ...[...new Set([dose.high, dose.low])].map(
        (p) => `${plain(flavor_g)} / ${plain(p)} % = ${plain(need(p), 2)} g`,
      ),
    ],
  };
}

function check(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g ?? 0, inputs.base_g ?? 1];
  const share = inputs.of_finished ? (flavor_g / (flavor_g + base_g)) * 100 : (flavor_g / base_g) * 100;
  const slack = 1e-9;
  const verdict = share < dose.low - slack ? "under" : share > dose.high + slack ? "over" : "within";
  const [low, high] = [(base_g * dose.low) / 100, (base_g * dose.high) / 100];
  const advice = {
    under: `, ${weightRange(low - flavor_g, high - flavor_g, world.bench.scale_g)} more would bring it in`,
    within: "",
    over: `; add base to bring it down, ask how much`,
  }[verdict];
  return {
    status: "answered",
    headline: `${plain(share)} %: ${verdict} the ${percent(dose.low, dose.high)}${advice}`,
    figures: [
      { name: "share", value: share, unit: "%" },
      { name: dose.name, low, high, unit: "g" },
    ],
    working: [
      `share = ${dose.name} / base × 100`,
      `${plain(flavor_g)} / ${plain(base_g)} × 100 = ${plain(share)} %`,
    ],
    leaves: { mass: { grams: base_g, thing: dose.base } },
  };
}

function mend(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g, inputs.base_g ?? 1];
  if (flavor_g === undefined) return asking("How many grams of flavor went in?", "flavor_g");
  const share = (flavor_g / base_g) * 100;
  if (share <= dose.high + 1e-9) return check(inputs, dose, world);
  const middle = (dose.low + dose.high) / 2;
  const [low, high] = [(flavor_g / dose.high) * 100 - base_g, (flavor_g / middle) * 100 - base_g];
  return {
    status: "answered",
    headline: `Add ${weightRange(low, high, world.bench.scale_g)} plain ${dose.base}`,
    figures: [
      { name: "add base", low, high, unit: "g" },
      { name: "share", value: share, unit: "%" },
    ],
    rule: { ...dose.rule, text: `${dose.rule.text}; down to the top of the range, or to its middle` },
    working: [
      `now ${plain(flavor_g)} / ${plain(base_g)} = ${plain(share)} %, over ${percent(dose.low, dose.high)}`,
      `to ${plain(dose.high)} %: ${plain(flavor_g)} / ${plain(dose.high)} % − ${plain(base_g)} = ${plain(low)} g`,
      `to ${plain(middle)} %: ${plain(flavor_g)} / ${plain(middle)} % − ${plain(base_g)} = ${plain(high)} g`,
    ],
  };
}

/** The saved bottle of this taste; where a form was said, the bottle has to be of it. */
function bottleFor(inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined {
  const row = inputs.dose ?? "flavor";
  return bottles
    .filter(
      (bottle) =>
        bottle.taste === inputs.taste &&
        bottle.low_percent !== undefined &&
        (bottle.form === undefined || bottle.form === row),
    )
    .at(-1);
}

/** A bottle of this taste with a strength and no directions: the table's range goes by it. */
const strongFor = (inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined =>
  bottles.findLast(
    (bottle) =>
      bottle.taste === inputs.taste &&
      bottle.strength !== undefined &&
      bottle.low_percent === undefined &&
      (bottle.form === undefined || bottle.form === (inputs.dose ?? "flavor")),
  );

/** What the baker's own notes say of this flavor, the newest first: beside the dose, never instead of it. */
function pastNotes(inputs: DoseInputs, rated: BestDose | undefined, world: World): Item[] {
  if (!inputs.taste) return [];
  const last = world.notes
    .filter((note) => !note.ignored && note.flavors.includes(inputs.taste ?? "") && note.doses?.length)
    .slice(-1)
    .map((note) => ({
      date: note.date,
      flavors: note.flavors,
      text: note.text,
      ...(note.rating !== undefined ? { rating: note.rating } : {}),
    }));
  if (!rated) return last;
  const { best, usual } = rated;
  const day = friendlyDay(best.note.date, world.now_ms);
  return [
    ...last,
    {
      best: `${percent(best.percent)} ${inputs.taste}, rated ${plain(best.rating)} out of 10, ${day}`,
      ...(usual && !inputs.usual
        ? { your_bench: `${percent(usual.percent)} is your usual, in ${usual.batches.length} liked batches` }
        : {}),
    },
  ];
}

export { weight };
