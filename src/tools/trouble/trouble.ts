/** What went wrong and what to change: causes in order, with the baker's own notes about the same symptom beside them. */
import * as z from "zod/mini";
import { troubles } from "../../../data/rules/troubles.ts";
import { upset } from "../../../data/words/feelings.ts";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { temperature_c } from "../lib/inputs.ts";
import { answerTrouble } from "./answer.ts";
import { readTrouble } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    /** The id of data/words/symptoms.ts. */
    symptom: z.optional(z.enum(troubles.map((row) => row.id) as [string, ...string[]])),
    /** The heat that the oven was at, where it was told. */
    oven_c: z.optional(temperature_c),
    /** That heat is of an oven with its fan on. */
    fan: z.optional(z.boolean()),
    /** Only on one side of the tray or of the oven. */
    one_side: z.optional(z.boolean()),
    /** So many causes are ruled out by what she did: the next one leads. */
    ruled_out: z.optional(z.number()),
    /** What is wrong is of something that no row is of: "caramel". */
    other: z.optional(z.string()),
    /** She says that the air is damp. */
    damp: z.optional(z.boolean()),
  }),
);

export type TroubleInputs = z.infer<ReturnType<typeof inputs>>;

/** Nothing else is asked beside it. */
const unasked = "^(?!.*(?:^| )(?:how|what|whats|when|where|which|should|can|could|would) )";

export const trouble = tool<TroubleInputs>({
  name: "trouble",
  purpose: "What went wrong with shells, ganache, buttercream or meringue, and what to change",
  inputs,
  cues: cues(
    [4, "^(?:(?:my|the|help|oh no|ugh|now) )*{base} (?:is|looks|went|gone|turned|goes) (?:\\S+ )?{symptom}$"],
    // no ratio mends it, whatever was weighed
    [
      18,
      "{base=ganache} .. {symptom=grainy_ganache} .. {weight}",
      "{weight} .. {base=ganache} .. {symptom=grainy_ganache}",
    ],
    // but one that has split is mended with cream by its weight
    [
      -18,
      "{weight} .. {base=ganache} .. {symptom=split_ganache}",
      "{base=ganache} .. {symptom=split_ganache} .. {weight}",
    ],
    [5, "(?:folded|folding|fold) .. (?:runny|thin|liquid|loose)\\S*"],
    [5, "(?:not one\\S*|not a single|none|no|zero) .. (?:feets?|frills?|skirts?)"],
    [11, "{symptom} .. (?:what|why) .. (?:gone|went|go|goes) wrong"],
    [7, "what (?:did|have|am|was|whatever am) i (?:do|done|doing) wrong"],
    // "my last batch had no feet, im raging": told with feeling, and no search in the notes
    [7, `${unasked}(?:\\S+ )*{symptom} .. ${upset}`, `${unasked}(?:\\S+ )*${upset} .. {symptom}`],
    // rooms and the sky
    [-12, "(?:in|at) (?:my|the|our|this|a) flat\\S*", "full<?\\S* moon"],
    [6, "{base=ganache} .. {symptom}", "{symptom} {base=ganache}"],
    [5.5, "{symptom} (?:after|for) {time}"],
    [
      4,
      "(?:why|how come|what makes) .. (?:crack|feet|burst)",
      "(?:went|gone|going|goes) wrong",
      "{count=(shells|macarons)} (?:all |always |keep |still )*(?:crack|cracks)",
      "cracks? on (?:the )?tops?",
      "(?:why|hwy|how come) .. {symptom}",
      "{symptom} .. (?:why|what|whats|wot|help|how (?:do|can) i (?:fix|stop|avoid|prevent|save|rescue))",
      "(?:what|whats) .. (?:wrong|went wrong|cause|causes|caused|makes) .. {symptom}",
      "how (?:do|can) i (?:fix|stop|avoid|prevent|get rid of|cure|save|rescue) .. {symptom}",
      "what (?:do|should|can|would) i (?:do|change|try) .. {symptom}",
      "{symptom} .. again",
    ],
    [
      3,
      "(?:my|the|these|theyre|they|all|every|shells|tops|bottoms|feet|its|it|them|batch|half|some) .. {symptom}",
      "{count=(shells|macarons)} .. {symptom}",
      "{base} .. {symptom}",
      "{symptom} {base}",
      "{symptom} {count=(shells|macarons)}",
      "(?:went|goes|going|gone|got|getting|came out|come out|turned|keep|keeps|always|looks?|looking) .. {symptom}",
      "what (?:went|did i do|am i doing|have i done|is|was|did i do) wrong",
    ],
    [3, "(?:no|dont|didnt|without|not|never|havent|wont|doesnt) .. feet"],
    [
      4,
      "^(?:(?:oh|ugh|argh+|arg|no|help) (?:, )?)+(?:its|it is|it has|theyre|they are|theyve|they) (?:all |gone |just |so )*{symptom}",
    ],
    [
      4,
      "^(?:(?:oh|ugh|argh+|arg|no|help|now|so) (?:, )?)+(?:its|it is|it has|it) (?:all |gone |just |so |too )*\\S+<(?:loose|stiff|grainy|soupy|curdled)_\\S+>",
    ],
    [
      5,
      "(?:theyre|they are|they came out|they|these) (?:\\S+ ){0,3}(?:no good|bad|awful|terrible|not (?:\\S+ ){0,2}good)(?: \\S+)* (?:, )?what (?:happened|went wrong|did i do)",
    ],
    // "still split", with no bowl named: a ganache's
    [
      6,
      "^(?:(?:and|but|oh|no|ugh|argh|now|ok|well|help|hm) (?:, )?)*(?:(?:its|it is|it|the|my|its all|this) )*(?:{base=ganache} )?(?:is )?still (?:all |a bit |so |quite )*\\S*<(?:split_ganache|[^>]*split_ganache)[^ ]*(?: (?:now|though|help))*(?: [?])?$",
    ],
    // "my fan oven at 160 cracked the shells": a heat, and no number of shells
    [
      9,
      "oven .. (?:at|on|to|of) {number} .. (?:cracked|cracks|browned|browns|burnt|burns|burned)(?:<\\S*>)? (?:(?:the|my|all|half|some|of|them|these) )*(?:{count=shells}|{count=macarons}|tops|them)",
    ],
    // nothing else is ever said of a skin that does not form
    [5, "{symptom=no skin}"],
    [
      2.5,
      "{symptom}",
      "(?:shells|{count=(shells|macarons|batches)}) .. (?:failed|flopped|ruined|disaster|wrong)",
    ],
    [1, "(?:wrong|disaster|ruined|failed|fix|rescue|mend|tears)", "next time"],
    [
      -6,
      "{symptom} (?:(?:it|them|this) )?(?:in|into|between|equally|evenly|up into) (?:{number}|{fraction}|half|two|three|four|equal|thirds|{count})",
      "{symptom=cracked_tops} (?:one|two|another|an?(?! bit| little| touch| lot| tad| few)|the|my|some|{number}|{ingredient})(?: more)?",
      "(?:save|make|add) (?:a |an |another )?(?:note|entry)",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|notes|log|record|jot|write|add)",
      "(?:write|jot|note) (?:that|this|it)? ?down",
    ],
    [
      -5,
      "(?:which|what|any|show|list|find|how many) .. (?:batch\\S*|bakes?|notes?|ones)",
      "when did",
      "did i (?:ever )?(?:bake|make)",
      "out of (?:five|ten|5|10)",
      "{number} out of",
    ],
    [
      -5,
      "{weight} .. {base=ganache}",
      "{base=ganache} .. {weight}",
      "{chocolate} .. {base=ganache} .. {symptom=(loose|stiff)_ganache}",
      "what (?:do|should|can) i add",
      "how much .. (?:add|more)",
    ],
    [
      -4,
      "{weight} .. {chocolate}",
      "{chocolate} .. {weight}",
      "{dose=(gel_color|powder_color)} .. {weight}",
      "(?:timer|alarm|recipe|label|allergens?|margin|markup)",
      "(?:how|hw) much .. {base}",
    ],
    [
      -2,
      "(?:how|hw) (?:much|many)",
      "{percent}",
      "{symptom=meringue_that_will_not_peak} (?:{ingredient}|peaks?)",
      "is (?:it|that|this) (?:still )?(?:safe|ok|okay|good)",
      "how long (?:do|does|can|will|should|left|is|are|until|till)",
    ],
  ),
  // "im at 150", behind a fault
  after: {
    dose: cues([
      14,
      "^(?:(?:oh|no|ugh|now|and|but|help) )*(?:it|its|it has|its just|it just) (?:all )?(?:split|curdled|broke|broken|separated)(?:<\\S+)?(?: [!?.])?$",
      "^(?:(?:oh|no|ugh|now|and|but|help) )*(?:it|its|it has|its just|it just) (?:all )?{symptom}",
      "^(?:(?:oh|no|ugh|now|and|but|help) )*(?:its|it is|its gone|it went) (?:too |very |really |all |a bit )*\\S+<(?:loose|stiff|soupy)_\\S+>(?: (?:now|again|still|though))*(?: [?.!])?$",
    ]),
  },
  goesOn: cues(
    [
      12,
      "^(?:(?:but|well|no|and|yes|yeah|i|we|they|it|already) )*(?:did (?:that|it|so|rest)|do that|rested|have rested|let them rest|dried|tried (?:that|it)|whipped|sifted|checked|its not that|it isnt that|not that|isnt it|thats not it)(?: |$)",
      "^(?:and |so |ok )*(?:what else|anything else|what other (?:cause|reason)s?|other reasons?|else)(?: could it be| can it be)?(?: [?])?$",
      "^(?:but |well |and )*(?:i|we) (?:let them )?{step=rest}",
      "^(?:but |and )*(?:its|it is|the (?:air|day|kitchen) is) (?:so |very |quite |really )?(?:humid|damp|raining|rainy|wet)(?: (?:today|here|out))?$",
    ],
    [
      6,
      "^(?:(?:my|the|its|im|i|and|but|well|oven|ovens|was|is|at|baked|bake|it|them|set|to|temp\\S*|temperature|by|thermometer) )+(?:{temperature}|{number})(?: (?:fan|already|though))*(?: [?])?$",
    ],
  ),
  examples: [
    { say: "my shells have no feet, why", inputs: { symptom: "no feet" } },
    { say: "the tops cracked, what do i change", inputs: { symptom: "cracked tops" } },
    { say: "my buttercream looks curdled", inputs: { symptom: "curdled buttercream" } },
    { say: "shells are hollow again, what went wrong", inputs: { symptom: "hollow" } },
    { say: "the ganache has split", inputs: { symptom: "split ganache" } },
    { say: "meringue will not peak", inputs: { symptom: "meringue that will not peak" } },
    { say: "bottoms are sticking to the mat", inputs: { symptom: "sticky bottoms" } },
    { say: "the batter is runny", inputs: { symptom: "runny batter" } },
  ],
  elsewhere: [
    { say: "note hollow batch, oven at 165 C", tool: "note" },
    { say: "which batches were hollow", tool: "recall" },
    { say: "my 300 g ganache just split", tool: "ganache" },
    { say: "milk ganache too runny, 200 g chocolate 150 g cream", tool: "ganache" },
  ],
  rivals: [
    ["symptom", "ruled_out", "damp", "other", "one_side"],
    ["oven_c", "fan"],
  ],
  sum: [],
  read: readTrouble,
  compute: answerTrouble,
});
