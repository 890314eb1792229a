/** "is that more than 600 g of batter?": the answer once more, held against what was named. */
import type { Figure, Outcome } from "../tools/contract/index.ts";
import { plain, weight } from "../tools/lib/show.ts";

/** What an answer is held against: grams, or so many of something; with no name, of what stands first. */
export interface Against {
  value: number;
  /** "g", or what is counted; empty for a bare number. */
  unit: string;
}

/** What a weight that nobody names is of, the whole before a part of it. */
const wholes = ["total", "batter", "filling", "base", "result"];

function figureFor({ figures = [], headline }: Outcome, { unit }: Against): Figure | undefined {
  // "is it over 60?": what the answer says first
  if (unit === "")
    return figures.find(
      ({ value, unit: own }) => value !== undefined && headline.startsWith(`${plain(value)} ${own}`),
    );
  const alike = figures.filter((each) => each.unit === unit);
  const named = wholes.map((name) => alike.find((each) => each.name === name)).find(Boolean);
  return unit === "g" ? (named ?? (alike.length === 1 ? alike[0] : undefined)) : alike[0];
}

/** The outcome with the comparison first; as it is where no one figure can be meant. Pure. */
export function compared(outcome: Outcome, against: Against): Outcome {
  const figure = outcome.status === "answered" ? figureFor(outcome, against) : undefined;
  const low = figure?.value ?? figure?.low;
  const high = figure?.value ?? figure?.high;
  if (!figure || low === undefined || high === undefined) return outcome;
  const shown = (value: number) =>
    figure.unit === "g" ? `${weight(value)} g` : `${plain(value)} ${figure.unit}`.trim();
  // "less than 264 g: 264 g" would say nothing
  const isEqual = (value: number) => shown(value) === shown(against.value);
  const own = low === high ? shown(low) : `${shown(low)} to ${shown(high)}`;
  const than = shown(against.value);
  const verdict =
    isEqual(low) && isEqual(high)
      ? `Just ${than}`
      : low > against.value
        ? `More than ${than}: ${own}`
        : high < against.value
          ? `Less than ${than}: ${own}`
          : `${than} lies within ${own}`;
  return { ...outcome, headline: `${verdict}. ${outcome.headline}` };
}
