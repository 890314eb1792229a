/** Which paper: said, set on the bench, else what is sold where the baker seems to be. */
import type { Bench, PaperSize, Reading } from "../contract/index.ts";

/** Countries by their money in which a ream is Letter. From memory; everywhere else it is A4 (ISO 216). */
const letterMoney = new Set(["USD", "CAD", "MXN", "PHP", "CLP", "COP"]);

export const paperNames: Record<PaperSize, string> = { a4: "A4", letter: "US Letter" };

/**
 * @param market the market of a label, whose country's paper it is then
 * @returns the size, and what was assumed where nobody said it
 */
export function paperFor(
  said: PaperSize | undefined,
  bench: Bench,
  market?: "us" | "eu",
): { size: PaperSize; assumed: string[] } {
  if (said) return { size: said, assumed: [] };
  if (bench.paper)
    return { size: bench.paper, assumed: [`${paperNames[bench.paper]} paper, as your bench is set`] };
  const place = market ?? bench.market;
  const isLetter = place
    ? place === "us"
    : bench.currency
      ? letterMoney.has(bench.currency)
      : bench.weight_unit === "oz";
  const size = isLetter ? "letter" : "a4";
  return {
    size,
    assumed: [`${paperNames[size]} paper; say "on ${isLetter ? "A4" : "US Letter"}" for the other`],
  };
}

/** "on a4", "us letter", "letter paper". */
export function paperSaid({ text }: Reading): PaperSize | undefined {
  if (/\ba4\b/.test(text)) return "a4";
  return /\b(?:us|american) letter\b|\bletter(?: |-)?(?:size|sized|paper|sheet)\b|\bon (?:us )?letter\b/.test(
    text,
  )
    ? "letter"
    : undefined;
}
