/** "my sister set 50 minutes on hers, set 35 minutes on mine", "mum's mat has 35 circles, mine has 24": theirs is told only. */
import { wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { type Told, toldIn } from "./clauses-told.ts";
import { amountAt, lineOf, textFrom } from "./telling.ts";

const asked = /(?:^| )(?:set|start|put|timer|alarm|give|run|time|remind|stick|pop)(?: |$)/;
const wanting = /(?:^| )(?:asks?|asked|wants?|wanted|needs?|needed|told me|for her|for him|for them)(?: |$)/;
/** "the recipe says 30 min". */
const page =
  /^(?:(?:and|but|so|ok) )*(?:the|my|this|her) (?:recipe|book|card|pack|packet|box|video|instructions?) (?:says?|said|wants?|gives?|has|have|reads?|goes)(?: |$)/;

const hasTime = (items: readonly Item[], { from, to }: Told): boolean =>
  items.some((_, at) => at >= from && at < to && amountAt(items, at)?.dim === "time");

/** Where the one number without a unit stands in what is told of the baker's own. */
function bareIn(items: readonly Item[], rest: readonly Told[]): number | undefined {
  const found = items.flatMap((_, at) => {
    const amount = amountAt(items, at);
    const isBare = amount?.dim === "number" && amount.unit === "" && !amount.fraction;
    return isBare && rest.some(({ from, to }) => at >= from && at < to) ? [at] : [];
  });
  const part = rest.find(({ from, to }) => found[0] !== undefined && found[0] >= from && found[0] < to);
  return found.length === 1 && part && (part.owner === "me" || ownTime.test(part.line))
    ? found[0]
    : undefined;
}
const ownTime = /(?:^| )(?:mine|i|we|my|ours?)(?: |$)/;

const unitOf = (items: readonly Item[], parts: readonly Told[]): string =>
  parts
    .flatMap(({ from, to }) => items.slice(from, to))
    .flatMap((item) => (item.is === "amount" && item.amount.dim === "time" ? [item.amount.unit] : []))[0] ??
  "min";

const they = /^(?:(?:and|but) )*they .*(?: theirs| their )/;

/** "nan leaves hers 60 min but set 35": the order begins at the joint. */
function atOrder(items: readonly Item[], part: Told): Told[] {
  const at = items.findIndex(
    (item, place) =>
      place > part.from &&
      place < part.to - 1 &&
      joints.has(wordOf(item)) &&
      asked.test(wordOf(items[place + 1])),
  );
  if (at < 0) return [part];
  return [
    { ...part, to: at, line: lineOf(items, part.from, at) },
    { from: at, to: part.to, line: lineOf(items, at, part.to), owner: undefined },
  ];
}
const joints = new Set("but and so".split(" "));

/** The turn without timers that are somebody else's; undefined where none of the baker's own is asked for. */
export function withoutTheirTimers(text: string, items: readonly Item[]): string | undefined {
  if (/\b(?:timers|both|each|two|all|notes?|log|batch)\b/.test(text)) return undefined;
  const parts = toldIn(items).flatMap((part) => atOrder(items, part));
  const theirs = parts.filter(
    (part) =>
      (part.owner === "other" || they.test(part.line) || page.test(part.line)) &&
      hasTime(items, part) &&
      !wanting.test(part.line),
  );
  const rest = parts.filter((part) => !theirs.includes(part));
  if (theirs.length === 0 || !rest.some((part) => asked.test(part.line))) return undefined;
  // "my neighbour sets 20 min, mine bake 14": in the unit of theirs
  const bare = rest.some((part) => hasTime(items, part)) ? undefined : bareIn(items, rest);
  if (bare === undefined && !rest.some((part) => hasTime(items, part))) return undefined;
  const unit = unitOf(items, theirs);
  return rest
    .map((part) => {
      const isBare = bare !== undefined && bare >= part.from && bare < part.to;
      const said = isBare
        ? `${textFrom(text, items, part.from, bare + 1)} ${unit} ${textFrom(text, items, bare + 1, part.to)}`.trim()
        : textFrom(text, items, part.from, part.to);
      return said.replace(/^(?:and|but|so|while) /, "");
    })
    .join(", ")
    .replace(/\bmine (?:should be|is|needs|gets|wants|takes)\b/, "timer for")
    .replace(/\b(?:set|start|give|run) mine(?: to| for| at)?(?= )/, "set a timer for");
}

const gear = /\b(?:mats?|ovens?|templates?)\b/;
const isAsked = /\?|\b(?:how|what|which|when|why|timer)\b/;

/** The turn without mats and ovens of others; undefined where none of the baker's own is told beside them. */
export function withoutTheirGear(text: string, items: readonly Item[]): string | undefined {
  const thing = gear.exec(text)?.[0];
  if (thing === undefined || isAsked.test(text)) return undefined;
  const parts = toldIn(items);
  const counted = (part: Told) => items.slice(part.from, part.to).some((item) => item.is === "amount");
  const theirs = parts.filter((part) => part.owner === "other");
  const mine = parts.filter((part) => part.owner === "me" && counted(part));
  const [own, ...more] = mine;
  if (!own || more.length > 0 || !theirs.some(counted)) return undefined;
  const rest = parts.filter((part) => part.owner !== "me" && part.owner !== "other");
  // "thats hers", and nothing with a number
  if (rest.some(counted)) return undefined;
  const said = textFrom(text, items, own.from, own.to).replace(/^(?:and|but|so|while|whereas) /, "");
  const named = gear.test(said) ? said : said.replace(/\bmine\b/, `my ${thing}`);
  return /^mat/.test(thing) && /\d$/.test(named) ? `${named} circles` : named;
}
