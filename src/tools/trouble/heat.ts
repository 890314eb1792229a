/** A heat that was told beside a fault: the step down is taken from it, and not from the book's oven. */
import type { TroubleRow } from "../../../data/rules/troubles.ts";
import type { Reading } from "../contract/index.ts";
import { celsius } from "../lib/units.ts";

/** The lowest and highest an oven is set to for shells, in °C and, as a bare number, in °F. */
const inC = [100, 230] as const;
const inF = [231, 450] as const;

/** The oven's heat in °C, where the sentence tells one; nothing where it doesn't. Pure. */
export function ovenSaid({ amounts, text }: Reading): { oven_c?: number } {
  const said = amounts.find(
    ({ dim, unit, fraction, of, at }) =>
      dim === "temperature" ||
      (dim === "number" &&
        unit === "" &&
        !fraction &&
        !of &&
        /\b(?:at|on|to|is|was|oven|temp\w*|temperature) $/.test(text.slice(0, at[0]))),
  );
  if (!said) return {};
  const isF = said.dim === "number" && said.value >= inF[0] && said.value <= inF[1];
  const oven_c =
    said.dim === "temperature"
      ? celsius(said.value, said.unit)
      : isF
        ? celsius(said.value, "°F")
        : said.value;
  return oven_c >= inC[0] && oven_c <= inC[1] ? { oven_c } : {};
}

const step = /^10 °C less \(140 °C\)/;

/** The row with "10 °C less" reckoned from the heat that was told. */
export function fromHeat(row: TroubleRow, oven_c: number | undefined): TroubleRow {
  if (oven_c === undefined) return row;
  const lower = Math.round(oven_c - 10);
  return {
    ...row,
    causes: row.causes.map((each) =>
      step.test(each.change)
        ? {
            ...each,
            change: each.change.replace(step, `10 °C less (${lower} °C)`),
            ...(each.figure ? { figure: { ...each.figure, value: lower } } : {}),
          }
        : each,
    ),
  };
}
