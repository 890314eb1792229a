/** Where a dose stands in its range: a scale from nothing, the range filled, a mark above it. */
import type { Answer } from "../../../tools/contract/index.ts";
import { plain } from "../../../tools/lib/show.ts";
import type { Signs } from "../signs.ts";
import { padded, width } from "../text.ts";
import { barCells, leastPlot } from "./bars.ts";

const indent = "  ";

/** A dose in per cent of the base, and the range it should be in. */
interface Dose {
  share: number;
  low: number;
  high: number;
}

/**
 * The plot of an answer that checked or mends a dose; none for any other. The range is the rule's own; where the
 * answer's weights tell another, nothing is drawn: a picture must not say what the numbers don't.
 */
export function dosePlot(answer: Answer, columns: number, signs: Signs): string[] {
  const dose = answer.tool === "dose" && columns >= leastPlot ? doseOf(answer) : undefined;
  if (!dose) return [];
  const { share, low, high } = dose;
  const top = Math.max(high * 1.6, share * 1.1);
  const end = ` ${plain(top, 1)} %`;
  const cells = barCells(columns, indent.length + 2 + end.length);
  const at = (percent: number) => Math.min(cells - 1, Math.round((percent / top) * (cells - 1)));
  const [from, to, here] = [at(low), Math.max(at(low), at(high)), at(share)];
  const scale = Array.from({ length: cells }, (_, cell) =>
    cell >= from && cell <= to ? signs.full : signs.empty,
  );
  const slack = 1e-9;
  const verdict = share < low - slack ? "under" : share > high + slack ? "over" : "within";
  const left = `${indent}0 `;
  const label = `${plain(share)} %, ${verdict}`;
  const over =
    left.length + here + 2 + width(label) < columns
      ? `${" ".repeat(left.length + here)}${signs.mark} ${label}`
      : `${" ".repeat(Math.max(0, left.length + here - 1 - width(label)))}${label} ${signs.mark}`;
  const ends =
    low === high
      ? padded("", left.length + from) + plain(low)
      : `${padded(padded("", left.length + from) + plain(low), left.length + Math.max(to, from + plain(low).length + 1))}${plain(high)}`;
  return [over, `${left}${scale.join("")}${end}`, ends];
}

const leading = /^(\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))? % of the /;

function doseOf({ figures = [], rule }: Answer): Dose | undefined {
  const share = figures.find((each) => each.name === "share" && each.unit === "%")?.value;
  const [, from, to] = leading.exec(rule?.text ?? "") ?? [];
  if (share === undefined || from === undefined) return undefined;
  const [low, high] = [Number(from), Number(to ?? from)];
  const weights = figures.find(
    (each) => each.unit === "g" && each.low !== undefined && each.name !== "add base",
  );
  const told =
    weights?.low !== undefined && weights.high !== undefined ? weights.high / weights.low : high / low;
  return low > 0 && Math.abs(told / (high / low) - 1) < 0.01 ? { share, low, high } : undefined;
}
