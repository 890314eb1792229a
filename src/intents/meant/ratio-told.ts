/** "ganache at 3 to 1 instead": chocolate to cream, where a clock would show three minutes to one. */
import type { Item } from "../found/scan.ts";

/** Nobody makes a ganache of more parts of one to the other (data/rules: 4 at most, with room for her own). */
const ratio = /^(?:[1-5](?:\.\d+)?|one|two|three|four|five|two and a half|three and a half) to (?:1|one)$/;
const ofClock =
  /\b(?:timer|alarm|remind|ring|wake|o'?clock|am|pm|ready|due|start|minutes?|mins?|until|till)\b/;

const isMix = (item: Item): boolean =>
  item.is === "thing" && (item.thing.base === "ganache" || item.thing.chocolate !== undefined);

/** The text with the ratio in signs; undefined where no such moment stands beside a ganache. Pure. */
export function ratioTold(text: string, items: readonly Item[]): string | undefined {
  if (!items.some(isMix) || ofClock.test(text)) return undefined;
  const moment = items.find((item) => item.is === "when" && ratio.test(item.when.text));
  if (moment?.is !== "when") return undefined;
  const [from, to] = moment.when.at;
  const lead = text.slice(0, from).replace(/\bat $/, "");
  return `${lead}${moment.when.text.replace(/ to (?:1|one)$/, " : 1")}${text.slice(to)}`;
}
