/** The lines of a mix: as said, by the book's parts, or of a saved recipe. Weights in g. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import { ratios } from "../../../data/rules/ganache.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import type { Line } from "../lib/composition.ts";
import { plain } from "../lib/show.ts";
import type { GanacheInputs } from "./ganache.ts";

export interface Mix {
  lines: Line[];
  /** What was taken as usual to get there. */
  assumed: string[];
  /** "ganache", "buttercream" or a recipe's name. */
  thing: string;
}

const listWanted = "What is in it, in grams? For example 110 g white chocolate, 70 g cream, 25 g butter.";
/** Of a mix that nobody weighed the shares are the same at any weight. */
const anyWeight_g = 100;

/** What the question is about, with what is changed in it; asks where neither weights nor a kind were said. */
export function mixOf(inputs: GanacheInputs, world: World): Mix | Outcome {
  const mix = wholeMix(inputs, world);
  if ("status" in mix || !inputs.steps) return mix;
  const lines = inputs.steps.reduce(
    (so, { name, grams, does }) => changed(so, lineNamed(so, name), does === "less" ? -grams : grams),
    mix.lines,
  );
  const gone = lines.find((each) => each.grams < 0);
  return gone
    ? { status: "impossible", headline: `There isn't so much ${gone.name} in it to leave out.` }
    : { ...mix, lines: lines.filter((each) => each.grams > 0) };
}

/** "chocolate" is the one kind that is in it. */
const lineNamed = (lines: readonly Line[], name: string): string =>
  (name === "chocolate" && lines.find((each) => / chocolate$/.test(each.name))?.name) || name;

/** The lines with so many grams more or less of one of them; a new one is added. */
export function changed(lines: readonly Line[], name: string, by_g: number): Line[] {
  const place = lines.findIndex((each) => each.name === name);
  if (place < 0) return [...lines, { name, grams: by_g }];
  return lines.map((each, at) => (at === place ? { ...each, grams: each.grams + by_g } : each));
}

function wholeMix(inputs: GanacheInputs, world: World): Mix | Outcome {
  const { formula, lines, chocolate, base } = inputs;
  const saved = formula
    ? world.formulas.findLast((each) => each.name.toLowerCase() === formula.toLowerCase())
    : undefined;
  if (saved)
    return { lines: saved.lines.map(({ name, grams }) => ({ name, grams })), assumed: [], thing: saved.name };
  if (lines && lines.length > 1) return { lines, assumed: [], thing: base ?? "ganache" };
  if (base === "buttercream") return buttercream(inputs.total_g);
  const chocolate_g = inputs.chocolate_g ?? lines?.find((each) => / chocolate$/.test(each.name))?.grams;
  const cream_g = inputs.cream_g ?? lines?.find((each) => each.name === "cream")?.grams;
  if (chocolate_g !== undefined && cream_g !== undefined) {
    const kind = chocolate ?? "dark";
    return {
      lines: parts(kind, chocolate_g, cream_g),
      assumed: chocolate ? [] : ["dark chocolate"],
      thing: "ganache",
    };
  }
  if (!chocolate && lines?.length === 1) return { lines, assumed: [], thing: lines[0]?.name ?? "" };
  if (!chocolate) return { ...asking(listWanted, "lines"), question: "What is in it, in grams?" };
  const use = inputs.use ?? "piping";
  const ratio = inputs.ratio ?? ratios[chocolate][use].ratio;
  const cream =
    cream_g ??
    (chocolate_g !== undefined ? chocolate_g / ratio : (inputs.total_g ?? anyWeight_g) / (ratio + 1));
  return {
    lines: parts(chocolate, chocolate_g ?? cream * ratio, cream),
    assumed: [
      `${chocolate} chocolate : cream ${plain(ratio)} : 1, ${inputs.ratio ? "as you said" : `for ${use}`}`,
    ],
    thing: "ganache",
  };
}

const parts = (chocolate: string, chocolate_g: number, cream_g: number): Line[] => [
  { name: `${chocolate} chocolate`, grams: chocolate_g },
  { name: "cream", grams: cream_g },
];

function buttercream(total_g = anyWeight_g): Mix {
  const whole = buttercreamParts.reduce((sum, each) => sum + each.parts, 0);
  return {
    lines: buttercreamParts.map(({ name, parts: part }) => ({ name, grams: (total_g * part) / whole })),
    assumed: [
      `${buttercreamParts.map(({ name, parts: part }) => `${name} ${part}`).join(" : ")}, as the book has it`,
    ],
    thing: "buttercream",
  };
}
