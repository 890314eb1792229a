/** "360 g buttercream, half lemon, half raspberry": one bowl shared out between flavors, a dose for each share. */
import type { Amount, Reading, Thing } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import type { Draft } from "./draft.ts";
import { isFlavor, nameOf } from "./flavor-said.ts";

const restWord = /\b(?:rest|remainder|remaining|others?)\b/;

/** @returns a draft for each flavor; undefined where there is no single bowl or its shares don't add up */
export function readSharesOf(reading: Reading): Draft[] | undefined {
  const bowls = weighed(reading).filter((each) => !each.thing || each.thing.base);
  const [bowl, ...others] = bowls;
  const shares = reading.amounts.filter(
    ({ dim, fraction, value }) =>
      (dim === "number" && fraction !== undefined && value < 1) || (dim === "percent" && value >= leastShare),
  );
  if (!bowl || others.length > 0 || shares.length === 0 || bowl.thing?.base === "batter") return undefined;
  const all = reading.things.filter((each) => isFlavor(each) && each.taste);
  // "how much rose flavor": named once more, where it is asked for
  const asked = all.filter((each) => isAskedFor(each, all, reading));
  const tastes = all.filter((each) => !asked.includes(each));
  const rest = restWord.exec(reading.text)?.index;
  const sizes = tastes.map((taste) => shareOf(taste, tastes, shares, rest));
  const known = sizes.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  const open = sizes.filter((each) => each === undefined).length;
  if (tastes.length < 2 || open > 1 || (open === 1) !== (rest !== undefined)) return undefined;
  if (known > 1 + slack || (open === 0 && known < 1 - slack) || !asksFlavor(reading)) return undefined;
  const base = bowl.thing?.base ?? reading.things.find((each) => each.base)?.base;
  const shareAt = (at: number) => sizes[at] ?? 1 - known;
  const shared = tastes.map((taste, at) => ({ name: taste.taste ?? "", grams: bowl.grams * shareAt(at) }));
  const wanted = asked.length > 0 ? asked : tastes;
  return wanted.map((taste) => {
    const share = shareAt(tastes.findIndex((each) => each.taste === taste.taste));
    return {
      base_g: bowl.grams * share,
      whole_g: bowl.grams,
      share: share * 100,
      shared,
      ...(base ? { base } : {}),
      ...nameOf(taste, reading),
    };
  });
}

/** Behind "how much", of a taste that was named before with its share. */
const isAskedFor = (thing: Thing, all: readonly Thing[], { text }: Reading): boolean =>
  all.some((other) => other.at[0] < thing.at[0] && other.taste === thing.taste) &&
  /\b(?:how (?:much|many)|what|whats|amount of|grams of|dose of)\b/.test(text.slice(0, thing.at[0]));

/** Below this a percentage is a dose, no share of a bowl. */
const leastShare = 15;
const slack = 0.011;

const asksFlavor = (reading: Reading) =>
  says(reading, /(?:^| )(?:how much|flavou?r|flavou?rs|dose|each)(?:<| |$)|<dose=flavor/);

/** The share that stands beside a taste: between the taste before and it, else right behind it. */
function shareOf(
  taste: Thing,
  tastes: readonly Thing[],
  shares: readonly Amount[],
  rest: number | undefined,
): number | undefined {
  const at = tastes.indexOf(taste);
  const from = tastes[at - 1]?.at[1] ?? 0;
  const to = tastes[at + 1]?.at[0] ?? Number.POSITIVE_INFINITY;
  const isRest = rest !== undefined && rest >= from && rest < taste.at[0];
  if (isRest) return undefined;
  const before = shares.find((each) => each.at[0] >= from && each.at[1] <= taste.at[0]);
  const behind = shares.find((each) => each.at[0] >= taste.at[1] && each.at[1] <= to);
  const isNamedFirst = shares.every((each) => each.at[0] > (tastes[0]?.at[0] ?? 0));
  const found = isNamedFirst ? behind : before;
  return found && (found.dim === "percent" ? found.value / 100 : found.value);
}
