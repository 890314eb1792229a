/** What is asked of the money: a price, a margin, a markup, a food cost, what it costs, or how many bring it back. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { aimOf } from "./aim.ts";
import type { Draft, Told } from "./draft.ts";

/** No more of it is needed here. */
type Asked = Omit<Told, "memory">;
type Want = Pick<Draft, "want">;

/** Words that name what is wanted. */
const named: readonly (readonly [NonNullable<Draft["want"]>, RegExp])[] = [
  ["break even", /break even/],
  ["markup", /mark ?-?up/],
  ["food cost", /food cost/],
  ["margin", /margin|profit|percent|(?:making|losing) (?:any |some )?money/],
];

/** "what if it costs 10": the same question with another cost. */
function sameAnew({ reading, draft, before }: Asked): Want | undefined {
  const isSame =
    before.price !== undefined &&
    (draft.cost !== undefined || draft.price !== undefined) &&
    before.want !== "price" &&
    says(reading, /(?:^| )if /) &&
    !says(reading, /margin|mark ?-?up|food cost|profit/);
  return isSame ? (before.want ? { want: before.want } : {}) : undefined;
}

/** "what if the cost goes up to 20", behind a price: what to charge then. */
const priceAtNewCost = ({ reading, draft, before }: Asked): Want | undefined =>
  before.want === "price" &&
  before.margin_percent !== undefined &&
  draft.cost !== undefined &&
  says(
    reading,
    /cost(?:s)? (?:me )?(?:goes|went|go|rises|rose|is|was|were|comes|came|jumps|jumped|climbs) (?:up |down )?(?:to )?\S*</,
  )
    ? { want: "price" }
    : undefined;

const costAsked = ({ reading, draft }: Asked): Want | undefined =>
  says(reading, /cost|come to|run me|set me back|spend/) &&
  (draft.lines || draft.formula || draft.macarons !== undefined || says(reading, /what|how much/))
    ? { want: "cost" }
    : undefined;

/** "price of a batch that has ..., i mean what it costs me", "price of the ingredients": a bill, and no price to sell at. */
const billAsked = ({ reading, draft }: Asked): Want | undefined =>
  draft.lines?.some(({ price_per_g }) => price_per_g !== undefined) &&
  draft.price === undefined &&
  says(
    reading,
    /what (?:it|that|this|they|all (?:of )?(?:it|that)|the \S+) costs? (?:me|us)|(?:price|cost) (?:of|for) (?:all )?(?:the |my )?(?:ingredients?|materials|stuff)(?: |$)|price (?:(?:of|for) (?:\S+ ){1,3})?to (?:me|us|make)(?: |$)|my (?:own )?costs?(?: |$)|not (?:what i |to )(?:sell|charge)|what i(?: have to)? pay/,
  ) &&
  !says(reading, /what (?:price|should|do i charge|to charge)|mark ?-?up|margin|food cost|profit/)
    ? { want: "cost" }
    : undefined;

const ways: readonly Way<Asked, Want>[] = [
  ({ draft }) => (aimOf(draft) ? { want: "price" } : undefined),
  billAsked,
  sameAnew,
  priceAtNewCost,
  ({ reading }) => {
    const want = named.find(([, words]) => says(reading, words))?.[0];
    return want && { want };
  },
  ({ reading, draft }) =>
    draft.price === undefined && says(reading, /charge|price|sell (?:it|them|that) for|should i (?:ask|sell)/)
      ? { want: "price" }
      : undefined,
  ({ draft }) => (draft.price !== undefined ? { want: "margin" } : undefined),
  costAsked,
];

export const readWant = (reading: Reading, draft: Draft, before: Draft): Want =>
  firstOf(ways, { reading, draft, before }) ?? {};
