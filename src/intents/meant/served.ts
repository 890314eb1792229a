/** "eight guests, three macarons each": so many times so many are meant, and neither number alone. */
import { people } from "../../../data/words/people.ts";
import type { Span } from "../../tools/contract/index.ts";
import { spanOf, wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

type Counted = Item & { is: "amount" };

const isCount = (item: Item | undefined): item is Counted =>
  item?.is === "amount" &&
  item.amount.dim === "number" &&
  item.amount.unit === "" &&
  !item.amount.fraction &&
  item.amount.high === undefined &&
  Number.isInteger(item.amount.value) &&
  item.amount.value > 0;

/** Of whom there are so many: "12 people", "eight of us", "three lovely girls". */
function isOfPeople(items: readonly Item[], at: number): boolean {
  if (wordOf(items[at + 1]) === "of" && ["us", "you"].includes(wordOf(items[at + 2]))) return true;
  const own = items.slice(at + 1, at + 4);
  const noun = own.findIndex((item) => people.has(wordOf(item)));
  return (
    noun >= 0 &&
    own.slice(0, noun).every((item) => item.is === "word" && !/^(?:for|to|of|and)$/.test(item.text))
  );
}

/** How many items behind a number say that it is for each of them, macarons named or not; none where it isn't. */
function eachBehind(items: readonly Item[], at: number): { from: number; length: number } | undefined {
  const next = items[at + 1];
  const named = next?.is === "thing" && next.thing.count === "macarons";
  const from = at + (named ? 2 : 1);
  const [one, two] = [wordOf(items[from]), wordOf(items[from + 1])];
  if (["each", "apiece"].includes(one)) return { from, length: 1 };
  if (one === "a" && ["head", "piece", "person"].includes(two)) return { from, length: 2 };
  const isPer = one === "per" && (people.has(two) || ["person", "head"].includes(two));
  if (isPer || (one === "for" && two === "each")) return { from, length: 2 };
  // "everyone gets three"
  const before = [1, 2, 3, 4].map((back) => wordOf(items[at - back]));
  const toAll = before.findIndex((word) => ["everyone", "everybody", "each"].includes(word));
  return toAll > 0 && serves.has(before[toAll - 1] ?? "") ? { from, length: 0 } : undefined;
}
const serves = new Set(
  "gets get has have having wants want eats eat getting takes take needs need will should".split(" "),
);

/** The items with the product in place of both numbers; as they are where another number of macarons is said. Pure. */
export function withServings(items: readonly Item[]): Item[] {
  if (items.some((item) => told.has(wordOf(item)))) return [...items];
  const guests = items.findIndex((item, at) => isCount(item) && isOfPeople(items, at));
  const share = items.findIndex(
    (item, at) => at !== guests && isCount(item) && item.amount.value <= most && eachBehind(items, at),
  );
  const [some, each] = [items[guests], items[share]];
  const behind = eachBehind(items, share);
  if (!isCount(some) || !isCount(each) || !behind) return [...items];
  const value = some.amount.value * each.amount.value;
  const others = items.filter((item) => item !== some && item !== each && isCount(item)) as Counted[];
  const isSaid = others.some(({ amount }) => amount.value === value);
  if (others.length > 0 && !isSaid) return [...items];
  const taken = `${value} macarons: ${each.amount.value} for each of ${some.amount.value}`;
  const all: Item = { ...each, amount: { ...each.amount, value, taken } };
  const named = behind.from > share + 1;
  // "three each" says no word of macarons, and nothing else is counted out to people
  const macarons: Item = {
    is: "thing",
    thing: {
      id: "macarons",
      count: "macarons",
      text: "each",
      at: placeOf(items[behind.from]) ?? each.amount.at,
    },
  };
  const whole = named ? [all] : [all, macarons];
  const isGone = (at: number) => at >= behind.from && at < behind.from + behind.length;
  return items.flatMap((item, at) =>
    item === each ? (isSaid ? [] : whole) : item === some || isGone(at) ? [] : [item],
  );
}

const placeOf = (item: Item | undefined): Span | undefined => (item ? spanOf(item) : undefined);

/** Nobody is given more; and what was eaten belongs to a note as it was said. */
const most = 30;
const told = new Set("note log jot record ate eaten boxes box cost price charge sell".split(" "));
