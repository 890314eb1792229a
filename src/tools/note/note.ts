/** Notes: a batch in one breath, more to one, a correction. The baker's words are kept as said, numbers beside them. */

import * as z from "zod/mini";
import {
  belongsInNotes,
  besideNote,
  intoNote,
  noteClosers,
  noteOpeners,
  ontoNote,
  toldAndSaved,
  toldInHaste,
} from "../../../data/words/note-talk.ts";
import { opening, takesBack } from "../../../data/words/openers.ts";
import { later, tool } from "../contract/index.ts";
import { exchangeCues } from "../exchange/cues.ts";
import { Found } from "../exchange/rows.ts";
import { cues } from "../lib/cue.ts";
import { text } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { anotherBatch } from "./another-batch.ts";
import { answerNote } from "./answer.ts";
import { Facts } from "./facts.ts";
import { ignoringCues } from "./ignoring.ts";
import { readNote } from "./read.ts";
import { swaps } from "./swapped.ts";
import { remembersIt } from "./to-remember.ts";
import { toldAgain } from "./told-again.ts";
import { wantsNoting } from "./wants-noting.ts";

export const inputs = later(() =>
  z.strictObject({
    do: z.enum(["add", "append", "correct", "remove", "export", "import", "ignore", "count"]),
    text: z.optional(text),
    facts: z.optional(Facts),
    /** The day it is about; today without one. */
    when: z.optional(whenSaid),
    /** The day was said as "3/12": which of the two is the month is the bench's to say. */
    slashed: z.optional(z.boolean()),
    /** Told once more right behind the note: what it had of that is replaced, what it hadn't is added. */
    again: z.optional(z.boolean()),
    /** The flavor of the note that is added to or corrected; the last note without one. */
    about: z.optional(z.array(z.string())),
    /** With `export` and `import`: of what, as what, by which file, and what that held. */
    what: z.optional(z.enum(["notes", "everything"])),
    as: z.optional(z.enum(["csv", "json", "pdf"])),
    file: z.optional(z.string()),
    found: z.optional(Found),
    /** The note on the table. */
    note: z.optional(z.number()),
    /** "keep it in the notes", right behind an answer: that is what is to be written. */
    answer: z.optional(z.literal(true)),
    /** Which of a note's times a correction means. */
    step: z.optional(z.enum(["bake", "rest", "mature"])),
  }),
);

export type NoteInputs = z.infer<ReturnType<typeof inputs>>;

export const note = tool<NoteInputs>({
  name: "note",
  purpose: "A batch noted in one breath; more added to it, or something put right",
  inputs,
  cues: cues(
    [
      8,
      "(?:{count=(?:batches|macarons)}|ones?) (?:to|(?:for|into) (?:the|my)) (?:log|notes?|records?|book|notebook|diary|journal)",
    ],
    [12, ...ignoringCues],
    // "yesterdays batch needs writing down: hazelnut, tops cracked"
    [12, ...wantsNoting],
    // "remember for next time: rose batch, 4 % flavor tasted soapy"
    [16, ...remembersIt],
    // "tack this onto it: no cracks"
    [12, `^${opening}(?:(?:can|could|would|will) you )?${ontoNote} [:,;-] `],
    // told in the past tense, with what a note is made of: no question
    [
      8,
      "^(?:and )?(?:\\S*<when> )?(?:i |we )?(?:just )?(?:baked\\S*|made) (?:\\S+ ){0,3}{taste} (?:\\S+ )*(?:{number} .*(?:{symptom}|{temperature}|{time})|{symptom} .*{time})(?!.* (?:what|why|how|help))",
      "^(?:(?:oh|and|also|then|from|on|for) )*\\S*(?:yesterday|today|morning|night|week|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\\S*<when>(?: [:,-])? {taste} (?:\\S+ )*(?:{number} out of|\\S*<number,fraction>)(?!.* (?:what|why|how))",
    ],
    ...exchangeCues,
    [
      9,
      `^(?:(?:please|pls|ok|okay|and|so|hi|hey|also|then|can you|could you) )*${noteOpeners}`,
      `(?:^|[,.;:-] )(?:(?:and|so|then|now|ok|please|pls|can|could|would|will|you|just|kindly) )*${noteClosers}(?: please| pls)?(?: [.!?])*$`,
      "^(?:(?:please|ok|and|also|oh) )*(?:tack|stick|pop|put) on :? ?",
      // "tack on that they browned"
      "^(?:(?:please|ok|and|also|oh) )*(?:tack|throw|stick\\S*) on (?:there )?that (?:they|it|the|its|theyre|most|some|all|half|a few) ",
      "remember this {count=batches}",
      "(?:done|finished|notebook|diary) , (?:please )?(?:log|note|record) ",
      "(?:write|type|put) up .. {count=batches}",
      "(?:keep|make|take|save|leave) (?:it |this |that )?(?:as )?a note(?: [.!])*$",
      "(?:note|log|record|jot) (?:it|that|this)(?: down)?(?: please| pls)?$",
      "^(?:\\S+ ){0,3}please (?:note|write down|record) (?:down )?that .. (?:{count=batches}|{taste}|{symptom})",
      "add that(?: to (?:it|the note|my note|my notes))?(?: please| pls)?$",
    ],
    [
      9,
      "^(?:(?:please|ok|and|oh) )*(?:write|put|save) (?:it |this |that )?(?:in|into|to) (?:my|the) notes?",
      "^(?:(?:oh|ok|and|also) )*add to (?:it|that|this|the note|my note|notes?)(?: |$)",
    ],
    [
      6,
      "^(?:(?:please|ok|and|also) )*add (?:that|also|in) (?:the|they|it|its|i|my|all|some|most|one|\\S*<number>|tops|shells|feet|we) ",
      "^(?:(?:please|ok|and|also) )*add : ",
      "^not \\S+ (?:, )?i (?:meant|mean) ",
    ],
    [
      6,
      "^(?:i )?(?:made|baked) (?:a |some |the )?{taste} .. (?:rating|rated|scored?|out of) .. {number}",
      "^(?:i )?(?:made|baked) (?:a |some |the )?{taste} .. {number} out of",
      "^(?:i )?(?:made|baked) (?:a |some |the )?{taste} (?:\\S+ )*(?:rating|rated) {number}",
      "(?:make|change|set|put) (?:that|the|its|my) rating",
      "(?:the|its|that) (?:rating|score) (?:should be|should have been|is really|was really) {number}",
      "^(?:\\S+ ){0,3}(?:make|change) (?:that|it|the rating) (?:an?|to) {number} out of",
    ],
    [
      12,
      `^${opening}(?:the |my )\\S+(?: one| ones| batch\\S*)? (?:should (?:be|have been)|(?:was|is) really|deserves|gets) (?:only |an? )?{number} out of`,
      `^${opening}(?:rate|score|mark) (?:the |my )?{taste}(?: one| batch\\S*)? (?:an? )?{number}(?: out of .*)?$`,
      `^${opening}(?:change|set|make|correct) (?:the |my )?\\S+(?: batch\\S*)? (?:rating|score|mark)s? (?:to |an? )*{number}`,
      `^${opening}(?:the |my ){taste}(?: one| ones| batch\\S*)? (?:was|were|is) (?:only |an? )?{number} out of`,
      "^(?:(?:ok|and|please) )*rate (?:that|this|it)(?: one| batch\\S*)? (?:an? )?{number}",
    ],
    [
      16,
      "^(?:please |ok )*(?:remember|note|dont forget|keep in mind) (?:that )?(?:my|our|the) \\S+ (?:is|are) (?:allergic|intolerant)",
    ],
    [6, `^${opening}i (?:wrote|noted|typed) (?:that|it|this) (?:down )?wrong`],
    [5, "^(?:correction|to correct)(?: ,| :)? .. (?:{temperature}|{time}|{number})"],
    [
      9,
      "(?:^(?:(?:please|pls|ok|okay|so|and|also|then|hey|can you|could you|would you|quick|another|{count=batches}) )*(?:note|log|record|jot))",
      "(?:make|take|save|add|write|leave|another) (?:me )?(?:a |another )?note",
      // "what did i write down about ...": asked for, and nothing written
      "(?<!(?:what|much|anything|something|which|where|when|nothing) )(?<!(?:did|have|had|do) (?:i|we) (?:ever |just |even )?)write (?:this |that |it )?down",
      "(?:note|log|record|jot) (?:this|that|it) down",
      "(?:put|save|add) (?:that|this|it) (?:in|into|to) (?:the|my) (?:notes?|log|book|notebook)",
      "(?:^(?:(?:please|ok|and|also|can you) )*(?:add|append|put) (?:this )?(?:to|on) (?:that|it|this|notes?)(?: one| note| batch)?)",
      "(?:^(?:(?:please|ok|and|also|can you) )*(?:add|append|put) (?:this )?(?:to|on) (?:the|my)) .. (?:notes?|{count=batches}|one)",
      "(?:correct|fix|change|amend|edit|update|delete|remove|scrap|erase) (?:that|this|the|my|last) .. (?:note|notes|entry)",
    ],
    [4, `^${opening}(?:correct|amend) (?:that|it|the|my)`],
    [3, "(?:^(?:fix|change) that)", "(?:correct|amend|change) .. {count=batches}"],
    [
      2,
      `^${takesBack}(?:\\S+ ){0,10}(?:it was|it wasnt|they were|they werent|that was|none|{time}|{temperature})`,
      "it was .. (?:{time}|{temperature}) not",
      "(?:^(?:also|and|oh and|plus|forgot)) (?:(?:they|it|the \\S+|i) (?:were|was|had|tasted|came|turned|looked|look|taste|did|used|piped)|theyre|its)",
    ],
    [9, toldAndSaved, toldInHaste],
    // "..., that goes in my notes"
    [14, `^${belongsInNotes}`],
    // "... out of ten can you keep that in the notes"
    [
      9,
      `(?:keep|store|leave|remember|hang on to|hold on to) (?:that|this|it) (?:in|into) (?:the|my) (?:notes?|log|notebook|diary|journal)(?: (?:please|pls|for me|will you|would you|thanks))*(?: [.!])*$`,
    ],
    [-20, "^(?:show |list |read |see |all )*(?:me )?(?:my|the|all) notes?(?: please| pls)?(?: [?])?$"],
    [
      7,
      "^(?:please |ok )*(?:delete|erase|scrap) (?:the|that|my|this|last) .. (?:{taste}|{count=batches}) (?:one|note|batch|entry)(?: please)?$",
      "^(?:please |ok )*(?:delete|erase|scrap|remove) (?:the|that|my) (?:last|latest) (?:one|entry)(?: please)?$",
      "^(?:please |ok )*forget (?:the|that|my|this|last) (?:last |latest )?note(?: please)?$",
    ],
    [-14, "^(?:my |the |an? )?(?:old )?(?:notebook|notes?|diary|book|recipe|card) (?:says?|said|reads?|has)"],
    [-9, "bottle .. (?:says|said|reads) .. {percent}"],
    [-9, "(?:^notes) (?:on|about|from|for|since|with|of)", "(?:show|which|when did|what did|read) .. notes?"],
  ),
  // "rating 7", "oh and rested 40 min"
  goesOn: cues(
    [10, ...toldAgain],
    // "also left tray was too brown": what was seen of that batch
    [
      14,
      "^(?:(?:oh|ok) )*(?:also|and|plus|btw|forgot to say|forgot)(?: :| ,| that)? (?:(?:the|my|a|one|some|both|left|right|top|bottom|first|second|last|back|front|inner|outer|hand|side|few|most|all|of) )*(?:{count=(?:trays|shells|macarons)}|trays?|sheets?|shells|tops|feet|bottoms|oven|half|batch|edges|one) (?:(?:was|were|had|came|turned|looked|got|stayed|went|stuck|cracked|browned|spread|a bit|a little|slightly|too|out|really|very) )*(?!.*(?:^| )(?:what|why|how|help|fix|should|[?])(?: |$))\\S+",
    ],
    // "also they spread a bit"
    [
      14,
      "^(?:(?:oh|ok) )*(?:also|plus|btw|forgot to say|forgot)(?: :| ,| that)? (?:they|these|those|it|some(?: of them)?|most(?: of them)?|a few(?: of them)?|all of them) (?:all |both |just |only |really )?(?:{symptom}|was|were|had|came|turned|looked|got|stayed|went|stuck|cracked|browned|spread|sank|rose|leaked|tasted|smelled|smelt|needed)(?!.*(?:^| )(?:what|why|how|help|fix|should|[?])(?: |$))",
    ],
    // "they were 28 in the end"
    [
      14,
      "^(?:(?:and|oh|so|actually|but) )*(?:they|there) were (?:only )?{number}(?: {count=macarons})?(?: (?:in the end|in all|in total|altogether|of them|after all))*(?: [.!])?$",
    ],
    // "actually 15 min", of a time that was noted
    [
      14,
      `^${takesBack}(?:(?:it was|that was|they were|its|was|more like|rather|they took|it took|make it|make that|baked|for|,) )*{time}(?: [.!])?$`,
    ],
    // "and from thursday: fig batch, shiny, 9/10"
    [12, ...anotherBatch],
    [12, ...swaps],
    // "add that everybody loved them", "add day 3 was the best"
    [
      8,
      "^(?:(?:oh|and|also|ah|please) )*add (?:that )?(?!(?:to|it|this|that|an?|the|some|more|another|\\S*<(?:weight|time|volume|percent|money|temperature)\\S*|\\S*<number>|\\S*<[^>]*(?:ingredient|dose|base)=\\S*) )\\S+ \\S+ \\S+",
    ],
    // "put with it that it was a bit too sweet"
    [14, `^(?:(?:oh|and|also|ah|please|can you|could you) )*(?:${intoNote}|${besideNote}) `],
    [9, "^(?:sorry|no|oops|actually|wait|oh) .*{number} out of", "^{number} out of {number}$"],
    [
      8,
      "^(?:(?:oh|and|also|ok) )*(?:(?:id|i would|i|ill|we) )?(?:give|rate|score) (?:it|them|those|that|this)(?: one| ones| batch\\S*)? (?:an? )?{number}",
      "^(?:(?:oh|and|also|ah) )*(?:add|put|write|note|say) that (?:the|it|they|its|theyre|i|we|there) ",
      "^(?:(?:oh|and|also|ah) )*add (?:they|it|its|theyre|we) (?:were|was|are|is|had|came|tasted|turned|went|got) ",
      "^(?:(?:oh|and|also|plus|it) )*(?:rating|rated|score|scored|rested|{step=rest}|matured|oven) .. (?:{number}|{time}|{temperature})",
      "^(?:(?:oh|and|also|i) )*forgot (?:to (?:say|mention) )?(?:[:,] )?(?:that )?(?:it |they |i )?(?:rating|rated|rested|{step=rest}|matured|oven|{step=bake}) .. (?:{number}|{time}|{temperature})",
      "^(?:(?:oh|and|also|i) )*forgot (?:to (?:say|mention) )?(?:[:,] )?(?:that )?(?:it |they |i )?(?:rating|rated|rested|{step=rest}|matured|oven|{step=bake}) (?:{number}|{time}|{temperature})",
      "^(?:(?:oh|and|also|plus|it) )*(?:rating|rated|score|scored|rested|{step=rest}|matured|oven) (?:{number}|{time}|{temperature})",
    ],
  ),
  examples: [
    {
      say: "note: made pistachio today, 36 of them, two hollow, baked 148 c 16 min",
      inputs: { do: "add", text: "made pistachio today, 36 of them, two hollow, baked 148 c 16 min" },
    },
    {
      say: "log yesterday's batch, coffee caramel, tops cracked",
      inputs: { do: "add", text: "yesterday's batch, coffee caramel, tops cracked" },
    },
    {
      say: "write this down, almond batch, 8 out of 10",
      inputs: { do: "add", text: "almond batch, 8 out of 10" },
    },
    {
      say: "note for march 8: black sesame, lovely feet",
      inputs: { do: "add", text: "for march 8: black sesame, lovely feet" },
    },
    { say: "add to that, tasted better on day 2", inputs: { do: "append", text: "tasted better on day 2" } },
    { say: "add to the lemon note: sharper after two days", inputs: { do: "append", about: ["lemon"] } },
    { say: "correct the last note: it was 152 c", inputs: { do: "correct", text: "it was 152 c" } },
    { say: "delete the last note", inputs: { do: "remove" } },
    { say: "ignore that batch", inputs: { do: "ignore" } },
    { say: "don't count that one", inputs: { do: "ignore" } },
    { say: "count that batch again", inputs: { do: "count" } },
    { say: "export my notes as csv", inputs: { do: "export", what: "notes", as: "csv" } },
    { say: "export everything as json", inputs: { do: "export", what: "everything", as: "json" } },
    { say: "save my batches as a spreadsheet", inputs: { do: "export", as: "csv" } },
    { say: "import notes from batches.csv", inputs: { do: "import", file: "batches.csv" } },
  ],
  elsewhere: [
    { say: "show me the blueberry notes", tool: "recall" },
    { say: "which batches were hollow", tool: "recall" },
    { say: "add 5 minutes to the oven timer", tool: "timer" },
    { say: "my shells are hollow, what went wrong", tool: "trouble" },
    { say: "save this recipe as lemon shells", tool: "formula" },
  ],
  // A note is whole or none: nothing said for the one before goes into the next.
  rivals: [
    [
      "do",
      "text",
      "facts",
      "when",
      "slashed",
      "again",
      "about",
      "note",
      "step",
      "what",
      "as",
      "file",
      "found",
    ],
  ],
  alone: true,
  read: readNote,
  compute: answerNote,
});
