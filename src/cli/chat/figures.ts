/** The numbers of an answer that its headline doesn't say already, a line each, names and units aligned. */
import type { Figure } from "../../tools/contract/index.ts";
import { lengthText } from "../../tools/lib/days.ts";
import { plain, weight } from "../../tools/lib/show.ts";
import { padded, printable, width } from "./text.ts";
import { wrapped } from "./wrap.ts";

const indent = "  ";

/** Lines for the figures that aren't in the headline; none when it has them all. */
export function figureLines(figures: readonly Figure[], headline: string, columns: number): string[] {
  const rows = figures
    .filter((figure) => !isSaid(figure, figures, headline))
    .map((figure) => ({ name: printable(figure.name), ...amountOf(figure) }));
  const nameSize = Math.max(0, ...rows.map((row) => width(row.name)));
  const numberSize = Math.max(0, ...rows.map((row) => width(row.number)));
  return rows.flatMap((row) => {
    const number = " ".repeat(numberSize - width(row.number)) + row.number;
    const line = `${indent}${padded(row.name, nameSize)}  ${number}${row.rest}`;
    if (width(line) <= columns) return [line];
    return wrapped(`${row.name} ${row.number}${row.rest}`, columns, {
      first: indent,
      rest: indent.repeat(2),
    });
  });
}

/** The number that stands in the column, and what follows it: unit and range. */
function amountOf(figure: Figure): { number: string; rest: string } {
  const { value, low, high } = figure;
  const unit = unitOf(figure);
  const range = low === undefined || high === undefined ? "" : rangeOf(figure, low, high);
  // "5 s left", and no twelfth of a minute
  if (figure.unit === "min" && value !== undefined && !range && !Number.isInteger(value))
    return { number: lengthText(value), rest: "" };
  if (isLong(figure))
    return { number: `${plain((low ?? 0) / 60)} to ${plain((high ?? 0) / 60)}`, rest: " h" };
  if (value === undefined) return { number: range || ends(figure), rest: range || ends(figure) ? unit : "" };
  return { number: shown(value, figure.unit), rest: `${unit}${range ? ` (${range})` : ""}` };
}

/** From two hours on a range of minutes in whole hours is said in those. */
const isLong = ({ unit, value, low, high }: Figure): boolean =>
  unit === "min" &&
  value === undefined &&
  low !== undefined &&
  high !== undefined &&
  low >= 120 &&
  low % 60 === 0 &&
  high % 60 === 0 &&
  low !== high;

function rangeOf(figure: Figure, low: number, high: number): string {
  const [from, to] = [shown(low, figure.unit), shown(high, figure.unit)];
  return from === to ? from : `${from} to ${to}`;
}

/** A range that is open at one end. */
function ends(figure: Figure): string {
  if (figure.low !== undefined) return `from ${shown(figure.low, figure.unit)}`;
  return figure.high !== undefined ? `up to ${shown(figure.high, figure.unit)}` : "";
}

/** A ratio's ":1" sits at its number, other units a space away; "aw 0.89" needs no second aw, and one is one macaron. */
function unitOf({ name, unit, value, low, high }: Figure): string {
  if (unit === "" || unit.startsWith(":")) return unit;
  if (unit === name && !/s$/.test(unit)) return "";
  const isOne = shown(value ?? high ?? low ?? 0, unit) === "1" && (low ?? high) === undefined;
  return ` ${printable(isOne ? unit.replace(counted, "") : unit)}`;
}

/** What makes many of what is counted: "trays", "boxes"; not the s of seconds. */
const counted = /(?<=ch|x)es$|(?<=[a-z]{3})s$/;

const money = /^[A-Z]{3}$/;

function shown(value: number, unit: string): string {
  if (unit === "g") return weight(value);
  return money.test(unit) ? value.toFixed(2) : plain(value);
}

/** Whether the headline has all numbers of a figure with its unit, and it is clear that it means this one. */
function isSaid(figure: Figure, all: readonly Figure[], headline: string): boolean {
  if (figure.unit === "min" && figure.value !== undefined && headline.includes(lengthText(figure.value)))
    return true;
  const { low = 0, high = 0 } = figure;
  if (isLong(figure) && new RegExp(`\\b${low / 60}(?: h)?\\b.*\\b${high / 60} h\\b`).test(headline))
    return true;
  const numbers = [figure.value, figure.low, figure.high].filter((each) => each !== undefined);
  const said = headline.match(/\d+(?:\.\d+)?/g) ?? [];
  const inIt = numbers.every((number) => said.some((token) => rounds(number, token)));
  if (!inIt || numbers.length === 0 || !hasUnit(headline, figure.unit))
    return inIt && numbers.length > 0 && all.length === 1;
  const alone = all.filter((each) => each.unit === figure.unit).length === 1;
  return alone || headline.toLowerCase().includes(figure.name.toLowerCase());
}

/** Whether a token is the number, at the number of decimals that the token has. */
function rounds(number: number, token: string): boolean {
  const decimals = token.split(".")[1]?.length ?? 0;
  const off = Math.abs(Math.abs(number) - Number(token));
  return off <= 0.5 * 10 ** -decimals + 1e-9 && off <= 0.05 * Math.abs(number) + 1e-9;
}

/** Whether the unit stands there as a word of its own, one or many of it. */
function hasUnit(headline: string, unit: string): boolean {
  if (!isLetter(unit[0])) return headline.includes(unit);
  const word = unit.replace(/s$/, "");
  for (let at = headline.indexOf(word); at >= 0; at = headline.indexOf(word, at + 1)) {
    const end = at + word.length;
    const ends = [end, ...(word !== unit && headline[end] === "s" ? [end + 1] : [])];
    if (!isLetter(headline[at - 1]) && ends.some((each) => !isLetter(headline[each]))) return true;
  }
  return false;
}

/** Only letters have two cases; a regular expression for all of Unicode's takes long to compile. */
const isLetter = (sign: string | undefined): boolean => sign?.toLowerCase() !== sign?.toUpperCase();
