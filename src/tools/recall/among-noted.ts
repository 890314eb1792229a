/** Which of the notes tell of a fault, asked of what is written down: "any with wrinkled tops in there". */

const lead =
  "(?:(?:and|so|ok|but|hm|now|is|are|was|were|there|have|has|had|did|do|i|we|you|see|got|find|show|me) )*";
const some =
  "(?:any|anything|one|ones|some|something|which|what|any one|anyone|a {count=batches}|any {count=batches}|which {count=batches})(?: (?:ones?|{count=batches}|notes?|entries|entry|of (?:them|those|these|mine)))*";
const so =
  "(?:(?:with|that|which|where|has|have|had|got|came|come|out|is|are|was|were|went|turned|as|noted|marked|down|the|a) )*";
const book = "(?:the |my |our )?(?:notes?|log|logbook|book|notebook|diary|journal|records?)";
const place = `(?:in there|in here|among (?:them|those|these)|amongst (?:them|those|these)|(?:in|on|from|among) ${book}|on record|so far|noted|logged|written down)`;
const end = "(?: (?:at all|please|pls|then|now|too|[?.]))*$";

export const amongNoted: readonly string[] = [
  `^${lead}${some} ${so}{symptom} (?:{count=shells|macarons} |ones |{count=batches} )?${place}${end}`,
  // "any in there with no feet", "anything in the notes that cracked"
  `^${lead}${some} ${place} ${so}{symptom}(?: {count=shells|macarons})?${end}`,
  // "in there any with cracked tops", "in my notes, anything cracked"
  `^${lead}${place} (?:, )?${lead}${some} ${so}{symptom}${end}`,
];
