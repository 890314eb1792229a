/** Filling for a number of macarons, ring and center, and macarons that a bowl of filling fills. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { answerFill } from "./answer.ts";
import { readFill } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** Shells that are there to be filled, two to a macaron. */
    shells: z.optional(count("shells")),
    diameter_mm: z.optional(diameter_mm),
    /** Filling at hand: how many it fills, or, beside a number of macarons, whether it is enough. */
    filling_g: z.optional(weight_g),
    filling: z.optional(z.string()),
    /** So many flavors share them evenly. */
    flavors: z.optional(count("flavors")),
    /** They are a share of so many, of which more may be asked. */
    of_macarons: z.optional(count("macarons")),
    /** "half ganache, half buttercream": each by its name. */
    shares: z.optional(
      z.array(z.object({ name: z.string(), share: z.number(), base: z.optional(z.string()) })),
    ),
    /** Two fillings: a ring and a center. */
    two: z.optional(z.boolean()),
    ring: z.optional(z.string()),
    center: z.optional(z.string()),
    /** Nobody said which of two is the ring. */
    placed: z.optional(z.boolean()),
  }),
);

export type FillInputs = z.infer<ReturnType<typeof inputs>>;

export const fill = tool<FillInputs>({
  name: "fill",
  purpose: "Filling to make for a number of macarons, ring and center, or macarons from a bowl of filling",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: cues(
    [
      9,
      "how many {count=macarons} (?:will|can|does|would|do) (?:that|the|this|those) (?:{number}|{weight}) (?:fill|do|cover)",
    ],
    [
      9,
      "how many {count=macarons} (?:will|can|does|would|do) (?:all of (?:it|that|this)|it|that|this|all that|the lot) (?:fill|do|stretch to|cover)",
    ],
    [-14, "ring (?:my|her|him|me|them|up|back|someone)"],
    [
      5,
      "^(?:(?:and|so|ok|now|then) )*how much {base=(filling|buttercream|ganache)} (?:do|will|would) i (?:have|need) to (?:make|mix|whip)(?: for (?:that|them|those|these|it|this))?(?: [?])?$",
    ],
    [
      5,
      "{weight} .. {base=(filling|buttercream|ganache)} .. (?:fill|enough) .. how many",
      "{weight} .. {base=(filling|buttercream|ganache)} .. enough to fill",
      "how many .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
      "how many {count=macarons} (?:will|does|can|would|could) (?:that|it|this) fill",
      "how many .. {count=macarons} (?:will|does|can|would|could) (?:the |my )?{weight} fill",
    ],
    [
      6,
      "{weight} .. {base=(filling|buttercream|ganache)} .. (?:enough|plenty|do|cover|stretch|last|suffice) (?:for |to fill |to )?(?:\\S+ )?{number}",
      "enough {base=(filling|buttercream|ganache)} (?:for|to fill) {number}",
    ],
    [
      8,
      "{number} .. {count=macarons} .. {base=(filling|buttercream|ganache)} (?:per|for each|each|for every|a) {dose=flavor}",
    ],
    [8, "(?:center|centre|middle) .. {base} (?:around|round|outside)"],
    [
      8,
      "(?:ring|border|rim|dam|wall|outer|outside) .. (?:center|centre|middle|core|inside|inner)",
      "(?:center|centre|middle|core|inside|inner) .. (?:ring|border|rim|dam|wall|outer|outside)",
    ],
    [
      4,
      "(?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)} .. {number} .. {count=(macarons|shells)}",
      "{number} .. {count=macarons} .. (?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)}",
      "(?:how|hw) many .. {count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)}",
      "{weight} .. {base=(filling|buttercream|ganache)} .. (?:how|hw) many .. {count=macarons}",
      "how much .. {number} .. {count=macarons} as (?:the |a )?(?:center|centre|ring)",
      "{base=filling} for {number}",
      "{base=(buttercream|ganache|filling)} for .. {number} of (?:them|those|these)",
      "to_fill\\S* {number} .. {count=macarons} .. (?:how|hw) much (?:do|should|shall|must) i",
      "(?:how|hw) much (?:do|should|shall|must) i .. to_fill\\S* {number} .. {count=macarons}",
      "^(?:and )*(?:the )?fill for {number}",
      "^(?:(?:ok|so|and|now|right) )*(?:how|hw) much (?:do|should|shall|must) i (?:make|need|pipe) to_fill\\S* (?:these|them|those|it all)",
      "{count=macarons} .. (?:waiting|ready|there|baked|need|want|paired|matched) (?:for|to|a|some|their)? ?\\S*(?:filling|fill|filled)",
      "{count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
      "(?:how|hw) many .. (?:fill|filled) .. {weight}",
      "{weight} .. fill .. (?:how|hw) many",
    ],
    [
      3.5,
      "{base=filling} for (?:them|those|it|these|all|the (?:whole )?lot)",
      "(?:how|hw) much (?:more )?{base=filling}",
      "{base=filling} .. {number} .. {count=macarons}",
      "{base=filling} per {count=macarons}",
      "{base=filling} .. (?:one|each|a|every) {count=macarons}",
      "{count=macarons} .. {base=filling} (?:do|should|to)",
      "fill {number} .. {count=macarons}",
      "{weight} .. {base} .. enough .. {number} .. {count=macarons}",
      "enough {base=(filling|buttercream|ganache)} .. {number} .. {count=macarons}",
      "what .. {base=filling} .. {count=macarons}",
      "{number} .. {count=macarons} .. {base=filling}",
      "{weight} .. {base=filling} .. (?:how|hw) many",
      "{count=macarons} .. (?:how|hw) much .. (?:each|of each)",
    ],
    [2, "{base=filling}", "(?:ring|center|centre)", "fill"],
    [1, "{count=macarons}", "each"],
    [
      -4,
      "{dose}",
      "{base=batter}",
      "flavou?r",
      "(?:note|log) ",
      "timer",
      "(?:ready|due|by|for|until) {when}",
      "(?:how long|keep|counter|freeze|fridge)",
      "label",
      "split {weight}",
      "{percent}",
      "{symptom}",
      "buy",
      "(?:cost|margin|charge)",
      "(?:filled|made) .. {when}",
      "when (?:do|should)",
    ],
    [
      -3,
      "{base=(filling|buttercream|ganache)} .. {weight} .. (?:of )?{taste}",
      "save",
      "{ingredient=(chocolate|cream|whites|butter)} .. {base}",
      "{chocolate} .. {ingredient=cream}",
      "recipe",
    ],
    [-8, "(?:how|hw) much {dose} .. (?:for|in|into) (?:the |my )?(?:ring|center|centre)"],
    [-1.5, "{taste} .. {weight}"],
  ),
  // "filling for it", of the day that was planned
  // "shells came out 4,2 cm", of what is to be filled
  goesOn: cues([
    12,
    "^(?:(?:and|the|my|but|oh) )*{count=shells} (?:came out|are|turned out|ended up|were|piped|baked) (?:at |to )?{length}(?: wide| across)?(?: [?])?$",
  ]),
  after: {
    buttercream: cues([
      14,
      "(?:is|will|would) (?:it|that|this) (?:be )?(?:enough|do|plenty) (?:for|to fill) {number}",
      "^(?:(?:and|so|ok|now) )*how much (?:of (?:it|that) )?(?:do i need |will i need |is that )?for {number} {count=macarons}(?: [?])?$",
    ]),
    // "no, make it buttercream", behind a ganache for so many
    ganache: cues([
      14,
      "^(?:(?:and|so|ok|now) )*how much (?:of (?:it|that) )?(?:do i need |will i need |is that )?for {number} {count=macarons}(?: [?])?$",
      "(?:is|will|would) (?:it|that|this) (?:be )?(?:enough|do|plenty) (?:for|to fill) {number}",
      "^(?:(?:no|nope|actually|sorry|wait|oh|and|ok|hm) )*(?:(?:make|do) (?:it|that|them|this) |with |use |i want |rather |lets (?:do|use) )+(?:\\S+ )?{base=buttercream}(?: (?:instead|then|rather|please))*(?: [?])?$",
    ]),
    day: cues([
      14,
      "^(?:(?:and|so|ok|how much|weight of|the) )*{base=filling} (?:for (?:it|that|them|those|this|(?:the|those|these|all) {number})|(?:do i need|is that|is it))(?: then)?(?: [?])?$",
    ]),
  },
  examples: [
    { say: "how much filling do I make for 24 macarons", inputs: { macarons: 24 } },
    {
      say: "48 macarons with a caramel center and a buttercream ring, how much of each",
      inputs: { macarons: 48, two: true },
    },
    {
      say: "how many macarons can I fill with 300 g ganache",
      inputs: { filling_g: 300, filling: "ganache" },
    },
    { say: "how much filling goes in one 4.5 cm macaron", inputs: { macarons: 1, diameter_mm: 45 } },
    { say: "enough buttercream for 36 macarons", inputs: { macarons: 36, filling: "buttercream" } },
  ],
  elsewhere: [
    { say: "how much flavor for 300 g filling", tool: "dose" },
    { say: "batter for 24 macarons", tool: "shells" },
    { say: "filled them this morning, how long in the fridge", tool: "keep" },
  ],
  rivals: [
    ["macarons", "shells", "filling_g", "of_macarons"],
    ["flavors", "shares", "two", "ring", "center", "placed"],
  ],
  read: readFill,
  compute: answerFill,
});
