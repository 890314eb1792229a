/** Ways to ask whether something stands in the notes, and of which day what was found is. */
import { opening } from "../../../data/words/openers.ts";

const written =
  "(?:written|noted|logged|recorded|jotted|typed|scribbled|put down|saved)(?: (?:down|up|away|anywhere|somewhere|already|before|in (?:my|the) \\S+))*";
const write = "(?:write|note|log|record|jot|put down|save|type)(?: down)?";
const about = "(?:on|about|for|regarding|re|with|of|concerning)";
const thing = "(?:anything|something|nothing|any|stuff|things?|a note|an entry|notes?|entries|what|whats)";
const papers = "(?:file|record|paper|the books|the notes|my notes|the notebook|my notebook|the log)";

/** Any of them asks for notes, whatever they are about: "anything written down about gooseberry". */
export const onRecord: readonly string[] = [
  `${thing} (?:(?:have|has|is|was|i|we|ive|did|already|ever|been) )*${written} ${about} `,
  `(?:did|have|do) (?:i|we) (?:(?:ever|already|got) )*(?:${write}|${written}) ${thing} (?:down )?${about} `,
  // "what did i write down about the coconut ones"
  `^${opening}what (?:did|have|had|do) (?:i|we) (?:ever |just )?(?:have |got )?(?:${write}|${written})(?: down)? ${about} `,
  `(?:have|had|did) (?:i|we) (?:ever |already )?(?:${written}|${write}) (?:the |my |a |any )?{taste}`,
  `(?:whats|what is|anything|something|what do i have|what have i got) on ${papers} ${about} `,
  `(?:is|are) there (?:(?:a|an|any|some) )?(?:notes?|entry|entries|records?|write ups?) ${about} `,
  `(?:got|have|ive got|have i got|do i have|any) (?:(?:a|an|any|some) )?(?:notes?|entry|entries|records?) ${about} (?:the |my )?{taste}`,
  `^${opening}{taste} [,:-] (?:(?:have|do|did) i (?:have |got |got )?(?:anything|something|any|notes?)|(?:got )?any(?:thing)? )(?: .*)?$`,
  `${about} (?:the |my )?{taste} .. (?:anything|something|nothing) (?:in (?:the|my) (?:notes|log|notebook|book|diary)|on file|on record|written|noted)`,
];
