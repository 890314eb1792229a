/** Holds an answer against an expectation worked by hand. Weights and times are compared in grams and minutes. */
import type { Answer, Figure } from "../../src/tools/contract/index.ts";

export interface ExpectedFigure {
  /** Part of the figure's name; "|" separates alternatives. */
  name?: string;
  value?: number;
  low?: number;
  high?: number;
  unit?: string;
  /** Relative; one percent unless said. */
  tol?: number;
}

export interface Expected {
  tool?: string;
  status?: string;
  figures?: ExpectedFigure[] | "none";
  has?: string[];
  lacks?: string[];
}

export interface Conversation {
  id: string;
  kind: string;
  now?: string;
  turns: { say: string; expect?: Expected[] }[];
}

const grams: Record<string, number> = { mg: 0.001, g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const minutes: Record<string, number> = { s: 1 / 60, min: 1, h: 60, d: 1440 };

/** A value in its kind's base unit, with that unit's name. */
function based(value: number, unit: string): [number, string] {
  if (grams[unit] !== undefined) return [value * grams[unit], "g"];
  if (minutes[unit] !== undefined) return [value * minutes[unit], "min"];
  return [value, unit.toLowerCase()];
}

const someOf = (alternatives: string, text: string) =>
  alternatives.split("|").some((each) => text.toLowerCase().includes(each.toLowerCase()));

function fits(wanted: ExpectedFigure, got: Figure): boolean {
  if (wanted.name && !someOf(wanted.name, got.name)) return false;
  return (["value", "low", "high"] as const).every((key) => {
    const [want, have] = [wanted[key], got[key]];
    if (want === undefined) return true;
    if (have === undefined) return false;
    const [wantValue, wantUnit] = wanted.unit === undefined ? [want, ""] : based(want, wanted.unit);
    const [haveValue, haveUnit] = wanted.unit === undefined ? [have, ""] : based(have, got.unit);
    return (
      wantUnit === haveUnit &&
      Math.abs(haveValue - wantValue) <= Math.max((wanted.tol ?? 0.01) * Math.abs(wantValue), 1e-9)
    );
  });
}

/** What is wrong with an answer, or nothing. */
export function fault(wanted: Expected, got: Answer | undefined): string | undefined {
  if (!got) return "no answer";
  const all = JSON.stringify(got);
  if (wanted.tool && !wanted.tool.split("|").includes(got.tool))
    return `answered by ${got.tool}: ${got.headline}`;
  if (!(wanted.status ?? "answered").split("|").includes(got.status)) return `${got.status}: ${got.headline}`;
  if (wanted.figures === "none" && got.figures?.length) return `has figures: ${JSON.stringify(got.figures)}`;
  const figures = Array.isArray(wanted.figures) ? wanted.figures : [];
  const missing = figures.find((each) => !(got.figures ?? []).some((figure) => fits(each, figure)));
  if (missing) return `lacks ${JSON.stringify(missing)}, has ${JSON.stringify(got.figures ?? [])}`;
  const unsaid = wanted.has?.find((text) => !someOf(text, all));
  if (unsaid) return `doesn't say "${unsaid}"`;
  const said = wanted.lacks?.find((text) => all.toLowerCase().includes(text.toLowerCase()));
  return said && `says "${said}"`;
}
