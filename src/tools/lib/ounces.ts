/** Weights for a baker whose bench is set to ounces: the ounces first, the grams behind them in brackets. */
import type { Figure, Outcome, Reading, World } from "../contract/index.ts";
import { plain } from "./show.ts";
import { inBase } from "./units.ts";

const ounce_g = inBase(1, "oz");
const weighed = /(?<![\w.])(\d+(?:\.\d+)?)(?: to (\d+(?:\.\d+)?))? g(?![\w%°])/g;

/** Below 20 g a tenth of a gram is shown, which is some thousandths of an ounce. */
const places = (grams: number): number => (grams < 20 ? 3 : 2);

/** "6.9 to 11.5 g flavor" is "0.243 to 0.41 oz (6.9 to 11.5 g) flavor". */
export const withOunces = (text: string): string =>
  text.replace(weighed, (grams: string, low: string, high: string | undefined) => {
    const ounces = (said: string) => plain(Number(said) / ounce_g, places(Number(low)));
    return `${ounces(low)}${high === undefined ? "" : ` to ${ounces(high)}`} oz (${grams.trim()})`;
  });

/** The answer with its weights in ounces, as she asked for them: "and in oz?". */
export const inOunces = (outcome: Outcome): Outcome =>
  outcome.status === "answered"
    ? {
        ...outcome,
        headline: withOunces(outcome.headline),
        ...(outcome.figures ? { figures: outcome.figures.map(figureInOunces) } : {}),
      }
    : outcome;

function figureInOunces(figure: Figure): Figure {
  if (figure.unit !== "g") return figure;
  const { value, low, high } = figure;
  return {
    ...figure,
    ...(value === undefined ? {} : { value: value / ounce_g }),
    ...(low === undefined ? {} : { low: low / ounce_g }),
    ...(high === undefined ? {} : { high: high / ounce_g }),
    unit: "oz",
  };
}

/** Calculators whose headline is a weight to weigh out; others speak of settings, or in her own words. */
export const weighing: ReadonlySet<string> = new Set([
  "dose",
  "scale",
  "shells",
  "split",
  "fill",
  "ganache",
  "buttercream",
  "buy",
]);

const endsInOunces = /[a-z>,] (?:in|as) \S*<unit=oz>(?: (?:please|pls|then|instead|now))*(?: \?)?$/;

/** "batter for 84 shells in ounces": the unit is said with the question, and none of its answer's weights has it yet. */
export const asksOunces = (
  tool: string,
  { mask }: Reading,
  { figures = [] }: Outcome,
  { bench }: Pick<World, "bench">,
): boolean =>
  weighing.has(tool) &&
  bench.weight_unit !== "oz" &&
  endsInOunces.test(mask) &&
  figures.every(({ unit }) => unit !== "oz");

/** The answer with its headline in the unit of the bench. Figures stay in grams. */
export const inBenchUnit = (tool: string, outcome: Outcome, { bench }: Pick<World, "bench">): Outcome =>
  bench.weight_unit === "oz" && outcome.status === "answered" && weighing.has(tool)
    ? { ...outcome, headline: withOunces(outcome.headline) }
    : outcome;
