/** "24 lemon and 12 rose macarons": one order, of which so many are of each kind. Its number is their sum. */
import { tastes } from "../../../../data/words/flavors.ts";
import { colors } from "../../../../data/words/things.ts";
import type { Phrase } from "./phrase.ts";
import { countSaid } from "./spelt.ts";

const either = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join("|");
const kinds =
  "(?:[2-9]|two|three|four|five|six|seven|eight) (?:different )?(?:kinds|flavou?rs|colou?rs|sorts|tastes)";
/** All kinds, by a color or a flavor. */
export const kindNames: readonly string[] = [...colors, ...tastes.map(({ taste }) => taste)];
const color = `(?:(?:light|dark|pale|bright|deep) )?(?:${either(colors)})`;
export const kind = `(?:${color}|${either(tastes.map(({ taste }) => taste))})`;
const ones = "(?: (?:macarons?|macaroons?|macs|ones))";
const some = `(\\d{1,3}) (${kind})${ones}?`;
const joint = "(?:,? and |, ?| & | \\+ |,? plus )";

const divisor = (one: number, other: number): number => (other === 0 ? one : divisor(other, one % other));
const parts = new RegExp(`(\\d{1,3}) (${kind})(?![a-z])`, "g");
/** The colors of an order are of its plan. */
const planned = /\b(?:ready|start|order|plan|when|pick(?:ed)? ?up|due|notes?|log)\b/;
const isColor = new RegExp(`^${color}$`);

/** Their sum, with how many there are of each; colored batter is shared out by the shells. */
export function ofKinds(all: readonly (readonly [number, string])[], whole: string): string {
  const counts = all.map(([count]) => count);
  const sum = counts.reduce((before, count) => before + count, 0);
  const names = all.map(([, name]) => name);
  if (!names.every((name) => isColor.test(name)) || planned.test(whole))
    return `${sum} macarons, ${all.map(([count, name]) => `${count} ${name}`).join(" and ")}`;
  // "7:12" would be a time of day
  const ratio = counts.map((count) => count / counts.reduce(divisor));
  return /batter/.test(whole) && ratio.every((each) => each < 10)
    ? `${sum} macarons, ${ratio.join(":")} ${names.join(" and ")}`
    : `${sum} macarons`;
}

export const countsOfKinds = (): readonly Phrase[] => [
  // "three kinds, 12 each: lemon, rose, coffee"
  {
    marks: [" each"],
    from: new RegExp(
      `\\b(${kinds}(?:(?::|,)? [a-z]+(?:(?:,? and|,) [a-z]+)+)?),? (?:with |at |of )?(\\d{1,3})(?: (?:macarons?|macs))? (?:of |for )?each(?: (?:one|kind|flavou?r|colou?r))?(?![a-z])(?! (?:week|day|month|time|side|box|tray))`,
      "g",
    ),
    to: (said, ...found) => {
      const [ways = "", each = ""] = found;
      const many = countSaid(ways.split(" ")[0] ?? "");
      const whole = found.at(-1) ?? "";
      // how many flavors there are is nothing to batter
      const isBatter = /\b(?:batter|shells|trays|whites)\b/.test(whole) && !/filling|colou?r/.test(whole);
      return many > 1 ? `${many * Number(each)} macarons${isBatter ? "" : ` in ${ways}`}` : said;
    },
  },
  {
    marks: [" macaron", " macaroon", " macs"],
    only: (text) => (text.match(/\d [a-z]/g)?.length ?? 0) > 1,
    from: new RegExp(
      `(?<![\\d.,/:-])(?<!\\b\\d{1,3} (?:macarons?|macs)[,:;]? (?:[a-z]+ ){0,2})\\b${some}(?:${joint}${some}){1,4}(?<=(macarons?|macaroons?|macs|ones))(?![a-z])`,
      "g",
    ),
    to: (said, ...found) => {
      const all = [...said.matchAll(parts)];
      // "12 lemon and 12 ones": of the last nobody said what it is
      if (all.length < 2 || !/ (?:macarons?|macaroons?|macs)\b/.test(said)) return said;
      return ofKinds(
        all.map(([, count, name = ""]) => [Number(count), name]),
        found.at(-1) ?? "",
      );
    },
  },
];
