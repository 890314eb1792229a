/** What is on the shelf: bottles with their own directions, ingredients in stock, what they cost. */
import * as z from "zod/mini";
import { tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { inBowl_g, money, share_percent, weight_g } from "../lib/inputs.ts";
import { answerShelf } from "./answer.ts";
import { readShelf } from "./read.ts";

export const inputs = z.strictObject({
  does: z.optional(z.enum(["bottle", "add", "set", "use", "ask", "list", "price", "pack", "forget"])),
  /** Ingredients with what is put there, used, or what they cost. */
  entries: z.optional(
    z.array(
      z.object({
        name: z.string(),
        grams: z.optional(inBowl_g),
        /** "half of it": a share of what is there, 0 to 1. */
        part: z.optional(z.number()),
        price_per_g: z.optional(money),
        pack_g: z.optional(weight_g),
        currency: z.optional(z.string()),
      }),
    ),
  ),
  /** More is used than there is, and she said to go to nothing. */
  to_zero: z.optional(z.boolean()),
  taste: z.optional(z.string()),
  form: z.optional(z.string()),
  low_percent: z.optional(share_percent),
  high_percent: z.optional(share_percent),
  /** How many times the usual strength, and what is left in it. */
  strength: z.optional(z.number().check(z.gt(0), z.lte(100))),
  left_g: z.optional(inBowl_g),
  /** How directions that aren't in percent were taken. */
  taken: z.optional(z.string()),
  /** A whole recipe is taken off: what the shelf lacks is named, the rest is taken. */
  whole: z.optional(z.boolean()),
  /** What the last note says was used. */
  from_note: z.optional(z.boolean()),
  /** What the bottle says is in it. */
  allergens: z.optional(z.array(z.string())),
  /** A bottle whose directions aren't a share of the weight: "5 drops". */
  unweighable: z.optional(z.string()),
});

export type ShelfInputs = z.infer<typeof inputs>;

const place = "(?:pantry|larder|cupboard|shelf|stock|stores?|store cupboard|kitchen)";
const save = "(?:save|remember|keep|store|note|put|add|log|record)";

export const shelf = tool<ShelfInputs>({
  name: "shelf",
  purpose: "Your bottles with their directions, what is in stock, and what it cost",
  inputs,
  cues: cues(
    [
      10,
      "{weight} .. {ingredient} in (?:stock|the (?:pantry|cupboard|larder)) .. (?:write|note|remember|save|put)",
    ],
    [
      5,
      "(?:took|used|taken) {weight} .. (?:out|from|for)",
      "^{ingredient} left(?: [?])?$",
      "{ingredient} left [?]",
    ],
    [
      6,
      "bottle .. (?:contains?|has) .. (?:{ingredient}|{taste}|soy|gluten|wheat|nuts?|allergens?)",
      "what .. bottle .. (?:say|says)",
      "{ingredient} .. (?:comes?|is sold|are sold|sold|sells|packed) in .. {weight}",
    ],
    [
      8,
      "(?:bottle|label|directions) .. (?:{weight}|{volume}) (?:per|a|an|for (?:a|each|every|one)|to (?:a|the|each)|in (?:a|each)|for|in|/) (?:{unit}|(?:{weight}|{volume}))",
      "bottle .. (?:{weight}|{volume}) (?:left|remaining|in it)$",
      "(?:{weight}|{volume}) (?:is )?left (?:in |of )?(?:my |the )?\\S+ bottle$",
      "bottle (?:is|has|holds) (?:still |about |now |only |a )*(?:{weight}|{volume})$",
      "bottle .. (?:strength|as strong)",
      "(?:how much|whats|what is) .. left in .. bottle",
      "(?:take|took|deduct|subtract|book) (?:it|that|them|this|those|all|everything|these) .. (?:off|from|out of) (?:(?:of|the|my) )*(?:shelf|stock|pantry|larder|cupboard)",
    ],
    [
      5,
      `^(?:(?:my|the|add to|to|for) )*${place} : `,
      "(?:used|using|took|finished) .. {fraction} .. {ingredient}",
      "(?:is|are) there (?:any |still |some )*{ingredient} (?:left|in stock)",
      "any {ingredient} left",
      `(?:put|add|adding|stick|chuck|bung|pop|got|bought|have|ive|keep|save) .. {ingredient} .. ${place}`,
      `{ingredient} .. ${place} .. ${save}`,
      `${save} .. ${place}`,
      `{weight} .. {ingredient} .. ${place}`,
      "{taste} .. bottle .. {percent}",
      "{dose} .. bottle .. {percent}",
      "bottle .. (?:says|said|reads) .. {percent}",
      "label (?:says|said|reads) .. {percent}",
      `(?:whats|what is|what|show|list) .. (?:on|in) (?:my |the )?${place}`,
      "{ingredient} .. {money} .. (?:remember|save|note|keep)",
      "{money} .. {ingredient} .. (?:remember|save|note|keep)",
      "(?:paid|pay) .. {money} .. {ingredient} .. (?:remember|save|note|keep)",
      "(?:remember|save|note) .. {ingredient} .. {money}",
      "bottle .. {percent} .. (?:save|remember)",
    ],
    [
      4,
      "(?:used|use|using|took|finished|gone through|got through|spilt|spilled|threw away|binned) .. {weight} .. {ingredient}",
      "(?:how much|how many) (?:{unit} )?(?:of )?(?:the |my )?{ingredient} .. (?:have i|do i have|have we|is there|is left|ive|i have|i got|got|left)",
      "(?:bought|buying|picked up) .. {weight} .. {ingredient}",
      "{ingredient} .. (?:used up|run out|ran out|is gone|is finished|all gone|finished)",
      "(?:used up|all out of|ran out of|run out of|finished) (?:(?:the|my|all|of) )*{ingredient}",
      "used (?:another |a further )?{weight}",
      `(?:stock|pantry|shelf)`,
      "(?:do i have(?! to)|have i got(?! to)|have we got(?! to)) .. {ingredient}",
      "save (?:that|the) price",
      "forget .. (?:bottle|stock|price)",
      "what bottles",
      "{weight} .. {ingredient} .. in stock",
      "{ingredient} .. {money} .. (?:a|per) ",
    ],
    [
      3,
      "how much (?:is|have i got|do i have) (?:left|there)(?: now| still)?",
      "(?:were|im|am|are|is|now) (?:all )?out of (?:the |my )?{ingredient}",
      "{ingredient} (?:costs?|is|are) .. {money}",
      "{ingredient} (?:costs?|cost me) {number}",
      "(?:left|remaining) of .. {ingredient}",
      "bottle .. (?:says|said)",
      "{weight} .. {ingredient} left",
    ],
    [2, "(?:pantry|larder|cupboard|in stock)", "(?:used|bought)", "bottles?"],
    [1, "{ingredient}", `${save}`],
    [
      -6,
      "(?:margin|markup|charge|timer|alarm|allergens?)",
      "shelf[ -]stable",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|jot)",
      "(?:save|remember) .. recipe",
      "formula",
      "(?:what|whats) .. (?:buy|shopping)",
      "need to buy",
      "how (?:big|many) .. (?:batch|{count})",
      "house (?:batch|recipe)",
    ],
    [
      -4,
      "what .. (?:come to|cost|run me)",
      "(?:how|hw) much .. cost",
      "(?:how|hw) much {dose} .. {base}",
      "{number} .. {count=macarons}",
      "{base} .. {weight} .. {dose}",
      "rest of (?:it|the)",
      "{remainder}",
      "what (?:do|should) i weigh",
      "how (?:long|hot|cold)",
      "(?:how|hw) much (?:can|could) i make",
      "{unit} (?:in|to) {unit}",
    ],
    [
      -3,
      "in grams",
      "(?:goes|go) (?:in|into)",
      "{weight} .. {base}",
      "{base=(ganache|buttercream|batter)} .. {weight}",
      "(?:what|how much) .. other",
    ],
  ),
  examples: [
    {
      say: "my mint bottle says half to one percent, save that",
      inputs: { does: "bottle", taste: "mint", low_percent: 0.5, high_percent: 1 },
    },
    {
      say: "I've got 1 kg almond flour in the cupboard, put it in the pantry",
      inputs: { does: "add", entries: [{ name: "almond flour", grams: 1000 }] },
    },
    {
      say: "pantry: 50 g almond flour",
      inputs: { does: "set", entries: [{ name: "almond flour", grams: 50 }] },
    },
    {
      say: "used 250 g of the almond flour",
      inputs: { does: "use", entries: [{ name: "almond flour", grams: 250 }] },
    },
    {
      say: "my violet bottle prescribes 6 to 9 g per kilogram of filling, save this",
      inputs: { does: "bottle", taste: "violet", low_percent: 0.6, high_percent: 0.9 },
    },
    {
      say: "almond flour comes in 1 kg bags",
      inputs: { does: "pack", entries: [{ name: "almond flour", pack_g: 1000 }] },
    },
    { say: "how much almond flour have i got", inputs: { does: "ask", entries: [{ name: "almond flour" }] } },
    { say: "what's on my shelf", inputs: { does: "list" } },
    { say: "almond flour costs $16 a kilo, remember that", inputs: { does: "price" } },
    {
      say: "my lavender bottle says 1 to 2 percent, save it",
      inputs: { does: "bottle", taste: "lavender", low_percent: 1, high_percent: 2 },
    },
  ],
  elsewhere: [
    { say: "how much mint flavor for 400 g buttercream", tool: "dose" },
    { say: "what do i need to buy for 24 macarons", tool: "buy" },
    { say: "120 g egg whites, what do i need of the rest", tool: "scale" },
    { say: "130 g almond flour at $16 a kilo, what did that cost", tool: "cost" },
    { say: "save recipe snowy shells: 105 g whites, 130 g almond flour", tool: "formula" },
  ],
  // Every order stands for itself; what "it" is, read takes from the one before.
  rivals: [
    [
      "does",
      "entries",
      "to_zero",
      "taste",
      "form",
      "low_percent",
      "high_percent",
      "strength",
      "left_g",
      "taken",
      "whole",
      "from_note",
      "allergens",
      "unweighable",
    ],
  ],
  alone: true,
  read: readShelf,
  compute: answerShelf,
});
