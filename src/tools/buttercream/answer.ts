/** Works a buttercream out from the part of it that was given: every part is a fixed share of the whole. */
import { buttercreamBasis, buttercreamParts, safeHeat } from "../../../data/rules/buttercream.ts";
import type { Outcome, World } from "../contract/index.ts";
import { white_g } from "../lib/find.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { eggsFor, fillingFor, sizing } from "../lib/sizing.ts";
import type { ButtercreamInputs, Part } from "./buttercream.ts";

const parts: readonly Part[] = ["whites", "sugar", "butter"];

const heatCaution = `Heat whites and sugar to ${safeHeat.value_c} °C (${safeHeat.value_f} °F) while stirring: raw egg white isn't safe for everyone. Your local food authority has the last word.`;

export function answerButtercream(said: ButtercreamInputs, world: World): Outcome {
  if (said.other)
    return {
      status: "declined",
      headline: `I have the parts of meringue buttercream only (whites, sugar, butter), none for ${said.other} buttercream. Save your recipe and I scale it.`,
    };
  if (said.added)
    return {
      status: "declined",
      headline: `I have no rule for more ${said.added.name} in a buttercream, so the recipe stays as it was: whites 100, sugar 150, butter 250. If ${plain(said.added.grams)} g is all the ${said.added.name} you have, say "buttercream from ${plain(said.added.grams)} g ${said.added.name}".`,
    };
  if (said.asks_heat)
    return {
      status: "answered",
      headline: `${safeHeat.value_c} °C (${safeHeat.value_f} °F), stirring all the while`,
      figures: [
        { name: "whites and sugar", value: safeHeat.value_c, unit: "°C" },
        { name: "whites and sugar", value: safeHeat.value_f, unit: "°F" },
      ],
      rule: {
        text: `heat whites and sugar to ${safeHeat.value_c} °C (${safeHeat.value_f} °F) while stirring`,
        basis: safeHeat.basis,
        source: safeHeat.source,
      },
      cautions: [
        "Measure with a thermometer; for whites that stay unheated use pasteurised ones. Your local food authority has the last word.",
      ],
    };
  const given = given_g(said, world);
  if (!given)
    return {
      status: "asking",
      headline: "How many grams of whites, sugar or butter, or of buttercream in all?",
      question: "How many grams of whites, sugar or butter, or of buttercream in all?",
      slot: "total_g",
    };
  const all = buttercreamParts.reduce((sum, each) => sum + each.parts, 0);
  const own =
    given.part === "total" ? all : (buttercreamParts.find((each) => each.name === given.part)?.parts ?? all);
  const of = (weight: number) => (given.grams * weight) / own;
  const lines = buttercreamParts.map(({ name, parts: share }) => ({ name, grams: of(share) }));
  const total = of(all);
  const partsOfWhites = buttercreamParts.find((each) => each.name === "whites")?.parts ?? 0;
  const eggs = eggsFor(of(partsOfWhites));
  return {
    status: "answered",
    headline: `${said.asks_eggs ? `${counted(eggs, "egg white")}; ` : ""}${lines.map(({ name, grams }) => `${name} ${weight(grams, world.bench.scale_g)} g`).join(", ")}: ${weight(total, world.bench.scale_g)} g buttercream`,
    figures: [
      ...lines.map(({ name, grams }) => ({ name, value: grams, unit: "g" })),
      { name: "total", value: total, unit: "g" },
      ...(said.asks_eggs ? [{ name: "whites", value: eggs, unit: "whites" }] : []),
    ],
    rule: {
      text: [
        "whites 100 : sugar 150 : butter 250 by weight, 500 in all",
        ...(given.taught ?? []).map(lessonText),
      ].join("; "),
      basis: given.taught?.length ? "your bench" : buttercreamBasis,
    },
    ...(given.assumed.length ? { assumed: given.assumed } : {}),
    cautions: [heatCaution, ...oddLines(given.taught ?? [], world.now_ms)],
    working: [
      `${plain(given.grams)} g ${given.part} are ${plain(own)} parts of ${plain(all)}`,
      ...lines.map(
        ({ name, grams }, at) =>
          `${name} = ${plain(given.grams)} × ${buttercreamParts[at]?.parts} / ${plain(own)} = ${plain(grams)} g`,
      ),
      ...(said.asks_eggs
        ? [`whites: ceil(${plain(of(partsOfWhites))} / ${white_g}) = ${eggs} large eggs`]
        : []),
    ],
    leaves: { mass: { grams: total, thing: "buttercream" }, filling: "buttercream", recipe: lines },
  };
}

/** Which part was given, in g; of several the one that makes least, so that nothing runs out. */
function given_g(
  said: ButtercreamInputs,
  world: World,
): { part: Part | "total"; grams: number; assumed: string[]; taught?: Lesson[] } | undefined {
  if (said.macarons !== undefined) {
    const size = sizing(said.diameter_mm, world.bench);
    const lessons = learned(world, size.diameter_mm);
    return {
      part: "total",
      grams: fillingFor(said.macarons, size.diameter_mm, ownFigures(lessons)),
      assumed: [
        `${plain(said.macarons)} macarons of ${plain(size.diameter_mm)} mm, filled with buttercream alone`,
      ],
      taught: [lessons.filling, lessons["filling loss"]].filter((lesson) => lesson !== undefined),
    };
  }
  const whites = said.whites_g ?? (said.whites_count !== undefined ? said.whites_count * white_g : undefined);
  const counted = said.whites_count !== undefined ? [`${white_g} g a white`] : [];
  const given = parts.flatMap((name) => {
    const grams = name === "whites" ? whites : said[`${name}_g`];
    const share = buttercreamParts.find((each) => each.name === name)?.parts ?? 1;
    return grams === undefined ? [] : [{ part: name, grams, makes: grams / share }];
  });
  const least = given.sort((a, b) => a.makes - b.makes)[0];
  if (least)
    return {
      part: least.part,
      grams: least.grams,
      assumed: [...counted, ...(given.length > 1 ? [`${least.part} run out first`] : [])],
    };
  return said.total_g === undefined ? undefined : { part: "total", grams: said.total_g, assumed: [] };
}
