/** What to buy for a bake: the house shells with spares and losses, the fillings, less what is on the shelf. */
import * as z from "zod/mini";
import type { Memory, Reading } from "../contract/index.ts";
import { later, tool } from "../contract/index.ts";
import { filling } from "../day/filling.ts";
import { readDetails } from "../day/order.ts";
import { cues } from "../lib/cue.ts";
import { counted, diameter, pointsBack } from "../lib/find.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { readLines, sameIngredient } from "../lib/lines.ts";
import { spare_percent, spares, sparesSaid } from "../lib/spares.ts";
import { answerBuy } from "./answer.ts";

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** Shells said by number take no spares. */
    shells: z.optional(count("shells")),
    diameter_mm: z.optional(diameter_mm),
    /** Spares said with the question, in the place of the bench's. */
    spare_percent: z.optional(spare_percent),
    /** The number of them, where that was said. */
    spares: z.optional(z.string()),
    /** A saved recipe for the shells instead of the house formula. */
    formula: z.optional(z.string()),
    /** Fillings that were named; none means one buttercream and one ganache. */
    fillings: z.optional(z.array(z.enum(["buttercream", "ganache"]))),
    chocolate: z.optional(z.enum(["dark", "milk", "white"])),
    /** The fillings of a planned day, or of a sentence that says more of them than their kind. */
    order: z.optional(z.array(filling)),
    /** What she says she has of it, in the place of what the shelf knows. */
    have: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** Whether there is enough of this one is asked. */
    enough_of: z.optional(z.string()),
    /** Whether the shelf holds all of it is asked. */
    enough: z.optional(z.boolean()),
    /** Only the shells' ingredients are asked for. */
    shells_only: z.optional(z.boolean()),
  }),
);

export type BuyInputs = z.infer<ReturnType<typeof inputs>>;

export const buy = tool<BuyInputs>({
  name: "buy",
  purpose: "What to buy for a number of macarons, less what is on your shelf",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: cues(
    [
      16,
      "(?:do i have|have i got|ive got|is there|will i have) (?:got )?enough (?:of (?:the |my )?)?{ingredient} (?:\\S+ )?for (?:\\S+ )?{number} (?:\\S+ )?{count=macarons}",
    ],
    [
      16,
      // "enough almond flour for 40?"
      "^(?:(?:so|and|ok|then|is|have|there|i|ive|got|do|we) )*enough (?:of )?(?:the |my |our )?{ingredient} for (?:(?:making|the|a|another) )*{number}(?: (?:of them|{count=macarons}))?(?: [?])?$",
    ],
    [
      9,
      // "enough for 30 macarons?", "can i make 60 macarons with what i have", of what is on the shelf
      "^(?:(?:so|and|ok|then) )*enough (?:for|to make|to bake) (?:another )?{number} {count=macarons} [?]$",
      "^(?:(?:so|and|ok|then) )*(?:(?:is there|have i|ive|have we|do i have|do we have|i have|got)(?: got| still)? )?enough (?:(?:left|stuff|ingredients?|things|in|on|the|my|our|stock|pantry|cupboard|shelf|larder|everything|of) )+(?:for|to make|to bake) (?:another )?{number} {count=macarons}(?: [?])?$",
      "^(?:(?:so|and|ok|then) )*(?:is there|have i|ive|have we|do i have|do we have)(?: got| still)? enough (?:for|to make|to bake) (?:another )?{number} {count=macarons}(?: [?])?$",
      "^(?:(?:so|and|ok|then) )*(?:is|does|do|will|would) (?:my |our |the )?(?:pantry|shelf|stock|cupboard|larder) .. {number} {count=macarons}",
      "^(?:(?:so|and|ok|then) )*(?:can|could) (?:i|we) (?:still |also )?(?:make|bake|do) {number}(?: {count=macarons})? (?:with|from|out of|on) (?:what|whats|everything|all) (?:\\S+ )*(?:have|got|left|there|shelf|pantry|cupboard|stock|larder|home|house)(?: [?])?$",
      "^(?:(?:so|and|ok|then) )*(?:can|could) (?:i|we) (?:still |also )?(?:make|bake|do) {number}(?: {count=macarons})? (?:with|from|out of|on) (?:the|my|our) (?:shelf|pantry|cupboard|stock|larder)(?: [?])?$",
    ],
    [
      7,
      "(?:making|doing|baking|bake|make) {number} .. what (?:all )?(?:do|will|would|must) i need(?: to (?:buy|get|have))?(?: [?])?$",
    ],
    [
      6,
      "(?:what|whats|wht|which (?:ingredients?|things?|stuff|bits|ones?|groceries)) .. (?:buy|purchase|get from (?:the )?(?:shops?|store|market|supermarket|grocer\\S*)|pick up|shop for)",
      "which .. (?:buy|purchase) .. {count=(macarons|boxes|batches)}",
      "(?:need|have|got|want) to (?:buy|purchase|shop|get from)",
      "what i (?:must|need to|have to|should|need|can) buy",
      "shopping(?: list)?",
      "(?:buy|shop) for {number}",
      "(?:what|whats) .. (?:am i|are we) (?:missing|short of|lacking)",
      "(?:buy|get) .. for .. {count=macarons}",
      "grocery list",
      "(?:what|how much) .. (?:order|buy) .. {count=macarons}",
    ],
    [3, "(?:buy|shop|shopping|groceries)"],
    // for how many is asked
    [
      8,
      "^(?:(?:so|and|ok|then) )*(?:is there|have i got|do i have|ive got|have we got|do we have) enough (?:of )?(?:the |my )?{ingredient}(?: left)?(?: [?])?$",
    ],
    // "which phone should i buy"
    [
      -9,
      "^(?:and |so |ok |then )*(?:which|what|whats) (?!else|i |ingredients?|things?|stuff|all|must|should|would|do|to|the|have|exactly|shall|will|am)[a-z]+ (?:should|do|shall|must|can|to) (?:i )?(?:buy|get)",
    ],
    [1, "{number} .. {count=macarons}"],
    [
      -6,
      "(?:bought|just buy|used)",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|record|jot|pantry|put)",
      "{money}",
      "timer",
    ],
  ),
  // "can i make 60", of what is on the shelf
  after: {
    shelf: cues([
      16,
      "^(?:(?:so|and|ok|then) )*(?:can|could) (?:i|we) (?:still |also |now )?(?:make|bake|do) (?:another )?{number}(?: {count=macarons})?(?: (?:with|from|out of|of|on) (?:that|it|those|this|them|what .*))?(?: (?:now|then))*(?: [?])?$",
      "^(?:(?:so|and|ok|then|is|that|it|this|will|be) )*enough (?:for|to make) (?:another )?{number}(?: {count=macarons})?(?: [?])?$",
    ]),
  },
  goesOn: cues([
    12,
    "^(?:(?:so|and|ok|then|but) )*(?:is there|have i got|do i have|ive got)?(?: |^)enough (?:of )?(?:the |my )?{ingredient}(?: (?:then|too|as well|for (?:that|it|them|those)))*(?: [?])?$",
    spares,
    // "i got 500 g almond flour already"
    "^(?:(?:but|and|well|ok|oh|no) )*(?:i|we|ive|weve) (?:still |already |have |got |only )*(?:have |got )?{weight} .. {ingredient}(?! .. (?:pantry|larder|shelf|cupboard|stock|save|remember|bag))",
    "(?:already|still) (?:have|got) {weight} .. {ingredient}",
  ]),
  examples: [
    { say: "what do i need to buy for 24 macarons", inputs: { macarons: 24 } },
    { say: "what have I got to buy for 84 macarons", inputs: { macarons: 84 } },
    {
      say: "shopping list for 60 macarons with white chocolate ganache",
      inputs: { macarons: 60, fillings: ["ganache"], chocolate: "white" },
    },
    { say: "what do i have to buy for 30 macarons of 4.5 cm", inputs: { macarons: 30, diameter_mm: 45 } },
    {
      say: "shopping for 48 macarons, only buttercream",
      inputs: { macarons: 48, fillings: ["buttercream"] },
    },
  ],
  elsewhere: [
    { say: "bought 1 kg almond flour, put it in the pantry", tool: "shelf" },
    { say: "batter for 24 macarons", tool: "shells" },
    { say: "shell recipe for 36 macarons", tool: "scale" },
  ],
  rivals: [
    ["macarons", "shells"],
    ["diameter_mm"],
    ["fillings", "shells_only", "order"],
    ["chocolate"],
    ["formula"],
    ["have"],
    ["enough_of", "enough"],
    ["spare_percent", "spares"],
  ],
  read: readBuy,
  compute: answerBuy,
});

/** "what do I need to buy for it", or no number at all behind an order: the macarons that were spoken of. */
const leansOnOrder = (reading: Reading, memory: Memory): boolean =>
  memory.last?.tool !== "buy" &&
  (pointsBack(reading) ||
    /\border\b/.test(reading.text) ||
    ["day", "shells", "fill", "scale", "split"].includes(memory.last?.tool ?? ""));

/** The fillings and the size that the last day was planned for. */
function orderOf({ table }: Memory): Partial<BuyInputs> {
  const order = table.order;
  if (!order) return {};
  const fillings = order.fillings as BuyInputs["order"];
  return {
    ...(typeof order.diameter_mm === "number" ? { diameter_mm: order.diameter_mm } : {}),
    ...(typeof order.shell_recipe === "string" ? { formula: order.shell_recipe } : {}),
    ...(fillings?.length ? { order: fillings } : {}),
  };
}

/** Fillings of which more is said than "buttercream" or "ganache": a jam, a ring, a recipe, a number of their own. */
function detailed(reading: Reading): Partial<BuyInputs> | undefined {
  const { fillings } = readDetails(reading);
  const isPlain = fillings?.every(
    ({ base, part, macarons }) => ["buttercream", "ganache"].includes(base) && !part && !macarons,
  );
  return fillings && !isPlain ? { order: fillings } : undefined;
}

/** "i have 500 g almond flour already": what is there, with what was said before. */
function hasSaid(reading: Reading, before: BuyInputs["have"] = []): BuyInputs["have"] | undefined {
  if (!/\b(?:have|got|ive|weve)\b/.test(reading.text)) return undefined;
  const said = readLines(reading).lines.map(({ name, grams }) => ({ name, grams }));
  if (said.length === 0) return undefined;
  return [...before.filter(({ name }) => !said.some((each) => sameIngredient(each.name, name))), ...said];
}

/** "enough for 30", "can i make 60", "does my pantry do for 24". */
const asksEnough =
  /\benough\b|^(?:(?:so|and|ok|then) )*(?:(?:can|could) (?:i|we) (?:still |also )?(?:make|bake|do)\b|(?:is|does|do|will|would) (?:my |our |the )?(?:pantry|shelf|stock|cupboard|larder)\b)/;

function readBuy(reading: Reading, memory: Memory): Partial<BuyInputs> {
  const bare = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.of && !each.fraction,
  )?.value;
  const macarons =
    counted(reading, "macarons") ??
    bare ??
    (leansOnOrder(reading, memory) ? memory.table.macarons : undefined);
  const order = macarons !== undefined && macarons === memory.table.macarons ? orderOf(memory) : {};
  const shells = counted(reading, "shells");
  const size = diameter(reading);
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const fillings = (["buttercream", "ganache"] as const).filter((base) =>
    reading.things.some((each) => each.base === base),
  );
  const chocolate = reading.things.find((each) => each.chocolate)?.chocolate;
  const none =
    /\b(?:only|just) (?:the |for the )?(?:macaron )?shells\b|shells only|without (?:the |any )?filling|no filling|for the shells\b/.test(
      reading.text,
    );
  const before =
    memory.follows && memory.last?.tool === "buy" ? (memory.last.inputs as Partial<BuyInputs>) : {};
  const have = hasSaid(reading, before.have);
  const enough_of =
    /\b(?:have|got|is there|ive|enough)\b.*\benough\b|^(?:(?:so|and|ok) )*(?:enough|(?:is|have i|do i)\b.*\benough)\b/.test(
      reading.text,
    )
      ? reading.things.find((each) => each.ingredient)?.ingredient
      : undefined;
  return {
    ...order,
    ...(have ? { have } : {}),
    ...(enough_of ? { enough_of } : asksEnough.test(reading.text) ? { enough: true } : {}),
    ...(macarons !== undefined ? { macarons } : shells !== undefined ? { shells } : {}),
    ...(size !== undefined ? { diameter_mm: size } : {}),
    ...sparesSaid(reading),
    ...(formula ? { formula } : {}),
    ...(none
      ? { shells_only: true }
      : (detailed(reading) ??
        (fillings.length > 0 ? { fillings } : chocolate ? { fillings: ["ganache" as const] } : {}))),
    ...(chocolate ? { chocolate } : {}),
  };
}
