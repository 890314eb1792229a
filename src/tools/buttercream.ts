/** Meringue buttercream from any one of its parts, or from the total. */
import * as z from "zod/mini";
import { buttercreamBasis, buttercreamParts, safeHeat } from "../../data/rules/buttercream.ts";
import type { Memory, Outcome, Reading, World } from "./contract/index.ts";
import { later, tool } from "./contract/index.ts";
import { cues } from "./lib/cue.ts";
import { isOfQuality, isWhitesCount, pointsBack, says, weighed, white_g } from "./lib/find.ts";
import { count, weight_g } from "./lib/inputs.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "./lib/learned.ts";
import { gramsOfVolume } from "./lib/portions.ts";
import { plain, weight } from "./lib/show.ts";
import { fillingFor, sizing } from "./lib/sizing.ts";

const inputs = later(() =>
  z.strictObject({
    whites_g: z.optional(weight_g),
    sugar_g: z.optional(weight_g),
    butter_g: z.optional(weight_g),
    total_g: z.optional(weight_g),
    /** Another buttercream than one of meringue. */
    other: z.optional(z.string()),
    macarons: z.optional(z.number().check(z.gte(1, { error: "At least one macaron, please." }))),
    whites_count: z.optional(count("whites")),
    asks_heat: z.optional(z.boolean()),
  }),
);

type Inputs = z.infer<ReturnType<typeof inputs>>;
type Part = "whites" | "sugar" | "butter";
const parts: readonly Part[] = ["whites", "sugar", "butter"];

const heatCaution = `Heat whites and sugar to ${safeHeat.value_c} °C (${safeHeat.value_f} °F) while stirring: raw egg white isn't safe for everyone. Your local food authority has the last word.`;

export const buttercream = tool<Inputs>({
  name: "buttercream",
  purpose: "Meringue buttercream from its whites, sugar, butter or total",
  inputs,
  cues: cues(
    [
      5,
      "^(?:and |so |ok )*(?:all of it|all of that|the lot|the whole lot|make it(?: all)?) .. {base=buttercream}",
    ],
    [
      4,
      "{base=buttercream} .. {weight} .. {ingredient=(whites|butter|sugar|granulated_sugar)}",
      "{weight} .. {ingredient=(whites|butter|sugar|granulated_sugar|egg|salted_butter)} .. {base=buttercream}",
      "{weight} .. {base=buttercream} .. (?:what|whats|wht) (?:goes|go|all goes|do i need|do i put|does it take|is in|are the)",
      "{base=buttercream} .. {number} .. {ingredient=(whites|egg|butter|sugar)}",
      "{number} .. {ingredient=(whites|egg)} .. {base=buttercream}",
      "(?:how|hw) (?:much|many) .. {ingredient=(whites|butter|sugar|granulated_sugar)} .. {base=buttercream}",
      "(?:make|making|need|want) .. {weight} .. {base=buttercream} .. {ingredient}",
    ],
    [
      4,
      "{weight} .. {base=buttercream} .. (?:masses|weights|amounts|quantities|parts|ingredients)",
      "{weight} .. {base=buttercream} .. (?:whats|what is|what goes|what do i put) in",
      "{remainder} .. {base=buttercream}",
      "{base=buttercream} .. {remainder}",
      "{weight} .. {ingredient=(whites|butter|sugar|granulated_sugar)} .. how much .. {base=buttercream}",
      "work .. {weight} .. {base=buttercream}",
      "{base=buttercream} .. (?:how|hw) much .. {ingredient=(whites|butter|sugar|granulated_sugar)}",
      "{ingredient=(whites|butter|sugar|granulated_sugar)} .. (?:how|hw) much .. {base=buttercream}",
    ],
    [
      3.5,
      "{base=buttercream} recipe",
      "recipe .. {base=buttercream}",
      "(?:make|making|mix|whip|build|weigh|scale) (?:up )?(?:me )?{weight} .. {base=buttercream}",
      "{base=buttercream} .. {weight} (?:in )?(?:total|altogether|all together|in all)",
      "(?:how (?:do|much) .. )?weigh .. {base=buttercream}",
      "{base=buttercream} .. weigh",
      "{base=buttercream} .. (?:total|altogether)",
      "what (?:goes|do i need|is|are) .. {base=buttercream}",
      "{base=buttercream} (?:from|with|using|out of) {weight}",
      "(?:end up with|must have|to have|want|wanting|need|needing|aim for|aiming for|i make|im making|making|batch of) {weight} .. {base=buttercream}$",
      "{ingredient=(whites|butter|sugar|granulated_sugar)} (?:weight|amount|quantity) .. {base=buttercream}",
      "{base=buttercream} .. (?:what|whats) (?:goes|go) in",
      "ingredients .. {base=buttercream}",
      "{base=buttercream} .. ingredients",
      "{weight} (?:of )?{base=buttercream} (?:please|pls)$",
    ],
    [
      3,
      "how (?:hot|warm) .. {ingredient=whites}",
      "(?:temp\\S*|how (?:hot|warm)) .. (?:bain marie|double boiler|water bath|bain-marie)",
      "{ingredient=whites} .. (?:how hot|what temp\\S*)",
      "(?:what|which) temp\\S* .. {ingredient=whites}",
      "heat .. {ingredient=whites}",
    ],
    [
      7,
      "{base=buttercream} .. \\S*sticks?<volume> .. {ingredient=butter}",
      "\\S*sticks?<volume> .. {ingredient=butter} .. {base=buttercream}",
      "{base=buttercream} .. (?:have|got) \\S*sticks?<volume>",
      "\\S*sticks?<volume> .. {ingredient=butter} .. {ingredient=whites} .. {base=buttercream}",
      "{base=buttercream} (?:off|from|with|using|out of) {weight} (?:of )?{ingredient=whites}",
    ],
    [5, "^(?:and |now |make )*{base=buttercream} for {weight}(?: [?])?$"],
    [6, "{base=buttercream} (?:from|with|using|out of|off) {number} (?:egg )?{ingredient=(whites|egg)}"],
    // its kind is named only where it is to be made
    [
      4,
      "^(?:(?:please|ok|and|now) )*{weight} (?:of )?(?:swiss|italian|meringue)\\S*<base=buttercream>(?: please| pls)?$",
    ],
    [
      3.5,
      "{ingredient=whites} .. {ingredient=(sugar|granulated_sugar)} .. {ingredient=butter} .. (?:for|in) (?:all of )?(?:it|that|this)",
    ],
    [1, "{base=buttercream}", "{ingredient=butter}", "{ingredient=whites}"],
    [
      -4,
      "{dose}",
      "{taste} .. {base=buttercream} (?:how|hw)",
      "{symptom}",
      "(?:note|log) ",
      "{volume}",
      "split",
      "divide",
      "label",
      "(?:cost|price|margin)",
      "how long",
      "save recipe",
      "{base=(ganache|batter)}",
      "{base=buttercream} ring",
      "{count=macarons} .. {base=buttercream} ring",
    ],
    [
      -2,
      "{taste}",
      "almond",
      "{ingredient=almond_flour}",
      "{ingredient=powdered_sugar}",
      "{percent}",
      "what temp\\S* .. bake",
      "{when}",
      "(?:ready|due|by) {when}",
    ],
  ),
  // "found another, so three sticks": butter
  goesOn: cues([8, "\\S*sticks?<volume"]),
  examples: [
    { say: "smbc from 90 g whites", inputs: { whites_g: 90 } },
    {
      say: "400 g butter for swiss meringue buttercream, how much sugar and whites",
      inputs: { butter_g: 400 },
    },
    { say: "600 g swiss meringue buttercream, what goes in", inputs: { total_g: 600 } },
    { say: "buttercream with 4 egg whites", inputs: { whites_count: 4 } },
    { say: "how much butter do i need for buttercream with 150 g sugar", inputs: { sugar_g: 150 } },
  ],
  elsewhere: [
    { say: "I have 230 g buttercream, how much flavor?", tool: "dose" },
    { say: "my buttercream looks curdled", tool: "trouble" },
    { say: "120 g egg whites, what do i need of the rest", tool: "scale" },
  ],
  rivals: [["whites_g", "sugar_g", "butter_g", "total_g", "whites_count", "macarons"], ["asks_heat"]],
  read,
  compute,
});

const partOf: Record<string, Part> = {
  whites: "whites",
  egg: "whites",
  "pasteurised whites": "whites",
  sugar: "sugar",
  "granulated sugar": "sugar",
  butter: "butter",
  "salted butter": "butter",
};

const slots = ["whites_g", "sugar_g", "butter_g", "total_g", "whites_count", "macarons"] as const;
type Slot = "whites_g" | "sugar_g" | "butter_g" | "total_g";

/** "and if I soften only 250 g", after a weight of butter: butter again, unless it is nearer to what that made in all. */
function likelier(slot: (typeof slots)[number], before: number, grams: number): Slot {
  const part = buttercreamParts.find((each) => `${each.name}_g` === slot);
  if (!part) return "total_g";
  const total = before * (buttercreamParts.reduce((sum, each) => sum + each.parts, 0) / part.parts);
  const away = (from: number) => Math.abs(Math.log(grams / from));
  return away(before) <= away(total) ? (slot as Slot) : "total_g";
}

/** Buttercreams without meringue, named before or behind: "french buttercream", "buttercream, french style". */
const kinds = "french|german|american|russian|ermine|custard|pate a bombe|yolk";
const otherKind = new RegExp(
  `\\b(${kinds})(?: (?:style|type))? (?:butter ?cream|b ?c\\b)|\\bbutter ?cream,? (${kinds}) (?:style|type)\\b`,
);

function read(reading: Reading, memory: Memory): Partial<Inputs> {
  const out: Partial<Inputs> = {};
  const other = otherKind.exec(reading.text)?.slice(1).find(Boolean);
  if (other) out.other = other;
  const before =
    memory.follows && memory.last?.tool === "buttercream"
      ? (memory.last.inputs as Partial<Inputs>)
      : undefined;
  const weightBefore = before && slots.find((each) => each.endsWith("_g") && before[each] !== undefined);
  // "12 oz" alone takes the place of what was said; "and for 600 g" may be of the whole
  const nearest = (slot: (typeof slots)[number], grams: number) =>
    says(reading, /(?:^| )(?:for|make|makes|making|total|altogether|want|need)(?: |$)/)
      ? likelier(slot, before?.[slot] ?? grams, grams)
      : (slot as Slot);
  for (const { grams, thing } of weighed(reading)) {
    const part = partOf[thing?.ingredient ?? ""];
    if (
      !part &&
      !thing &&
      reading.things.filter((each) => partOf[each.ingredient ?? ""]).length === 1 &&
      !says(reading, /how much|in all|total/)
    ) {
      // "one block of butter, 225 g"
      out[
        `${partOf[reading.things.find((each) => partOf[each.ingredient ?? ""])?.ingredient ?? ""] ?? "butter"}_g`
      ] ??= grams;
    } else if (part) out[`${part}_g`] ??= grams;
    else if (!thing && weightBefore) out[nearest(weightBefore, grams)] ??= grams;
    else if (thing?.base === "buttercream" || thing?.base === "filling" || !thing) out.total_g ??= grams;
  }
  // "smbc, i have 3 sticks": of butter
  const sticks = reading.amounts.find((each) => each.unit === "stick" && !each.of?.ingredient);
  const butter = sticks && gramsOfVolume("butter", sticks.value, "stick");
  if (butter && Object.keys(out).length === 0) return { butter_g: butter.grams };
  const part = reading.amounts.find(
    (each) =>
      each.dim === "number" && (each.fraction || each.unit === "times") && !isOfQuality(reading, each),
  );
  if (part && before && Object.keys(out).length === 0) {
    const slot = slots.find((each) => before[each] !== undefined);
    if (slot) return { [slot]: (before[slot] ?? 0) * part.value };
  }
  const bare = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.of && !each.fraction,
  );
  if (bare && before && Object.keys(out).length === 0) {
    if (says(reading, /(?:^| )(?:total|altogether|in all)(?: |$)/)) return { total_g: bare.value };
    const slot = slots.find((each) => before[each] !== undefined);
    if (slot) return { [slot]: bare.value };
  }
  const whites = reading.amounts.find(isWhitesCount);
  if (whites) out.whites_count = whites.value;
  const macarons = reading.amounts.find((each) => each.of?.count === "macarons" && each.dim === "number");
  if (macarons && Object.keys(out).length === 0) out.macarons = macarons.value;
  // "smbc for 24": no bowl holds so few grams
  const few = /<base=buttercream> for \S*<number>(?: (?:please|pls))?(?: \?)?$/.test(reading.mask)
    ? reading.amounts.find((each) => each.dim === "number" && !each.of && each.value >= 6 && each.value <= 60)
    : undefined;
  if (few && Object.keys(out).length === 0) out.macarons = few.value;
  if (says(reading, /how (?:hot|warm)|temp/) && Object.keys(out).length === 0) out.asks_heat = true;
  const place = /(?:^| )(?:ring|border|rim|dam)(?: |$)/.test(reading.mask)
    ? "ring"
    : /(?:^| )(?:center|centre|middle|core)(?: |$)/.test(reading.mask)
      ? "center"
      : undefined;
  const share = memory.table.parts?.find((each) => each.name === place);
  if (share && Object.keys(out).length === 0) return { total_g: share.grams };
  const mass = memory.table.mass;
  const points =
    pointsBack(reading) ||
    says(reading, /that much|the lot|all of/) ||
    mass?.thing === "filling" ||
    // how much of it is to be made has just been said
    (memory.last?.tool === "fill" && mass?.thing === "buttercream");
  if (
    Object.keys(out).length === 0 &&
    mass &&
    points &&
    (mass.thing === "buttercream" || reading.things.some((each) => each.base === "buttercream"))
  ) {
    const part = partOf[mass.thing];
    if (part) out[`${part}_g`] = mass.grams;
    else out.total_g = mass.grams;
  }
  return out;
}

function compute(said: Inputs, world: World): Outcome {
  if (said.other)
    return {
      status: "declined",
      headline: `I have the parts of meringue buttercream only (whites, sugar, butter), none for ${said.other} buttercream. Save your recipe and I scale it.`,
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
  return {
    status: "answered",
    headline: `${lines.map(({ name, grams }) => `${name} ${weight(grams, world.bench.scale_g)} g`).join(", ")}: ${weight(total, world.bench.scale_g)} g buttercream`,
    figures: [
      ...lines.map(({ name, grams }) => ({ name, value: grams, unit: "g" })),
      { name: "total", value: total, unit: "g" },
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
    ],
    leaves: { mass: { grams: total, thing: "buttercream" }, filling: "buttercream", recipe: lines },
  };
}

/** Which part was given, in g; of several the one that makes least, so that nothing runs out. */
function given_g(
  said: Inputs,
  world: World,
): { part: Part | "total"; grams: number; assumed: string[]; taught?: Lesson[] } | undefined {
  if (said.macarons !== undefined) {
    const size = sizing(undefined, world.bench);
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
