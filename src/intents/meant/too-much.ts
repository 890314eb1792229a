/** "65 is too greedy, use 50": the amount that is found wrong is told, and the one behind the order stands in its place. */
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const leads = new Set(
  "no nope nah oh ah hm hmm well ok okay so but and actually sorry the that thats a an nearly about think guess".split(
    " ",
  ),
);
const holds = new Set(
  "is was seems seemed feels felt looks looked sounds sounded would be will are were s".split(" "),
);
const degrees = new Set(
  "way far much a bit little just really still rather quite very too so kind of somewhat".split(" "),
);
/** Without "too" these alone find fault. */
const faults = new Set(
  "high low steep greedy dear expensive cheap heavy strong weak robbery wrong excessive stingy mean".split(
    " ",
  ),
);
const orders = new Set(
  "use go try take make do lets let set say rather then give put have better change".split(" "),
);

/** The items from the order on, where the turn begins with an amount found wrong and orders another of its kind. Pure. */
export function withoutTooMuch(items: readonly Item[]): Item[] {
  let at = 0;
  while (isLead(items[at])) at += 1;
  const wrong = items[at];
  if (wrong?.is !== "amount") return [...items];
  const comma = items.findIndex(
    (item, place) => place > at && item.is === "sign" && /^[,;.:-]$/.test(item.text),
  );
  if (comma < 0 || !findsFault(items.slice(at + 1, comma))) return [...items];
  const behind = items.slice(comma + 1);
  const amounts = behind.filter((item) => item.is === "amount");
  const [right] = amounts;
  // "..., i put it in 250 g" tells, and orders nothing
  const first = behind.map(wordOf).find((word) => word !== "" && !leads.has(word));
  const isOrder =
    orders.has(first ?? "") || behind.some((item) => wordOf(item) === "instead") || behind[0] === right;
  const asks = behind.some((item) => item.is === "sign" && item.text === "?");
  const alike =
    right?.is === "amount" &&
    (right.amount.dim === wrong.amount.dim || right.amount.dim === "number" || wrong.amount.dim === "number");
  return amounts.length === 1 && alike && isOrder && !asks ? behind.map(asRemade) : [...items];
}

/** "set 25", behind one that was too short: no second one is set. */
const asRemade = (item: Item): Item =>
  wordOf(item) === "set" && item.is === "word" ? { ...item, text: "make it" } : item;

const isLead = (item: Item | undefined) =>
  (item?.is === "sign" && item.text === ",") || leads.has(wordOf(item));

/** "is too greedy", "seems high", "feels like robbery": a verb, and what is wrong. */
function findsFault(items: readonly Item[]): boolean {
  const words = items.map(wordOf);
  const first = words[0] ?? "";
  if (!holds.has(first)) return false;
  const rest = words.slice(1);
  const said = rest.filter((word) => !degrees.has(word) && !holds.has(word) && word !== "like");
  // what it is for is named: then it isn't of the whole that the order speaks of
  if (items.length > 6 || items.some((item) => item.is === "amount")) return false;
  return rest.includes("too") || (said.length > 0 && said.every((word) => faults.has(word)));
}
