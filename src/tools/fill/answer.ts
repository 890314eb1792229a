/**
 * Filling to make, ring and center, or the macarons that a bowl of it fills; both where it is asked whether it is
 * enough.
 */
import { fillingLoss, macaronFilling, ringShare } from "../../../data/rules/shells.ts";
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { fillingFor, fillingWeight, macaronsFrom, saidSize, shellsFrom, sizing } from "../lib/sizing.ts";
import type { FillInputs } from "./fill.ts";

/** What every answer needs to know of her bench. Weights in g, the diameter in mm. */
interface Ground {
  diameter_mm: number;
  /** The size where it was said. */
  said: { diameter_mm?: number };
  figures: ReturnType<typeof ownFigures>;
  /** Filling in one macaron. */
  one_g: number;
  /** What stays in bowl and bag. */
  lost_percent: number;
  rule: Rule;
  /** The rule for the way back. */
  ruleBack: Rule;
  assumed: string[];
  cautions: string[];
  scale_g: number | undefined;
}

/** @throws never: without a number of macarons it asks. Weights in g. */
export function answerFill(said: FillInputs, world: World): Outcome {
  const ground = groundFor(said, world);
  if (said.batter_g !== undefined) return forBatter(said, said.batter_g, ground, world);
  const macarons = said.macarons ?? (said.shells !== undefined ? Math.floor(said.shells / 2) : undefined);
  if (said.filling_g !== undefined)
    return macarons === undefined
      ? filled(said, said.filling_g, ground)
      : isEnough(said, said.filling_g, macarons, ground);
  if (macarons === undefined) {
    const question = "For how many macarons?";
    return { status: "asking", headline: question, question, slot: "macarons" };
  }
  return toMake(said, macarons, ground);
}

/** "how much filling would they need", behind a batter: for as many macarons as it gives. */
function forBatter(said: FillInputs, batter_g: number, ground: Ground, world: World): Outcome {
  const shells = shellsFrom(batter_g, ground.diameter_mm, ground.figures);
  const macarons = Math.floor(shells / 2);
  const much = `${weight(batter_g, ground.scale_g)} g`;
  if (macarons === 0)
    return { status: "impossible", headline: `${much} of batter is less than one macaron takes.` };
  const outcome = answerFill({ ...said, batter_g: undefined, macarons }, world);
  const { assumed = [] } = outcome;
  return {
    ...outcome,
    assumed: [
      `${counted(macarons, "macaron")}, from ${counted(shells, "shell")} of ${much} batter`,
      ...assumed,
    ],
  };
}

function groundFor(said: FillInputs, world: World): Ground {
  const size = sizing(said.diameter_mm, world.bench);
  const lessons = learned(world, size.diameter_mm);
  const said_g = said.each_g;
  const taughtFigures = ownFigures(lessons);
  const loss = lessons["filling loss"]?.value ?? fillingLoss.value;
  const figures =
    said_g === undefined ? taughtFigures : { ...taughtFigures, filling_g: said_g / (1 - loss / 100) };
  const { "filling loss": lossTaught } = lessons;
  const each = said_g === undefined ? lessons.filling : undefined;
  const taught = [...(each ? [each] : []), ...(lossTaught ? [lossTaught] : [])];
  const lost_percent = figures.fillingLoss_percent ?? fillingLoss.value;
  const kept = plain(1 - lost_percent / 100, 4);
  const one_g = said_g ?? fillingWeight(size.diameter_mm, figures);
  const d = plain(size.diameter_mm);
  const own = size.diameterFrom === "bench" || taught.length > 0;
  const basis = own ? ("your bench" as const) : macaronFilling.basis;
  const lossText = lossTaught ? lessonText(lossTaught) : `${plain(lost_percent)} % stays in bowl and bag`;
  const text =
    said_g !== undefined
      ? `${plain(said_g)} g in each, as you said; ${lossText}, so to make = needed / ${kept}`
      : each
        ? `${taught.map(lessonText).join("; ")}, at ${d} mm`
        : `0.42 × d² g in one macaron, d in cm: ${plain(one_g)} g at ${d} mm; ${lossText}, so to make = needed / ${kept}`;
  const back =
    each || said_g !== undefined
      ? `${text}; macarons = floor(G / filling a macaron)`
      : `macarons = floor(G × ${kept} / (0.42 d²)), d ${d} mm${lossTaught ? `; ${lessonText(lossTaught)}` : ""}`;
  return {
    diameter_mm: size.diameter_mm,
    said: saidSize(size),
    figures,
    one_g,
    lost_percent,
    rule: { text, basis },
    ruleBack: { text: back, basis },
    assumed: [
      ...(size.diameterFrom === "book" && said_g === undefined ? [`${d} mm shells`] : []),
      ...(said.placed ? [`${said.ring} as the ring, ${said.center} as the center`] : []),
      ...(said.bowls && said.filling_g !== undefined ? [together(said.bowls, world.bench.scale_g)] : []),
    ],
    cautions: oddLines(taught, world.now_ms),
    scale_g: world.bench.scale_g,
  };
}

/** Two bowls fill as many as their sum, whichever goes into which. */
const together = (bowls: NonNullable<FillInputs["bowls"]>, scale_g: number | undefined): string =>
  `${bowls.map(({ name, grams }) => `${weight(grams, scale_g)} g ${name}`).join(" and ")} taken together`;

/** What the answers have in common: where the number comes from. */
const common = ({ assumed, cautions }: Ground) => ({
  status: "answered" as const,
  assumed,
  ...(cautions.length ? { cautions } : {}),
});

/** "300 g buttercream, how many macarons". */
function filled({ filling = "filling", shares }: FillInputs, filling_g: number, ground: Ground): Outcome {
  const { diameter_mm, figures, scale_g } = ground;
  const macarons = macaronsFrom(filling_g, diameter_mm, figures);
  if (shares && shares.length > 1) {
    const parts = shares.map(({ name, share }) => ({ name, grams: filling_g * share }));
    return {
      ...common(ground),
      headline: `${parts.map(({ name, grams }) => `${weight(grams, scale_g)} g ${name}`).join(", ")}; together it fills ${counted(macarons, "macaron")}`,
      figures: [
        ...parts.map(({ name, grams }) => ({ name, value: grams, unit: "g" })),
        { name: "macarons", value: macarons, unit: "macarons" },
      ],
      rule: ground.ruleBack,
      working: [
        ...shares.map(
          ({ name, share }) =>
            `${name}: ${plain(filling_g)} × ${plain(share, 4)} = ${plain(filling_g * share)} g`,
        ),
        backwards(filling_g, macarons, ground),
      ],
      leaves: { macarons, ...ground.said, parts, shares },
    };
  }
  return {
    ...common(ground),
    headline: `${counted(macarons, "macaron")} from ${weight(filling_g, scale_g)} g ${filling}`,
    figures: [{ name: "macarons", value: macarons, unit: "macarons" }],
    rule: ground.ruleBack,
    working: [backwards(filling_g, macarons, ground)],
    leaves: { macarons, ...ground.said },
  };
}

function backwards(filling_g: number, macarons: number, { figures, one_g, lost_percent }: Ground): string {
  const made = figures.filling_g;
  return made === undefined
    ? `${plain(filling_g)} × ${plain(1 - lost_percent / 100, 4)} / ${plain(one_g, 4)} = ${plain((filling_g * (1 - lost_percent / 100)) / one_g)}, cut off to ${macarons}`
    : `${plain(filling_g)} / ${plain(made, 4)} = ${plain(filling_g / made)}, cut off to ${macarons}`;
}

/** "is 300 g enough for 40": what they take, what is over or short, and how many it fills. */
function isEnough(said: FillInputs, filling_g: number, macarons: number, ground: Ground): Outcome {
  const { diameter_mm, figures, scale_g } = ground;
  const needed_g = fillingFor(macarons, diameter_mm, figures);
  const most = macaronsFrom(filling_g, diameter_mm, figures);
  const left_g = filling_g - needed_g;
  const what = said.filling ?? "filling";
  const takes = `${counted(macarons, "macaron")} ${macarons === 1 ? "takes" : "take"} ${weight(needed_g, scale_g)} g ${what}`;
  return {
    ...common(ground),
    headline:
      most >= macarons
        ? `Enough: ${takes}, ${weight(left_g, scale_g)} g over; it fills ${plain(most)}`
        : `Not enough: ${takes}, ${weight(-left_g, scale_g)} g short; it fills ${plain(most)}`,
    figures: [
      { name: "filling", value: needed_g, unit: "g" },
      { name: "macarons", value: most, unit: "macarons" },
      left_g >= 0
        ? { name: "filling left", value: left_g, unit: "g" }
        : { name: "filling short", value: -left_g, unit: "g" },
    ],
    rule: ground.rule,
    working: [...forwards(macarons, needed_g, ground), backwards(filling_g, most, ground)],
    leaves: { macarons, ...ground.said, mass: { grams: filling_g, thing: what } },
  };
}

const forwards = (macarons: number, total_g: number, { figures, one_g, lost_percent }: Ground): string[] =>
  figures.filling_g === undefined
    ? [
        `needed: ${plain(macarons)} × ${plain(one_g, 4)} = ${plain(macarons * one_g)} g`,
        `to make: ${plain(macarons * one_g)} / ${plain(1 - lost_percent / 100, 4)} = ${plain(total_g)} g`,
      ]
    : [`to make: ${plain(macarons)} × ${plain(figures.filling_g, 4)} = ${plain(total_g)} g`];

/** "filling for 24", "for 48 with a ring and a center", "for 60 in five flavors". */
function toMake(said: FillInputs, macarons: number, ground: Ground): Outcome {
  const { diameter_mm, figures, one_g, scale_g } = ground;
  const total = fillingFor(macarons, diameter_mm, figures);
  const what = said.filling ?? "filling";
  const ring = (total * ringShare.value) / 100;
  const ways = said.flavors ?? 1;
  const made: Figure = { name: "filling", value: total, unit: "g" };
  const outcome = {
    ...common(ground),
    rule: ground.rule,
    leaves: { mass: { grams: total, thing: what }, macarons: said.of_macarons ?? macarons, ...ground.said },
  };
  const working = forwards(macarons, total, ground);
  if (said.two) {
    const name = (own: string | undefined, place: string) => (own ? `${own} ${place}` : place);
    return {
      ...outcome,
      headline: `${weight(ring, scale_g)} g ${name(said.ring, "ring")}, ${weight(total - ring, scale_g)} g ${name(said.center, "center")}`,
      figures: [
        { name: "ring", value: ring, unit: "g" },
        { name: "center", value: total - ring, unit: "g" },
        { ...made, name: "total" },
      ],
      rule: {
        ...ground.rule,
        text: `${ground.rule.text}; ${ringShare.value} % ring, ${100 - ringShare.value} % center`,
      },
      working: [
        ...working,
        `ring ${ringShare.value} % = ${plain(ring)} g, center ${100 - ringShare.value} % = ${plain(total - ring)} g`,
      ],
      leaves: {
        ...outcome.leaves,
        parts: [
          { name: "ring", grams: ring, ...(said.ring ? { of: said.ring } : {}) },
          { name: "center", grams: total - ring, ...(said.center ? { of: said.center } : {}) },
        ],
      },
    };
  }
  const { shares } = said;
  if (shares && shares.length > 1) {
    const parts = shares.map(({ name, share, base }) => ({
      name,
      grams: total * share,
      ...(base ? { of: base } : {}),
    }));
    return {
      ...outcome,
      headline: `${parts.map(({ name, grams }) => `${weight(grams, scale_g)} g ${name}`).join(", ")}: ${weight(total, scale_g)} g ${shares.some(({ base }) => base) ? "" : `${what} `}in all for ${counted(macarons, "macaron")}`,
      figures: [
        ...parts.map(({ name, grams }) => ({ name, value: grams, unit: "g" })),
        { ...made, name: "total" },
      ],
      working: [
        ...working,
        ...shares.map(
          ({ name, share }) => `${name}: ${plain(total)} × ${plain(share, 4)} = ${plain(total * share)} g`,
        ),
      ],
      leaves: { ...outcome.leaves, parts, shares },
    };
  }
  if (ways > 1)
    return {
      ...outcome,
      headline: `${weight(total / ways, scale_g)} g ${what} for each of ${plain(ways)} flavors, ${weight(total, scale_g)} g in all for ${counted(macarons, "macaron")}`,
      figures: [
        { ...made, value: total / ways },
        { ...made, name: "total" },
      ],
      working: [...working, `each: ${plain(total)} / ${plain(ways)} = ${plain(total / ways)} g`],
    };
  return macarons === 1
    ? {
        ...outcome,
        headline: `${plain(one_g)} g ${what} in one macaron`,
        figures: [
          { ...made, value: one_g },
          { ...made, name: "total" },
        ],
        working,
      }
    : {
        ...outcome,
        headline: `${weight(total, scale_g)} g ${what} for ${counted(macarons, "macaron")}`,
        figures: [made],
        working,
      };
}
