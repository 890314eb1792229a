/** The order that a sentence goes on from: how many macarons it was, and of which kinds. */
import { numberSaid } from "./number-said.ts";
import type { State, Topic } from "./state.ts";

export interface Kind {
  name: string;
  count: number;
}

export interface Order {
  topic: Topic;
  macarons: number;
  /** So many of each, where that was told. */
  kinds: readonly Kind[];
  /** How many kinds there are of it, where that was told. */
  ways?: number;
}

/** Calculators that work from a number of macarons. */
const counting: ReadonlySet<string> = new Set(["shells", "fill", "day", "buy"]);
/** What may be asked or set in between while the order is still the one that is spoken of. */
const inPassing: ReadonlySet<string> = new Set(
  "timer note convert method keep recall shelf dose ganache buttercream split bench".split(" "),
);

/** How many questions back the order may be. */
const reach = 4;

const counted = /\b(\d{1,3}|[a-z]+(?= [a-z]))(?: macarons?| macs)?(?: of)?(?: the)? ([a-z]+)/g;

/** "36 pistachio and 24 lemon": numbers with a word behind each, that come to the whole. */
function kindsTold(text: string, whole: number): Kind[] {
  const found = [...text.matchAll(counted)].flatMap(([, many = "", name = ""]) => {
    const count = numberSaid(many);
    return count > 0 && !/^(?:macarons?|macs|for|of|dozens?|boxe?s?|each|in|and)$/.test(name)
      ? [{ name, count }]
      : [];
  });
  const sum = found.reduce((all, { count }) => all + count, 0);
  return found.length > 1 && sum === whole ? found : [];
}

type Shares = { name: string; share: number }[] | undefined;

/** Undefined where no order was counted lately. Pure. */
export function orderBefore({ last, past = [], table, turn }: State): Order | undefined {
  if (!last) return undefined;
  const since = past.slice(-reach).reverse();
  const topic = counting.has(last.tool)
    ? last
    : since.find(
        ({ tool }, at) => counting.has(tool) && since.slice(0, at).every((each) => inPassing.has(each.tool)),
      );
  const macarons = topic?.inputs.macarons;
  if (!topic || typeof macarons !== "number") return undefined;
  const shares = (topic.inputs.shares as Shares) ?? (table.macarons === macarons ? table.shares : undefined);
  const text = past.findLast(({ inputs }) => inputs.macarons === macarons)?.text ?? "";
  const kinds = shares
    ? shares.map(({ name, share }) => ({ name, count: Math.round(share * macarons) }))
    : kindsTold(text, macarons);
  const isOfTurn = turn?.all?.some(({ inputs }) => inputs.macarons === macarons);
  const [, many = ""] = waysTold.exec(text) ?? (isOfTurn ? waysTold.exec(turn?.said ?? "") : null) ?? [];
  const { flavors } = topic.inputs;
  const ways = typeof flavors === "number" ? flavors : kinds.length > 1 ? kinds.length : numberSaid(many);
  return { topic, macarons, kinds, ...(ways > 1 ? { ways } : {}) };
}

const waysTold =
  /\b(\d|two|three|four|five|six|seven|eight|nine|ten|twelve) (?:different )?(?:flavou?rs|colou?rs|kinds|sorts|tastes|shades)\b/;

/** What the order is asked for now, beside what it was; what a calculator of its own is asked is none of it. */
const matters: readonly (readonly [matter: RegExp, tool: string, asked: string])[] = [
  [/\bbatter\b/, "shells", "how much batter"],
  [/\bfillings?\b/, "fill", "how much filling"],
  [/\btrays?\b/, "shells", "how many trays"],
  [/\b(?:egg )?whites\b|\beggs\b/, "shells", "how many egg whites"],
  [/\bshells\b/, "shells", "how many shells"],
];

/** The order said anew, with what is asked of it beside. @param rest what else the sentence says */
export function saidAnew({ topic }: Order, macarons: string, rest: string): string {
  const [, tool, asked] = matters.find(([matter]) => matter.test(rest)) ?? [];
  if (tool === undefined || asked === undefined) return `make it ${macarons}`;
  // its size and its spares stay where the same calculator goes on
  if (tool === topic.tool) return tool === "shells" ? `make it ${macarons}, ${asked}` : `make it ${macarons}`;
  const { diameter_mm } = topic.inputs;
  return `${asked} for ${macarons}${typeof diameter_mm === "number" ? ` of ${diameter_mm} mm` : ""}`;
}

/** What is no order of macarons, whatever is counted beside it. */
export const otherMatter =
  /\b(?:price|cost|charge|sell|margin|profit|earn|flavou?r(?!s? (?:each|of))|ganache|buttercream|colou?r|gel|timer|alarm|note|log|fridge|freezer|keep|label|box(?:es)? cost|extract|paste|powder|oven|bake[ds]?|minutes|buy)\b/;
