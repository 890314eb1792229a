/** A filling brought to a water activity or to a share of fat, sugar or water, by solving for the grams. */
import { ratios, type Use } from "../../../data/rules/ganache.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { awBand, compose, type Line, waterActivity } from "../lib/composition.ts";
import { plain, weight } from "../lib/show.ts";
import { authority, estimateNote, keepCold, verdictOf } from "./activity.ts";
import { noise } from "./book-ratio.ts";
import { unknownIn } from "./composition.ts";
import type { GanacheInputs } from "./ganache.ts";
import { type Aim, aimOf } from "./goal.ts";
import { type Mix, mixOf } from "./mix.ts";
import { type Gap, sized, toAdd, toLeaveOut, toSwap, type Way } from "./toward.ts";

export function answerTarget(inputs: GanacheInputs, world: World): Outcome {
  const aim = aimOf(inputs);
  if ("status" in aim) return aim;
  if (!inputs.lines && !inputs.chocolate && !inputs.formula && inputs.base !== "buttercream")
    return inputs.total_g === undefined
      ? asking("What is in it, in grams? For example 200 g dark chocolate, 100 g cream.", "lines")
      : asking("Which chocolate is it: dark, milk or white?", "chocolate");
  const mix = mixOf(inputs, world);
  if ("status" in mix) return mix;
  const missing = unknownIn(mix.lines);
  if (missing) return missing;
  const weighed = inputs.lines !== undefined || inputs.formula !== undefined || inputs.cream_g !== undefined;
  const ways = weighed ? mended(mix.lines, aim.gap) : built(mix, aim.gap, inputs);
  const now = aim.of(mix.lines);
  if (weighed && Math.abs(now - aim.value) < noise)
    return {
      status: "answered",
      headline: `It is there already: ${aim.shown(now)}`,
      rule: aim.rule,
      cautions: [keepCold, authority],
    };
  const [first] = ways;
  if (!first)
    return {
      status: "impossible",
      headline: `Nothing that goes into it brings it to ${aim.shown(aim.value)}; as it is, it has ${aim.shown(now)}.`,
    };
  return weighed ? mendAnswer(mix, ways, now, aim) : buildAnswer(mix, first, aim);
}

const chocolateIn = (lines: readonly Line[]) => lines.find((each) => / chocolate$/.test(each.name));

/** From a mix that is weighed: more chocolate or less cream first, then sugars and what thins it. */
function mended(lines: readonly Line[], gap: Gap): Way[] {
  const chocolate = chocolateIn(lines);
  const liquid = lines.find((each) => ["cream", "light cream", "milk", "whites"].includes(each.name));
  const sugar = lines.find((each) => /sugar$/.test(each.name))?.name ?? "sugar";
  return [
    ...(chocolate ? [toAdd(lines, gap, chocolate.name, chocolate.ndb)] : []),
    ...(liquid ? [toLeaveOut(lines, gap, liquid.name)] : []),
    ...(liquid ? [toAdd(lines, gap, liquid.name)] : []),
    ...(liquid ? [toSwap(lines, gap, "glucose syrup", liquid.name)] : []),
    toAdd(lines, gap, sugar),
    ...(lines.some((each) => each.name === "butter") ? [toAdd(lines, gap, "butter")] : []),
    ...(liquid?.name === "cream" ? [toSwap(lines, gap, "milk", "cream")] : []),
  ].filter((way) => way !== undefined);
}

/** To build: the ratio of chocolate to cream, where one that pipes or cuts does it; else milk or butter at the usual one. */
function built({ lines }: Mix, gap: Gap, { total_g, chocolate = "dark" }: GanacheInputs): Way[] {
  const whole = total_g ?? lines.reduce((sum, each) => sum + each.grams, 0);
  const [choc, cream] = lines;
  if (!choc || !cream || lines.length !== 2) return mended(lines, gap);
  const byRatio = toAdd([{ ...cream, grams: 1 }], gap, choc.name, choc.ndb);
  const all = Object.values(ratios[chocolate]);
  const [least, most] = [Math.min(...all.map((each) => each.low)), Math.max(...all.map((each) => each.high))];
  const usable = byRatio && byRatio.grams >= least - noise && byRatio.grams <= most + noise;
  const others = [toSwap(lines, gap, "milk", "cream"), toAdd(lines, gap, "butter")];
  return [...(usable ? [byRatio] : []), ...others, ...(usable ? [] : [byRatio])]
    .filter((way) => way !== undefined)
    .map((way) => ({ ...way, lines: sized(way.lines, whole) }));
}

const listedLines = (lines: readonly Line[]) =>
  lines.map((each) => `${weight(each.grams)} g ${each.name}`).join(", ");

/** "dark chocolate" is figured as "chocolate". */
const figureName = (name: string) => (/ chocolate$/.test(name) ? "chocolate" : name);

/** How firm the mended ganache is; outside the book's ratios that is said. */
function firmness(lines: readonly Line[]): string[] {
  const choc = chocolateIn(lines);
  const cream = lines.find((each) => each.name === "cream");
  const kind = choc?.name.split(" ")[0] as keyof typeof ratios | undefined;
  const table = kind && kind in ratios ? ratios[kind] : undefined;
  if (!choc || !cream || !table || lines.length !== 2) return [];
  const ratio = choc.grams / cream.grams;
  const uses = Object.entries(table) as [Use, { low: number; high: number }][];
  const [least, most] = [
    Math.min(...uses.map(([, row]) => row.low)),
    Math.max(...uses.map(([, row]) => row.high)),
  ];
  if (ratio > most)
    return [`${plain(ratio)} : 1 is stiffer than firm (${plain(most)} : 1): it cracks rather than pipes.`];
  if (ratio < least)
    return [`${plain(ratio)} : 1 is looser than a drip (${plain(least)} : 1): it won't hold in a macaron.`];
  return [];
}

function mendAnswer(mix: Mix, ways: readonly Way[], now: number, aim: Aim): Outcome {
  const [first] = ways as [Way];
  const shown = (way: Way) =>
    way.does.startsWith("add")
      ? `add ${weight(way.grams)} g ${way.name}`
      : way.does.startsWith("leave out")
        ? `leave out ${weight(way.grams)} g ${way.name}`
        : `${weight(way.grams)} g ${way.does}`;
  const reached = aim.of(first.lines);
  const fine = aim.shown(now) === aim.shown(reached);
  const total = first.lines.reduce((sum, each) => sum + each.grams, 0);
  return {
    status: "answered",
    headline: `From ${aim.shown(now, fine)} to ${aim.shown(reached, fine)}: ${ways.slice(0, 3).map(shown).join(", or ")}`,
    figures: [
      ...ways.slice(0, 3).map((way) => ({
        name: way.does.startsWith("add")
          ? `add ${figureName(way.name)}`
          : way.does.startsWith("leave out")
            ? `less ${way.name}`
            : way.does,
        value: way.grams,
        unit: "g",
      })),
      { name: "total", value: total, unit: "g" },
      aim.figure(reached),
    ],
    rule: aim.rule,
    assumed: [...mix.assumed, estimateNote],
    cautions: [...firmness(first.lines), ...awCautions(first.lines), keepCold, authority],
    working: workingOf(mix.lines, ways.slice(0, 3), aim),
    leaves: leaves(first.lines, total),
  };
}

function buildAnswer(mix: Mix, way: Way, aim: Aim): Outcome {
  const total = way.lines.reduce((sum, each) => sum + each.grams, 0);
  const reached = aim.of(way.lines);
  const kept = way.does === "milk in place of cream" || way.name === "butter";
  return {
    status: "answered",
    headline: `${listedLines(way.lines)}: ${weight(total)} g with ${aim.shown(reached)}`,
    figures: [
      ...way.lines.map((each) => ({ name: figureName(each.name), value: each.grams, unit: "g" })),
      { name: "total", value: total, unit: "g" },
      aim.figure(reached),
    ],
    rule: aim.rule,
    assumed: [...(kept ? mix.assumed : []), estimateNote],
    cautions: [...firmness(way.lines), ...awCautions(way.lines), keepCold, authority],
    working: workingOf(way.lines, [], aim),
    leaves: leaves(way.lines, total),
  };
}

/** At or under a line it is still an estimate with its band. */
function awCautions(lines: readonly Line[]): string[] {
  const aw = waterActivity(compose(lines));
  return aw === undefined ? [] : [`a_w about ${aw.toFixed(2)} ± ${awBand}: ${verdictOf(aw)}.`];
}

function workingOf(lines: readonly Line[], ways: readonly Way[], aim: Aim): string[] {
  const sum = compose(lines);
  return [
    `water ${plain(sum.water_g)} g, fat ${plain(sum.fat_g)} g, sugar ${plain(sum.sugar_g)} g of ${plain(sum.grams)} g`,
    ...ways.map((way) => `${way.does}: ${plain(way.grams)} g gives ${aim.shown(aim.of(way.lines))}`),
  ];
}

const leaves = (lines: readonly Line[], total: number): NonNullable<Outcome["leaves"]> => ({
  mass: { grams: total, thing: "ganache" },
  recipe: lines.map(({ name, grams }) => ({ name, grams })),
});
