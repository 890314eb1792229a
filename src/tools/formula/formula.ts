/** Recipes of the baker's own: saved by name, shown, listed, corrected, forgotten. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { text, weight_g } from "../lib/inputs.ts";
import { answerFormula } from "./answer.ts";
import { readFormula } from "./read.ts";
import { rightedLine } from "./size-said.ts";

const line = z.object({
  name: text,
  grams: weight_g,
  /** The ends of a range, of which `grams` is the middle. */
  low_g: z.optional(weight_g),
  high_g: z.optional(weight_g),
});

const told = "(?:(?:so|ok|and|well|right|here) )*";
/** A line of a recipe, and what stands between two. */
const ofList = " (?:{weight}|{number}) (?:of )?(?:\\S+ ){0,2}?{ingredient}";
const more = "(?: (?:,|and|&|[+]|;|plus))*";

export const inputs = later(() =>
  z.strictObject({
    does: z.optional(
      z.enum([
        "save",
        "show",
        "list",
        "change",
        "change or scale",
        "drop line",
        "rename",
        "forget",
        "house",
        "book house",
      ]),
    ),
    name: z.optional(text),
    new_name: z.optional(text),
    lines: z.optional(z.array(line)),
    /** Lines that couldn't be read, by their own words: named in the answer, never dropped. */
    unread: z.optional(z.array(z.string())),
    /** Lines without a weight: "a pinch of salt". */
    unweighed: z.optional(z.array(z.string())),
    /** Two amounts of one line that don't agree. */
    doubts: z.optional(z.array(z.string())),
    /** How a range, a cup or a number of whites was taken. */
    taken: z.optional(z.array(z.string())),
    /** A line that is taken out. */
    line: z.optional(text),
    /** A text file that holds the recipe. */
    file: z.optional(text),
    /** Lines come one a turn until a blank line or "done"; how many of them are in the record already. */
    collecting: z.optional(z.boolean()),
    started: z.optional(z.boolean()),
    /** What the last turn added, in its own words; "cancel" takes the recipe back. */
    latest: z.optional(z.string()),
    cancelled: z.optional(z.boolean()),
  }),
);

/** "off my list" is heard as "of my list" behind some names. */
const out =
  "(?:away|out|off|in the (?:bin|trash|rubbish|garbage)|of (?:my|the) (?:list|recipes|collection|book))";
/** "throw the recipe plum ring away", "plum ring can go", "take plum ring off my list of recipes". */
export const throwsAway = [
  `(?:throw|chuck|toss|clear|fling|take|bin|sling|put|cross|strike|kick) (?:(?:the|my|our|that|recipe|formula|for|called|of) )*{formula}(?: recipe| formula)? ${out}`,
  `(?:chuck|toss|clear|fling|sling|kick) (?:out|away) (?:(?:the|my|our|that|recipe|formula|for|called|of) )*{formula}`,
  "^(?:(?:and|so|ok|the|my|our|recipe|formula|i think|then|now) )*{formula}(?: recipe| formula)? (?:can|may|should|must|has to|is to) (?:go|be (?:deleted|removed|forgotten|binned|thrown (?:out|away)|dropped))(?: (?:now|please|then|too))*(?: [.!])*$",
];

/** The one just shown or scaled, for good. */
const pointedForGood =
  "^(?:(?:please|ok|so|and|then|now|can you|could you|lets|i want to|id like to|i will|ill) )*(?:always )?(?:use|take|go by|go with|stick to|stick with|work with|make|set|bake) (?:that|this|it|the)(?: (?:one|recipe|formula))? (?:(?:always|please|as|for) )*(?:from now on|from here on|in future|for good|every time|by default|always|(?:my|the|our) (?:house|usual|standard|default|go to))(?: (?:one|recipe|formula|please|then))*$";
const fromNowOn =
  "^(?:from now on|in future) (?:please )?(?:always )?(?:use|take|go by|go with) (?:that|this|it)(?: (?:one|recipe|formula))?$";
const keeps = "(?:save|store|keep|remember|file)";
const it = "(?: (?:it|this|that|them|these|one|recipe|list|please|pls|for me|for later|down))*";
/** An order to keep it at the end of what stands before the list. */
const savesList = `^(?!.*(?:pantry|cupboard|larder|shelf|stock|note|notes|bottle)(?: |$)).*(?:^| |, )${keeps}${it}(?: (?:as|under|by the name(?: of)?|,) (?:\\S+ ){1,5}?)? ?[:,-] {weight} (?:of )?{ingredient}`;
/** "cloud shells is 120 g almond flour, 120 g powdered sugar, keep it". */
const savesListBehind = `^(?!.*(?:pantry|cupboard|larder|shelf|stock|note|notes|bottle|ive|have|got)(?: |$))(?:[a-z]\\S* ){1,6}(?:is|are|goes|has|takes|uses|:) {weight} (?:of )?{ingredient} .. {weight} (?:of )?{ingredient} .* ${keeps} (?:it|this|that|them)(?: (?:please|pls|for me|for later|as a recipe|[.!]))*$`;

export type FormulaInputs = z.infer<ReturnType<typeof inputs>>;

export const formula = tool<FormulaInputs>({
  name: "formula",
  purpose: "Your own recipes: save, show, list, correct, forget",
  inputs,
  cues: cues(
    // "my garden shells are 110 g whites, 140 g almond flour, 135 g powdered sugar and 100 g sugar": the whole of it
    [
      14,
      `^${told}(?:(?:my|our|the) )?(?:[a-z]+ ){0,2}?{count=shells} (?:are|take|use|have)${ofList}(?:${more}${ofList}){2,6}(?: [.!])*$`,
      `^${told}(?:my|our|the) (?:[a-z]+ ){1,3}?(?:mix|formula|recipe) (?:is|takes|uses|has|goes)${ofList}(?:${more}${ofList}){2,6}(?: [.!])*$`,
    ],
    [
      9,
      "^(?:please |ok |and )*(?:save|store|remember|keep) (?:my|our|this|the) (?:\\S+ ){1,4}: .*{weight} {ingredient}",
    ],
    [
      8,
      "(?:save|store|remember|keep|add|record) (?:the |my |our |this |that |a |new )*(?:recipe|formula)",
      "(?:save|remember|keep|store) (?:my|the|our|this|that|it) .. (?:recipe|formula)",
      "(?:what|which|show|list|how many) .. (?:recipes|formulas|formulae)",
      "(?:forget|delete|remove|drop|lose|throw (?:out|away)|erase|scrap|bin|ditch|trash|get rid of) (?:about )?(?:the |my )?(?:recipe |formula )?(?:for |called )?{formula}",
      "(?:(?:dont|do not) (?:need|want) (?:the |my )?{formula}(?: recipe)? (?:anymore|any more|any longer|now)|no longer (?:need|want) (?:the |my )?{formula}(?: recipe)?)$",
      "(?:forget|delete|remove) .. (?:recipe|formula)",
      // "heres a recipe to keep called plum smbc: 90 g whites", "save a new one, plum smbc: 90 g whites"
      "(?:recipe|formula) (?:(?:that |which )?(?:i|we) (?:want|need|wanna) to|to|worth) (?:keep|save|store|remember|file|keeping|saving) .*{weight} {ingredient}",
      "^(?:(?:please|ok|and|so|also) )*(?:save|store|keep|remember|add|file) (?:(?:this|a|another|my|new) )*one (?:\\S+ ){0,6}: .*{weight} {ingredient}",
      "(?:show|read|tell|give) (?:me )?(?:the |my )?(?:recipe |formula )?(?:for )?{formula}",
      // "let me see choc shells again", "another look at cloud shells", "what does cloud shells look like"
      "(?:see|view|look at|open|pull up|bring up|call up|get out|look up|fetch|recall) (?:me )?(?:the |my )?(?:recipe |formula )?(?:for )?{formula}(?: recipe| formula)?(?: (?:again|please|pls|for me|once more|as (?:it is|it was|i) ?.*))*(?: [?])?$",
      "(?:another|a|a quick|one more) (?:look|peek|glance) at (?:the |my )?{formula}",
      "what (?:does|do|did) (?:the |my )?{formula} (?:look|come|go|say|read|have|take|contain)",
      "(?:whats|what is|what was|what goes) (?:in )?(?:the |my )?{formula}",
      "rename .. {formula}",
      "{formula} (?:(?:recipe|formula) )?(?:should|shall|must|will|is to|has to) (?:now )?(?:be|get) (?:now )?(?:called|named|renamed)",
      "call it .. : {weight}",
      "save (?:it|that|this) as",
      "^(?:(?:my|new|a|the) )*(?:recipe|formula) (?!.*(?:says|calls| what | how | but | only| i have | ive got )).* : .*{weight} {ingredient}",
      "(?:new|another|a) (?:recipe|formula) (?:called|named|is called) .*{weight} {ingredient}",
      "^(?:my|our) (?:\\S+ )?{count=shells} (?:are|take|use|have) {weight} {ingredient}(?!.* (?:what|how|only|but|make|scale|times|need|want|save))",
      "^(?:(?:my|new|a|the|save|add|please|pls|ok) )*(?:recipe|formula) .* :$",
      "(?:read|load|import|open|get|take|fetch) .*(?:recipe|formula)s? .*(?:from|in|out of|file) ",
      "(?:read|load|import) .* (?:txt|file)",
    ],
    [
      8,
      "{formula} (?:as|is|for|to be) (?:my|the|our) (?:house|usual|standard|own|default) (?:recipe|formula|shells?|batter|one)?",
      "(?:my|the|our) (?:house|usual|standard|default) (?:recipe|formula) (?:is|will be|should be|be|to|:) {formula}",
      "(?:back to|use|go by) the book<?\\S* .*(?:house|shell|recipe|formula)",
      "(?:forget|reset|drop|clear) (?:my|the|our) house (?:recipe|formula)",
      "(?:what|which|whats) (?:is |recipe is )?(?:my|our) house (?:recipe|formula|shells)",
    ],
    // "my nan shells recipe is 95 g whites, ..., save it"
    [
      14,
      "^(?:(?:ok|so|and|here|heres) )*(?:my|our|the) (?:\\S+ ){1,4}(?:is|are|has|goes|takes?|uses?|:) {weight} (?:of )?{ingredient} .. {weight} (?:of )?{ingredient} .* (?:save|keep|store|remember) (?:it|this|that|them)(?: (?:please|pls|for me|for later|as a recipe|[.!]))*$",
    ],
    // "can i save it, 150 g cream, 450 g dark chocolate": what is spoilt, and no recipe
    [
      -16,
      "(?:can|could|how (?:do|can|would|could)) (?:i|we|one) (?:still |possibly )?(?:save|rescue) (?:it|this|that|them)(?! as )",
    ],
    // "this is my recipe choc shells, keep it: 115 g almond flour, ...", "save this one as cloud shells - 120 g ..."
    [14, savesList, savesListBehind],
    [
      22,
      "^(?:(?:please|ok|can you|could you) )*(?:write|put|take|jot|get) down (?:(?:my|our|the|this|a|new) )+(?:\\S+ )?(?:recipe|formula) (?:\\S+ ){0,5}?[:,-] {weight} {ingredient} .. {weight} {ingredient}",
    ],
    // "my own recipe, please save it under the name cloud mix. 120 g almond flour, 120 g powdered sugar"
    [
      10,
      "(?:save|store|keep|remember|file|record) (?:it|this|that|them|these|my recipe|the recipe|this recipe) (?:as|under|by) .*{weight} {ingredient}",
      "(?:save|store|keep|remember|file|record) (?:(?:it|this|that|my|recipe|please|the|formula|one) )*under .*(?:{weight}|{number}) ",
      "(?:recipe|formula|mix) .* (?:called|named|name|call (?:it|this|that)|name (?:it|this|that)) (?:[a-z]\\S* ){1,4}[,:-] (?:{ingredient} )?(?:{weight}|{number}) (?:{ingredient} )?.*(?:{weight}|{number})(?!.* (?:what|how|only|but|scale|times))",
      "(?:recipe|formula|mix|shells?) .* (?:save|store|keep|remember|file|record) (?:it|this|that|them|these) (?:as|under|by) ",
      "{weight} {ingredient} .. {weight} {ingredient} .. (?:save|store|keep|remember|file|record) (?:it|this|that|them|these) (?:as|under|by) ",
      "(?:recipe|formula) .* (?:called|named|by the name(?: of)?|(?:the|its) names?(?: is)?|call it|name it) .*{weight} {ingredient} .. {weight} {ingredient}(?!.* (?:what|how|only|but|scale|times))",
    ],
    [12, "(?:change|correct|fix|set|put) .. {ingredient} .. {formula}"],
    // "keep green ring with 36 g of pistachio paste from now on", "chuck the plum recipe out"
    [
      20,
      "{formula} .. {weight} (?:of )?{ingredient} .*from now on",
      "from now on .* {formula} .. {weight} (?:of )?{ingredient}",
    ],
    [14, ...throwsAway],
    // "use grandmas from now on", "make grandmas my default"
    [
      16,
      "^(?:(?:please|ok|so|and|then|now|can you|could you|lets|i want to|id like to|i will|ill) )*(?:always )?(?:use|take|go by|go with|stick to|stick with|work with|make|set|bake|switch to) (?:(?:the|my|our|always) )*{formula}(?: recipe| formula| shells)? (?:(?:always|please|as|for) )*(?:from now on|from here on|in future|for good|every time|by default|always|(?:my|the|our) (?:house|usual|standard|default|go to))(?: (?:one|recipe|formula|shells|please|then))*$",
      "^always (?:use|take|go by|go with) (?:(?:the|my|our) )*{formula}(?: recipe| formula| shells)?$",
      "^(?:from now on|in future) (?:please )?(?:always )?(?:use|take|go by|go with) (?:(?:the|my|our) )*{formula}(?: recipe| formula| shells)?$",
    ],
    [
      10,
      "(?:take|leave) .. {ingredient} (?:out of|from) {formula}",
      "(?:{count=shells}|{base}) (?:are|is|take|takes|use|uses|have|has) .*{weight} {ingredient}.* (?:save|remember|keep|store) (?:that|it|this)",
    ],
    [
      5,
      "{formula} .. (?:has|have|should|takes|gets|with) .. {weight} .. {ingredient}",
      "(?:change|correct|fix|make|set|put) .. {formula} .. {weight}",
      "(?:change|correct|fix|make|set|put|take) .. {ingredient} .. {formula}",
      "{formula} .. {ingredient} .. {weight}",
      "^{formula}$",
      "recipe for {formula}",
    ],
    [4, "from now on .. {weight} .. {ingredient}", "(?:recipes|formulas)"],
    [2, "{formula}"],
    [
      -6,
      "scale|rescale|resize|times|double|halve|half of|{factor}",
      "(?:cost|costs|label|allergens?|buy|margin)",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|notes|log|jot)",
      "bottle",
    ],
    [
      -4,
      "{formula} (?:to|for|from|with) (?:{weight}|{number})",
      "how many {count}",
      "how much",
      "(?:says|calls for) .. only",
      "{weight} .. (?:i|ive) (?:only |just )?(?:have|got) (?:only |just )?{weight}",
    ],
  ),
  // "change the butter to 200 g", of the recipe that was just saved or shown
  // "use that one from now on"
  goesOn: cues([12, ...rightedLine], [22, pointedForGood, fromNowOn]),
  after: { scale: cues([22, pointedForGood, fromNowOn]) },
  examples: [
    {
      say: "save recipe snowy shells: 105 g whites, 130 g almond flour, 130 g powdered sugar, 95 g granulated sugar",
      inputs: {
        does: "save",
        name: "snowy shells",
        lines: [
          { name: "whites", grams: 105 },
          { name: "almond flour", grams: 130 },
          { name: "powdered sugar", grams: 130 },
          { name: "granulated sugar", grams: 95 },
        ],
      },
    },
    { say: "what recipes do i have", inputs: { does: "list" } },
    { say: "which recipes have I saved", inputs: { does: "list" } },
    {
      say: "save my recipe, call it porch shells: 110 g whites, 140 g almond flour",
      inputs: { does: "save", name: "porch shells" },
    },
    {
      say: "remember my caramel recipe: 70 g butter, 50 g honey, 30 g cream",
      inputs: { does: "save", name: "caramel" },
    },
    { say: "forget the recipe snowy shells", inputs: { does: "forget", name: "snowy shells" } },
    { say: "recipe snowy shells:", inputs: { does: "save", name: "snowy shells", collecting: true } },
    { say: "read recipe from shells.txt", inputs: { does: "save", file: "shells.txt" } },
  ],
  elsewhere: [
    { say: "recipe says 105 whites 135 almond but I only have 70 g whites", tool: "scale" },
    { say: "shell recipe for 36 macarons", tool: "scale" },
    { say: "my mint bottle says half a percent, save that", tool: "shelf" },
    { say: "pantry: 50 g almond flour", tool: "shelf" },
  ],
  rivals: [
    [
      "does",
      "name",
      "new_name",
      "lines",
      "unread",
      "unweighed",
      "doubts",
      "taken",
      "line",
      "file",
      "collecting",
      "started",
      "latest",
      "cancelled",
    ],
  ],
  alone: true,
  read: readFormula,
  compute: answerFormula,
});
