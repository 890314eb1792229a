/**
 * "lemon at 3.5 then", with a timer or another flavor between: a share, since nobody doses at so many grams; of the bowl
 * that the same flavor was asked for.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Reading, Span, Thing } from "../../tools/contract/index.ts";
import { isFlavor } from "./into-part.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

/** No share of a table's row is more than this (a nut paste goes up to 20 %): a heat or a weight is meant. */
const most = 20;
const at =
  "(?:(?:only|just|make|do|try|rather|lets|have|want|i|id|like|go|with|is|it|so) )*at (?:about |only |just )?";
const tail = "(?: (?:%|percent|then|instead|please|pls|now|rather|after all|this time))*[ .?!]*$";
const pattern = new RegExp(`^${opening}(?:the |that |my |with )?@ (?:one )?${at}#${tail}`);

interface Share {
  value: number;
  flavor: Thing;
}

/** "at 4": a number that could be an hour, and isn't right behind a dose. */
const hour = /^(?:at )?(\d{1,2})$/;

/** The one number of a sentence, with where it stands. */
function numberIn({ amounts, whens }: Reading, isDose: boolean): { value: number; at: Span } | undefined {
  const [only, ...others] = amounts;
  const [when, ...later] = whens;
  if (when && later.length === 0 && amounts.length === 0 && isDose) {
    const [, digits = ""] = hour.exec(when.text) ?? [];
    return digits === ""
      ? undefined
      : { value: Number(digits), at: [when.at[1] - digits.length, when.at[1]] };
  }
  if (!only || others.length > 0 || when) return undefined;
  const isShare = only.dim === "percent" || (only.dim === "number" && only.unit === "" && !only.fraction);
  return isShare && only.high === undefined ? { value: only.value, at: only.at } : undefined;
}

function shareSaid(reading: Reading, isDose: boolean): Share | undefined {
  const { text, things } = reading;
  const only = numberIn(reading, isDose);
  const [flavor, ...more] = things.filter(isFlavor);
  if (!only || !flavor || more.length > 0 || only.value <= 0 || only.value > most) return undefined;
  if (things.some(({ base, count, step }) => base ?? count ?? step)) return undefined;
  const put = spaced(
    `${text.slice(0, flavor.at[0])}@${text.slice(flavor.at[1], only.at[0])}#${text.slice(only.at[1])}`,
  );
  return pattern.test(put) ? { value: only.value, flavor } : undefined;
}

/** Undefined where no flavor stands at a number. Pure. */
export function shareNamed(
  reading: Reading,
  { last, past = [] }: State,
): { text: string; topic?: Topic } | undefined {
  const said = last && shareSaid(reading, last.tool === "dose");
  if (!said) return undefined;
  const { value, flavor } = said;
  const topic = past.findLast(
    ({ tool, inputs }) =>
      tool === "dose" &&
      (flavor.taste ? inputs.taste === flavor.taste : inputs.dose === flavor.dose) &&
      typeof inputs.base_g === "number",
  );
  if (topic) return { text: `make it ${value} percent`, topic };
  return last.tool === "dose" ? { text: `${flavor.text} at ${value} percent` } : undefined;
}

/** "raspberry at 4.5", where the bowl was asked for: a share, and not so many grams of it. */
export function shareInstead(reading: Reading, { pending }: State): string | undefined {
  const said = pending?.tool === "dose" ? shareSaid(reading, true) : undefined;
  return said && `${said.flavor.text} at ${said.value} percent`;
}
