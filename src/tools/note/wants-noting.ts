/** "yesterdays batch needs writing down: ...", "for the book: ...": no order, and a note all the same. */
import { opening } from "../../../data/words/openers.ts";

const books = "(?:book|notes?|notebook|log|logbook|diary|journal|records?)";
const writing = "(?:writing|noting|logging|recording|jotting|putting|entering|adding|typing)";
const written = "(?:written|noted|logged|recorded|jotted|put|entered|added|typed)";
const write = "(?:write|note|log|record|jot|put|enter|add|type|get)";
const where = `(?: (?:down|up|on paper|(?:in|into|to) (?:the|my) ${books}))*`;

/** "yesterdays batch", "the hazelnut ones", "todays bake". */
const batch =
  "(?!(?:how|what|whats|which|when|why|who|where|show|find|did|do|does|is|are|can|could|tell|give) )(?:[a-z]\\S* ){0,4}(?:\\S*<count=(?:batches|macarons)\\S*|ones?|bake\\S*)(?: (?:from|of|on|this|that|still|just|really|now|today|yet|also|\\S*<when>))*";
const needs = "(?:still|yet|just|really|now|has|have|needs?|wants?|ought|got|should|must|is|to|be|get|being)";

/** Behind the batch: "needs writing down", "still to be noted", "has to go in the book". */
const needed = `(?:(?:\\S+ ){0,3}${writing}${where}|(?:${needs} )+(?:${written}${where}|${write}${where}|(?:go|get|come) (?:down |up )?(?:in|into|to) (?:the|my) ${books}))(?: (?:please|pls|still|yet|too|now))*`;
/** Before the batch: "need to write down", "i havent logged". */
const told = `(?:(?:i|we|ive|weve) )?(?:(?:still|need|want|have|has|got|gotta|must|should|ought|havent|forgot|didnt|never|to) )+(?:${write}|${written})${where}`;
const behind = `(?: ${written})?${where}(?: (?:still|yet|too|now))*`;

/** "wednesday", "last fridays", "the one from tuesday": the day, where no batch is named before its colon. */
const day =
  "(?:(?:about|for|on|the|my|last|this|one|batch|bake|from|of) )*\\S*<when>\\S*(?: (?:one|ones|bake|batch|\\S*<count=batches>|still|yet))*";
const inBook = `(?:in|into|from|to) (?:the|my) ${books}`;

const heads = [
  // "i forgot to note wednesday: on march 11 i made ..."
  `${told} ${day}`,
  `${day} (?:isnt|is not|wasnt|arent|never got|hasnt been|didnt get|didnt make it|is missing|is still missing)(?: (?:written|noted|logged|entered|down|yet|still))*(?: ${inBook})?(?: (?:yet|still))*`,
  `(?:(?:still|also|whats|one|theres one|there is one) )*missing ${inBook}`,
  `(?:i |ive |we )?(?:forgot|forgotten|missed|skipped|left out) (?:one|another|a batch|a note|one more)(?: (?:batch|bake|note|before|earlier|last time|\\S*<count=batches>))*`,
  `${batch} ${needed}`,
  `${told} ${batch}${behind}`,
  `(?:(?:this is|thats|one|another|this one|that one) )*for (?:the|my) ${books}`,
];

/** What is to be written stands behind a comma or a colon. */
export const wantsNoting = heads.map((head) => `^${opening}${head} [,:] `);

const noted = new RegExp(wantsNoting.join("|"));
/** The pattern is long, and hardly a sentence has one of its words before a comma or a colon. */
const mayBe =
  /(?:writ|not(?:e|ing)|log|record|jot|put|enter|add|typ|get|book|diary|journal|miss|forgot|skipped|left out|isnt|is not|wasnt|arent|never|hasnt|didnt).* [,:] /;
export const isToBeNoted = (mask: string): boolean => mayBe.test(mask) && noted.test(mask);

const headWords: ReadonlySet<string> = new Set(
  `i we ive weve still yet need needs nees want wants have has got gotta must should ought havent forgot didnt never to
  be is being writing noting logging recording jotting putting entering adding typing written noted logged recorded
  jotted put entered added typed isnt arent wasnt hasnt been missing from forgotten write note log record jot enter add type get go come down up in into on paper the my
  book notes notebook logbook diary journal records for this thats one another that please pls too now just really also
  and so ok oh hey`.split(/\s+/),
);

/** Her words without those that only say that it is to be noted: "yesterdays batch: hazelnut, tops cracked". */
export function withoutNeed(text: string): string {
  const at = text.search(/[,:]/);
  if (at < 0) return text;
  const kept = text
    .slice(0, at)
    .split(/\s+/)
    .filter((word) => !headWords.has(word.toLowerCase().replace(/['’]/g, "")));
  const told = text.slice(at + 1).trim();
  return kept.length === 0 || kept.join(" ").toLowerCase() === "batch"
    ? told
    : `${kept.join(" ")}${text[at]} ${told}`;
}
