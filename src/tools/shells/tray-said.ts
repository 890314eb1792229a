/** "12 shells per tray, how many trays for 40 macarons": how many go on one tray, said with the question. */
import type { Amount, Reading } from "../contract/index.ts";

const behind =
  /^ ?(?:\S+ )?(?:per|a|on (?:a|each|one|every|the)|to (?:a|each|the)|each) (?:baking )?(?:tray|sheet|mat|pan)/;
const shellsBefore = /(?:tray|sheet|mat|pan)s? (?:takes?|holds?|fits?|has|have|gets?) $/;
const before =
  /(?:each|every|a|one) (?:baking )?(?:tray|sheet|mat|pan) (?:is |has |holds |takes |fits |= ?)?$/;

const mayBeOnTray = ({ dim, unit, of }: Amount): boolean =>
  dim === "number" && unit === "" && (!of || of.count === "shells" || of.count === "trays");

/** The number belongs to the tray only where another one says how many there are in all. */
export function onTraySaid({ amounts, text }: Reading): number | undefined {
  const number =
    amounts.find((each) => mayBeOnTray(each) && behind.test(text.slice(each.at[1]))) ??
    // "if one tray takes 28 shells"
    amounts.find(
      (each) =>
        each.dim === "number" && each.of?.count === "shells" && shellsBefore.test(text.slice(0, each.at[0])),
    ) ??
    // "each tray 25 how many trays"
    amounts.find((each) => mayBeOnTray(each) && before.test(text.slice(0, each.at[0])));
  const another = amounts.some((each) => each !== number && each.dim === "number" && each.of?.count);
  return another ? number?.value : undefined;
}
