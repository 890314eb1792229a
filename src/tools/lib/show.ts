/** Numbers as the baker reads them. Rounding happens here and nowhere else. */

/** Trims the last bits of binary arithmetic, so that 6.8999999999999995 is given as 6.9. Twelve digits stay. */
export function tidy(value: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(12)) : value;
}

/** How many decimals a weight is shown with: 0.1 g below 20 g, whole grams from there, unless the scale says. */
function decimals(grams: number, scale_g?: number): number {
  if (scale_g !== undefined)
    return (
      [0, 1, 2, 3].find((places) => isWhole(scale_g * 10 ** places)) ??
      Math.max(0, Math.ceil(-Math.log10(scale_g) - 1e-9))
    );
  return Math.abs(grams) < 20 ? 1 : 0;
}

const isWhole = (value: number) => Math.abs(value - Math.round(value)) < 1e-9;

/**
 * A weight for the eye, in g: below 20 g to 0.1 g, from 20 g up to 1 g, or to the step of the baker's scale.
 * @param scale_g what the scale can read, in g
 */
export function weight(grams: number, scale_g?: number): string {
  const step = scale_g ?? (Math.abs(grams) < 20 ? 0.1 : 1);
  const steps = Math.round(tidy(grams / step));
  return trim((steps * step).toFixed(decimals(grams, scale_g)));
}

/** "6.9 to 11.5 g". */
export function weightRange(low: number, high: number, scale_g?: number): string {
  const [from, to] = [weight(low, scale_g), weight(high, scale_g)];
  return from === to ? `${from} g` : `${from} to ${to} g`;
}

/** A plain number with at most `places` decimals and no trailing zeros. */
export function plain(value: number, places = 2): string {
  return trim(tidy(value).toFixed(places));
}

/** A percentage or a pair of them: "3-5 %". */
export function percent(low: number, high = low): string {
  return low === high ? `${plain(low)} %` : `${plain(low)}-${plain(high)} %`;
}

function trim(digits: string): string {
  const short = digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
  return short === "-0" ? "0" : short;
}

/** "a, b and c". */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** "1 tray", "3 trays". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${plain(count)} ${count === 1 ? one : many}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
