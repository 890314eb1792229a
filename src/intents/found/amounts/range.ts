/** From so much to so much. */
import { inBase } from "../../../tools/lib/units.ts";
import type { Token } from "../../text/tokens.ts";
import { type NumberRead, readNumber } from "../numbers.ts";
import { type AmountRead, made, text, type UnitRead } from "./parts.ts";
import { readUnit } from "./unit.ts";

/** "3-5 %", "3 to 5 percent", "half to one percent", "between 100 and 150 g". Low first, or it is a ratio. */
export function readRange(
  tokens: readonly Token[],
  i: number,
  low: NumberRead,
  lowUnit = readUnit(tokens, low.next, low.value),
): AmountRead | undefined {
  const at = lowUnit?.next ?? low.next;
  const between = text(tokens[i - 1]) === "between";
  const joint = text(tokens[at]);
  if (
    !(joint === "-" || joint === "to" || joint === "or" || joint === "till" || (between && joint === "and"))
  )
    return undefined;
  if (joint === "-" && tokens[at]?.gap && tokens[at + 1]?.gap === false) return undefined;
  // "by 1.75 - 60 g whites": the dash begins a list
  if (joint === "-" && text(tokens[i - 1]) === "by") return undefined;
  const high = readNumber(tokens, at + 1);
  if (!high || high.negative || low.negative || high.value <= low.value) return undefined;
  if (joint === "-" && tokens[at]?.gap && low.value > 0 && high.value > 10 * low.value) return undefined;
  const unit = readUnit(tokens, high.next, high.value);
  if (lowUnit && unit && lowUnit.dim !== unit.dim) return undefined;
  if (!unit && !lowUnit)
    return joint === "-" ? made(low.value, "", "number", high.next, { high: high.value }) : undefined;
  const { unit: name, dim } = unit ?? (lowUnit as UnitRead);
  // "14 g to 350 g buttercream": into it
  // "add 4 percent to 300": a share, and what it is of
  if (joint === "to" && dim === "percent" && lowUnit && !unit && high.value > 100) return undefined;
  if (joint === "to" && dim === "weight" && lowUnit && high.value > 8 * low.value) return undefined;
  const scale =
    lowUnit && unit && lowUnit.unit !== unit.unit
      ? inBase(low.value, lowUnit.unit) / inBase(1, unit.unit)
      : low.value;
  return made(scale, name, dim, unit?.next ?? high.next, { high: high.value });
}
