/** What a label has to say: ingredients in order, allergens, net weight, dates; what isn't known is left blank and named. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, weight_g } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { answerLabel } from "./answer.ts";
import { readLabel } from "./read.ts";

const side_mm = z.optional(
  z
    .number()
    .check(
      z.gte(20, { error: "A label under 20 mm has no room for its text." }),
      z.lte(400, { error: "A label over 400 mm is larger than the paper." }),
    ),
);

export const inputs = later(() =>
  z.strictObject({
    want: z.optional(z.enum(["label", "allergens", "dates", "safe"])),
    market: z.optional(z.enum(["us", "eu"])),
    /** A country whose form isn't known here: it is asked which of the two shall stand in. */
    elsewhere: z.optional(z.string()),
    /** Who is responsible for it: name and address, as she wrote them. */
    by: z.optional(
      z.string().check(z.maxLength(200, { error: "A name and address of at most 200 letters." })),
    ),
    /** `taste` is set on a line of flavor, so that its bottle can be asked. */
    lines: z.optional(
      z.array(z.object({ name: z.string(), grams: weight_g, taste: z.optional(z.string()) })),
    ),
    /** Pieces of the sentence that couldn't be read as a line. */
    unread: z.optional(z.array(z.string())),
    /** The lines came from the answer before. */
    from_table: z.optional(z.boolean()),
    formulas: z.optional(z.array(z.string())),
    net_g: z.optional(weight_g),
    net_oz: z.optional(weight_g),
    made: z.optional(whenSaid),
    /** A description instead of weights: what it is made of, by name. */
    mixes: z.optional(z.array(z.string())),
    named: z.optional(z.array(z.object({ name: z.string(), taste: z.optional(z.string()) }))),
    /** "do they contain nuts": the allergens that are asked about, by their ids. */
    asked: z.optional(z.array(z.string())),
    /** To be printed: so many or a page full, of that size, on that paper. */
    as_pdf: z.optional(z.boolean()),
    full_page: z.optional(z.boolean()),
    copies: z.optional(
      count("labels").check(z.lte(1000, { error: "More than 1000 labels at once; print them in parts." })),
    ),
    label_width_mm: side_mm,
    label_height_mm: side_mm,
    paper: z.optional(z.enum(["a4", "letter"])),
  }),
);

export type LabelInputs = z.infer<ReturnType<typeof inputs>>;

export const label = tool<LabelInputs>({
  name: "label",
  purpose: "The label: ingredients in order, allergens, net weight, dates, for the US or the EU",
  inputs,
  cues: cues(
    [
      9,
      "(?:safe|ok|okay|fine|suitable|alright|can|for) .. (?:allerg\\S*|intoleran\\S*|coeliac|celiac)",
      "(?:allerg\\S*|intoleran\\S*|coeliac|celiac) .. (?:kid|kids|child|guest|friend|customer|person|eat|have|instead|safe|ok)",
    ],
    [
      7,
      "(?:print|printed|printable|pdf|pdfs) .. labels?",
      "labels? .. (?:pdf|pdfs|print|printed|printing|printable|paper)",
      "(?:sheets?|pages?)\\S* (?:of|with|full of) .. (?:labels?|stickers)",
      "label sheets?\\S*",
      "^(?:and |as |make it |in |print )*(?:a |one )?sheet\\S* of {number}(?: of (?:them|those|these))?(?: (?:please|pls))?$",
    ],
    [4, "{number} (?:\\S+ )?labels?"],
    [
      2,
      "(?:as|to|in) (?:a |an )?pdfs?",
      "pdfs?",
      "^(?:(?:and|can|could|you|please|ok|now) )*print",
      "{number} copies",
    ],
    [
      5,
      "(?:allergens?|allergen|allergies)",
      "(?:us|usa|u s|american|eu|e u|european|uk) labels?",
      "labels? .. {ingredient} .. {weight}",
      "labels? .. {weight} .. {ingredient}",
    ],
    [
      4,
      "labels?",
      "(?:contains|contain) (?:line|statement)",
      "(?:declare|declaration)",
      "ingredients? (?:list|line|statement)",
      "best (?:by|before) date",
      "(?:nuts?|gluten|dairy|eggs?|milk|soy|soya|lactose|wheat|peanuts?) ?free",
      "{ingredient=(egg|milk)} free",
      "{count=(macarons|shells)} .. (?:contain|contains)",
      "{base} .. (?:contain|contains)",
      "{chocolate} .. (?:contain|contains)",
      "(?:contain|contains) (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient})",
      "(?:is|are) there (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient}) in .. (?:{base}|{count=(macarons|shells)})",
      "allergic",
      "allergy",
    ],
    [1, "net (?:weight|wt)", "{weight} .. {ingredient}", "(?:contains|contain)"],
    [
      -6,
      "bottle .. contains?",
      "(?:bottle|flavor|flavour|oil|extract) label",
      "label (?:says|said|reads|on (?:my|the) bottle)",
      "(?:timer|alarm)",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|record|jot)",
      "label it",
      "label (?:the|that|this) timer",
    ],
    [-4, "(?:cost|costs|price|charge|margin|markup)", "box and label", "time to label"],
  ),
  // "and if i put peanut butter in them"
  goesOn: cues(
    [
      4,
      "(?:if|when) (?:i|we) (?:put|use|add|swap|swapped|used|added|make|fill)",
      "^(?:and |what about )*with (?:\\S+ )+in (?:it|them)(?: too| as well)?",
    ],
    [
      8,
      "(?:does|do|has|have) (?:it|they|that|these|those|this) (?:have|contain|got|hold|include) (?:any )?(?:nuts?|gluten|soya?|dairy|lactose|wheat|eggs?|milk|allergens?|{ingredient})",
      "any (?:nuts?|gluten|soya?|dairy|lactose|wheat|eggs?|milk|allergens?|{ingredient})(?: in (?:it|them|that|there))?(?: at all)?(?: [?])?$",
    ],
    [12, "(?:my|our) (?:name|address)", "name and address"],
    [12, "^(?:(?:and|the|what|whats|about|which) )*(?:best|use) (?:before|by)(?: date)?(?: [?])?$"],
    [16, "^(?:(?:and|the|its|ok) )*net (?:weight|wt) (?:is |of |= )?(?:{weight}|{number})"],
    [-8, "{number}", "{weight}", "{volume}", "{percent}"],
  ),
  examples: [
    {
      say: "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar, 90 g butter, net weight 120 g",
      inputs: { market: "us", net_g: 120, want: "label" },
    },
    {
      say: "eu label for ground almonds 130 g, icing sugar 130 g, egg whites 100 g, sugar 100 g, cream 90 g",
      inputs: { market: "eu", want: "label" },
    },
    {
      say: "what allergens do i declare for pistachio macarons with white chocolate ganache",
      inputs: { want: "allergens", mixes: ["shells", "ganache"] },
    },
    { say: "what's the best by date on the label for a batch I filled today", inputs: { want: "dates" } },
    {
      say: "which allergens are in hazelnut macarons with buttercream",
      inputs: { want: "allergens", mixes: ["shells", "buttercream"] },
    },
    {
      say: "a sheet of 12 labels as a pdf: almond flour 130 g, powdered sugar 130 g, egg whites 100 g, sugar 100 g, butter 90 g",
      inputs: { as_pdf: true, copies: 12, want: "label" },
    },
    {
      say: "print a label 90 x 80 mm on a4 for 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar",
      inputs: { as_pdf: true, label_width_mm: 90, label_height_mm: 80, paper: "a4" },
    },
    { say: "print that label as a pdf", inputs: { as_pdf: true } },
  ],
  elsewhere: [
    { say: "my mint bottle's label says half a percent, save that", tool: "shelf" },
    { say: "what do I charge for a box at a 60 % margin", tool: "cost" },
    { say: "made them on the 9th, still good today", tool: "keep" },
  ],
  rivals: [
    ["lines", "unread", "from_table", "formulas", "mixes", "named", "asked"],
    ["net_g", "net_oz"],
    ["made"],
    ["want"],
    ["market", "elsewhere"],
    ["by"],
    ["label_width_mm", "label_height_mm"],
    ["copies", "full_page"],
  ],
  read: readLabel,
  compute: answerLabel,
});
