/** What a batch taught, to be known the next time: "remember for next time: rose batch, 4 % flavor tasted soapy". */
import { opening } from "../../../data/words/openers.ts";
import { sign } from "../lib/cue.ts";
import type { NoteInputs } from "./note.ts";

const verb =
  "(?:(?:make sure (?:to|i|that i)|be sure to|please|i (?:must|should|need to|have to|want to)|must|let me) )*(?:remember|keep in mind|bear in mind|dont forget|dont let me forget|remind (?:me|myself|us)|note to self|(?:the )?lesson(?: learn(?:ed|t))?|takeaway|reminder)(?: (?:this|that|it))?";
const later =
  "(?:(?:for )?(?:the )?next (?:time|bake|batch|one|round)|(?:for )?(?:the )?(?:future|later)|another time|in (?:the )?future)";
const asked =
  "(?!.*(?:^| )(?:how|what|whats|which|why|when|where|who|did|does|timer|alarm|bottle|recipe|formula|price|prices|always|usually|oven (?:runs|is)|[?])(?: |$))(?!.*(?:{money}|{when}))";
/** Told of a batch, and no setting: "remember my tray has 24 circles" is one. */
const ofBatch = "(?=.*(?:{taste}|{count=batches}|{symptom}))(?!.*{count=trays} (?:has|holds|is|takes))";
const batch =
  "(?:(?:the|my|our|last|this|that|these|those|todays|yesterdays) )*(?:\\S+ ){0,3}?(?:{count=(?:batches|macarons|shells)}|ones?|tops|feet|bottoms)";
const came =
  "(?:was|were|tasted|had|came|cracked|turned|needs?|needed|wanted|took|stuck|got|looked|went|browned|spread|sank|sunk|burnt|burned|{symptom}|\\S*<step=\\S*)";

/** In the mask's language. */
export const remembersIt: readonly string[] = [
  // "remember for next time: rose batch ...", "for next time, lemon batch ..."
  `^${opening}${asked}${ofBatch}(?:${verb}(?: ${later})?|(?:to remember )?${later}|to remember) [:,;-]`,
  // "remember that the lemon batch was too wet"
  `^${opening}${asked}(?!.*{length})${verb}(?: ${later})?(?: that)? ${batch} ${came}`,
  `^${opening}${asked}remind (?:me|myself|us) ${later} (?:to|that) `,
];

const signs = remembersIt.map(sign);
export const isToRemember = (mask: string): boolean => signs.some((each) => each.test(mask));

const advises =
  /(?:^| )(?:bake|rest|mature|use|add|try|pipe|go|set|leave|give|cut|let|should|must|needs?|better)(?:<\S*)?(?: |$)/;

/** "the rose batch had 40 min rest": what it had, and no advice. */
const tellsHow = /(?:^| )(?:had|got|took) (?:\S+ ){0,2}\S*<(?:time|temperature)/;

/** "bake 14 min" is for the next one: no time or heat that this batch had. */
export function asAdvice(draft: Partial<NoteInputs>, mask: string): Partial<NoteInputs> {
  if (!draft.facts || !advises.test(mask) || tellsHow.test(mask)) return draft;
  const { bake_min: _bake, rest_min: _rest, mature_h: _mature, oven_c: _oven, ...facts } = draft.facts;
  return { ...draft, facts: { ...facts, loose_min: [], loose: [] } };
}

const head =
  /^(?:(?:oh|ok|okay|and|so|also|please|pls|make sure (?:to|i|that i)|be sure to|i (?:must|should|need to|have to|want to)|must|let me)[\s,]+)*(?:remember|keep in mind|bear in mind|don['’]?t (?:let me )?forget|remind (?:me|myself|us)|note to self|(?:the )?lesson(?: learn(?:ed|t))?|takeaway|reminder|to remember)?(?:\s+(?:this|that|it))?\s*/i;

/** Her words without the order: the time that they are for stays ("next time: ..."). */
export const withoutOrder = (text: string): string =>
  text
    .replace(head, "")
    .replace(/^[\s:,;–-]+/, "")
    .replace(/^that\s+/i, "")
    .trim();
