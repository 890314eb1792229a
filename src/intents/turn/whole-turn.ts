/** Turns that are one thing from end to end: a note, a list of stock. Nothing in them is another question. */
import {
  belongsInNotes,
  noteBehindBatch,
  noteBehindFacts,
  noteClosers,
  noteEntered,
  noteHeaded,
  noteOrdered,
  ontoNote,
  toldAndSaved,
  toldInHaste,
} from "../../../data/words/note-talk.ts";
import { toldInParts } from "./parts-told.ts";

/** "made raspberry, 11 g flavor in 280 g buttercream. rating 9": a note in two sentences. */
const ratedBatch = /^(?:i )?(?:made|baked) (?:a |some |the )?\S*<[^>]*taste=.* (?:rating|rated) \S*<number/;

const opening = "^(?:(?:please|pls|ok|so|and|can you|could you) )*";
/**
 * A whole turn that is one note from here on: nothing in it is another question. One pattern for each way to begin it, as
 * each is only compiled for a turn that holds its words.
 */
const noteStarts = [
  new RegExp(`${opening}${noteOrdered}(?: |$)`),
  new RegExp(`${opening}${noteHeaded}(?: |$)`),
  new RegExp(`${opening}${noteEntered}(?: |$)`),
  new RegExp(`${opening}${noteBehindBatch}(?: |$)`),
  new RegExp(`${opening}${noteBehindFacts}(?: |$)`),
  new RegExp(`${opening}(?:tack on|add to (?:that|the|my|it))(?: |$)`),
  new RegExp(`${opening}${ontoNote} [:,;-](?: |$)`),
  new RegExp(
    `${opening}(?:(?:save|remember|keep|store) (?:(?:the|my|our|this|that|a|new) )*(?:\\S+ ){0,3}(?:recipe|formula)|save formula|(?:(?:heres|here is|this is|new) )?(?:(?:my|our|a|the) )?(?:(?:own|new) )?(?:recipe|formula)(?: of (?:mine|ours))?(?!.* (?:what|whats|how|which|scaled?|rest|for) ).* (?:call it|called|named|name of|under)|recipe (?!.* (?:what|how|but) )\\S.* :|(?:read|load|import|open) .*(?:recipe|formula))(?: |$)`,
  ),
  new RegExp(`${opening}(?:save|remember|keep|store) (?:my|our|this|the) (?:\\S+ ){1,4}:(?: |$)`),
  new RegExp(`${opening}(?:pantry|shopping)(?: |$)`),
];
const startsNote = (mask: string): boolean => noteStarts.some((start) => start.test(mask));

/** "Note for March 7: ...", "log yesterday: ...", "note that the fig ones ...": nothing else is begun so. */
const noteBegun =
  /^(?:(?:please|pls|so|ok|now|right|and|here goes|can you|could you|would you) )*(?:(?:note|log)(?: (?:down|that|this|for|of|it))*(?: (?:on|for))?(?: (?:the|my|our|a|an))?(?: \S*<(?:when|[^>]*taste=)\S*| :| ,)|(?:note|log|record|jot down|write down) (?:this|that|it)(?: down)?(?: please| for me)? :|(?:note|log) (?:a|an|the|that the) )/;
/** Whether a note is begun here, behind what was told before it. */
export const beginsNote = (mask: string): boolean => noteBegun.test(mask);

const orderInside =
  /^(?:and |then |also )*(?:(?:set|start|put|begin) .*(?:timer|alarm|<time)|take (?:it|that|them|this|everything|all \S+) (?:all )?(?:off|out of) (?:the|my) |(?:tell|show) me|whats |what (?:is|are|do|does|did|should|would|can|makes?|causes?|went|about|temp\S*) |how (?:much|many|long|hot|cold|do|does|did|can|should|about) |why (?:is|are|do|does|did|have|has|was|were) |(?:(?:please|can you|now) )*(?:what|which|list|show|see)(?: me)?(?: all)?(?: of)?(?: my| the)?(?: other| saved)? (?:recipes|formulas)(?: |$))/;

/** An order at the end that makes a note of all before it. */
const noteEnd = new RegExp(`(?:${noteClosers}|add that)(?: please| pls)?(?: [.!])*$`);

/** "..., that goes in my notes", where nothing is asked. */
const toldForNotes = new RegExp(`^${belongsInNotes}`);

/** "put 2 kg sugar and 500 g butter in the pantry": one order, whatever is listed in it. */
const pantryOrder =
  /^(?:(?:please|pls|ok|so|and|i|ive|just|have|got) )*(?:put|add|stick|store|bought|got|have|used) (?!.* (?:how|what|which|when|timer) ).*<weight>.* (?:pantry|larder|cupboard|stock|shelf)(?: |$)/;

/** "cupboard: whites 80 g, ground almonds 90 g. biggest batch i can do?": the list is what the question is about. */
const stockQuestion =
  /^(?:(?:my|the|in) )*(?:pantry|larder|cupboard|stock|shelf) :? ?.*<weight>.* (?:biggest|largest|how big|what size|most)(?: \S+)* (?:\S*<count=|i can)/;

/** "..., also 20 min timer": no part of what is noted. */
const timerBehind =
  /^(?:also|and|plus|then|and also) (?:set |start |a |the |me |my )*(?:\S*<step=\S+> timer \S*<time>|\S*<time> (?:\S+ ){0,2}timers?|timer (?:for |of )?\S*<time>)/;

const timerAlone = /^(?:start |set |a |the )*(?:\S*<step=\S* )?timer (?:for |of )?\S*<time>/;

const offTheShelf =
  /^(?:and |then )*take (?:it|that|them|this|everything) (?:all )?(?:off|out of|from) (?:the|my) (?:shelf|stock|pantry|larder|cupboard)(?: |$)/;

/** "baked vanilla today, 40 of them, a few cracked, oven 150": told, and nothing asked. */
const toldBatch =
  /^(?:i |we )?(?:just )?(?:baked\S*|made) (?:\S+ ){0,3}\S*<[^>]*taste=(?!.*(?: what | why | how | which |\?)).*(?:<number.*(?:<symptom|<temperature|<time)|<symptom.*<time)/;

/** "did two trays of brown butter today full and shiny 8 out of 10 save that": told from end to end. */
const savedBatch = new RegExp(`${toldAndSaved}|${toldInHaste}`);

/** "this is my recipe choc shells, keep it: 115 g almond flour, ...": an order to keep a list, and the list. */
const keptList =
  /(?:^| )(?:save|store|keep|remember|file)(?: (?:it|this|that|them|these|one|recipe|list|please|pls|for me|for later|down))*(?: (?:as|,) (?:\S+ ){1,5}?)? ?[:-] \S*<weight> (?:of )?\S*<[^>]*ingredient=(?!.* (?:how|what|which|timer|scale|double|halve) )/;

export type Whole = "note" | "one";

/** "note": all of it, up to an order inside; "one": all of it. Undefined for any other turn. Pure. */
export function wholeTurn(mask: string): Whole | undefined {
  if (startsNote(mask) || noteEnd.test(mask) || toldForNotes.test(mask)) return "note";
  return ratedBatch.test(mask) ||
    savedBatch.test(mask) ||
    toldBatch.test(mask) ||
    keptList.test(mask) ||
    pantryOrder.test(mask) ||
    stockQuestion.test(mask) ||
    toldInParts(mask)
    ? "one"
    : undefined;
}

/** "..., start the cool timer": all of an order, and nothing that a note would say. */
const timerOrder =
  /^(?:please |now )*(?:start|set|begin) (?:(?:the|a|an|me|my|another|new) )*(?:\S+ )?(?:timer|alarm)(?: (?:for|of) (?:\S+ )?\S*<time>)?(?: (?:please|pls|now|too))*(?: [.!?])*$/;

/** "note rhubarb batch, hollow. note quince batch, all full": another batch, and a note of its own. */
const notesOne =
  /^(?:(?:please|pls|also|and|then|now|next) )*(?:note|log|record|jot)(?: (?:down|that|this|for|a|an|the|my|one|:|,))* (?:[a-z]+ )?\S*<[^>]*taste=/;
export const notesAnother = (lead: string, mask: string): boolean =>
  notesOne.test(mask) && /<[^>]*taste=/.test(lead);

/** "save recipe rosa: ... and double it": what is saved by a name of its own, and what is done with it. */
const namesRecipe =
  /^(?:(?:please|pls|ok|so|and|can you|could you) )*(?:(?:save|remember|keep|store) .*:|(?:(?:my|a|the|new) )*recipe (?!says|is|calls|wants|for |of )(?:\S+ ){1,4}:)/;
const resizesIt =
  /^(?:(?:please|then|now|and) )*(?:\S*<factor[^>]*>|scale|double|triple|quadruple|halve) (?:it|that|this|the (?:recipe|lot))(?: (?:up |down )?to .*)?(?: (?:please|pls|now|for me))*$/;
export const resizesSaved = (lead: string, mask: string): boolean =>
  resizesIt.test(mask) && namesRecipe.test(lead);

/** An order behind a note ends it: "and set a timer"; behind a comma only a timer and "take it off the shelf" do. */
export const endsNote = (mask: string, joint: "comma" | "word"): boolean =>
  timerBehind.test(mask) ||
  (joint === "word" && timerAlone.test(mask)) ||
  (joint === "comma" ? offTheShelf.test(mask) || timerOrder.test(mask) : orderInside.test(mask));
