import { besideNote, intoNote, ontoNote } from "../../../data/words/note-talk.ts";
import { fitted } from "./fitted.ts";

/** The baker's own words of one clause, without the order that opens or ends it. */
const word = /\p{L}+(?:['’]\p{L}+)*|\d+(?:[.,]\d+)*/gu;
const plain = (text: string) =>
  text
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f'’]/g, "");

/**
 * The part of the sentence that a mask covers, as it was typed. The mask has typos mended and turns of phrase put
 * plainly, so that words are compared in their order, and one that the mask lost ("a full hour") moves nothing.
 */
export function clauseText(said: string, mask: string): string {
  const all = [...said.matchAll(word)];
  const own = [
    ...mask
      .replace(/<[^ ]*>(?= |$)/g, "")
      .replaceAll("_", " ")
      .matchAll(word),
  ].map((each) => plain(each[0]));
  if (own.length === 0 || own.length >= all.length) return said.trim();
  const { from, to } = fitted(
    own,
    all.map((each) => plain(each[0])),
  );
  const last = all[to - 1];
  const end = (last?.index ?? 0) + (last?.[0].length ?? 0);
  const tail = /^[%°!)"'”]*/.exec(said.slice(end))?.[0] ?? "";
  const start = from === 0 ? 0 : (all[from]?.index ?? 0);
  return said.slice(start, end + tail.length).trim();
}

const lead =
  "(?:(?:please|pls|ok|okay|so|and|also|hey|hi|oh|no|sorry|actually|wait|then|just|can you|could you|would you|(?:(?:i|we|still|really)\\s+)?(?:want|wanted|need|needed|have|got|ought|meant|going) to|(?:(?:i|we)\\s+)?(?:should|must|wanna|gotta|gonna|better|can)|can i|time to|(?:i['’]?d|i would|we['’]?d) like to|let me|lets)[\\s,]+)*";
const opener = new RegExp(
  `^${lead}(?:(?:make|take|save|add|put|set|write|leave|keep|start|create|enter|do|jot)\\s+(?:me\\s+)?(?:down\\s+)?(?:(?:a|an|another|one|one\\s+more|quick|little|short|small|new)\\s+)+note(?:\\s+down)?(?:\\s+(?:that|saying))?|(?:(?:this|here|that)\\s+is|(?:here|that)['’]?s)\\s+(?:a|another|my|the|one)\\s+note|another\\s+note|(?:(?:one|another|a|next|last|new|more|quick|thing|entry|batch)\\s+)*for\\s+(?:the|my)\\s+(?:diary|journal|logbook|notebook|log|record|notes?)|(?:batch\\s+notes?|notes?|log|record|jot)(?:\\s+(?:this|it|to\\s+self))?(?:\\s+down)?(?:\\s+that)?|(?:put|set|get|take)\\s+this\\s+down|(?:write|put|save|keep|get|stick|pop|bung|enter|file|log|record|add|append)\\s+(?:(?:it|this|that|a\\s+line|an\\s+entry|a\\s+batch)\\s+)?(?:one\\s+)?(?:down\\s+|up\\s+)?(?:in|into|to|under)\\s+(?:my|the)\\s+(?:(?:batch|baking|bakes?|bakers?|baker['’]s|kitchen|macarons?|little|own|big|daily)\\s+)*(?:notes?|book|notebook|log|logbook|diary|journal|records?)(?:\\s+that)?|(?:(?:one|new|another|a|next)\\s+)+(?:in|into|to)\\s+(?:the|my)\\s+(?:notes?|notebook|log|diary|journal)(?=\\s*[:,])|put\\s+(?:it\\s+)?down\\s+that|write\\s+(?:this\\s+|that\\s+|it\\s+)?down(?:\\s+that)?)(?:\\s*[:,.;–—-]+\\s*|\\s+|$)`,
  "iu",
);
/** "cherry batch from today, write down i give it 6": the order between the batch and what is said of it. */
const orderWithin =
  /[,:]\s*(?:please\s+|pls\s+|also\s+|and\s+|can\s+you\s+|could\s+you\s+|just\s+)*(?:(?:write|note|jot|put|mark)\s+(?:(?:this|that|it)\s+)?down(?:\s+that)?|(?:note|write|record|log|jot)(?:\s+that)?)\b[\s,:]+(?=\p{L}|\d)/iu;
/** "got 43, cracked. note: 13 min at 160", "..., note it down, rested 20 min": the order between what is told. */
const orderBetween =
  /\s*[,.;–—-]\s*(?:please\s+|pls\s+)?(?:(?:make|add)\s+a\s+note|note)(?:\s+(?:this|that|it))?(?:\s+down)?(?:\s+(?:please|pls))?\s*[,:;.]\s*(?=\p{L}|\d)/iu;
const closer =
  /[\s,.;–—-]*(?:(?:please|and|can you|could you|would you|let me|i (?:(?:forgot|still|have|need|want|ought|should|must|didn['’]?t)\s+)+(?:to)?)\s+)*(?:(?:write|jot|note)\s+(?:that|this|it)(?:\s+down)?|(?:write|type)\s+(?:that|this|it|them)(?:\s+all)?\s+up|get\s+(?:that|this|it|them)\s+(?:all\s+)?(?:written|noted|logged|recorded|jotted|typed)(?:\s+(?:down|up))?|(?:log|record|save|keep|remember|store|file)\s+(?:that|this|it)(?:\s+(?:one|batch|away))?|(?:put|add|save|write|get|stick|pop|bung|enter|file|note|record|jot|log)\s+(?:that|this|it|all\s+(?:that|this)|them)(?:\s+(?:one|lot|all))?\s+(?:down\s+|up\s+)?(?:in|into|to|under)\s+(?:the|my)\s+(?:batch\s+|baking\s+)?(?:notes?|log\w*|book|notebook|diary|journal|records?)|(?:for|in|into|to)\s+(?:the|my)\s+(?:notes|log|diary|journal|notebook))(?:\s+(?:please|pls|too|for\s+(?:me|us|later)|as\s+well|thanks|thank\s+you|ta|cheers|(?:will|would)\s+you))*[\s.!]*$/iu;
/** A pattern over the mask as one over her own text, where signs stand without a space. */
const intoText = (pattern: string): string =>
  pattern
    .replaceAll(" (?:that|:|,)", "(?:\\s+that|\\s*[:,])")
    .replaceAll(" (?::|,)", "\\s*[:,]")
    .replaceAll(" ", "\\s+");
const appender = new RegExp(
  `^${lead}(?:${intoText(intoNote)}\\s*|${intoText(besideNote)}\\s*|${ontoNote.replaceAll(" ", "\\s+")}\\s*[:,;–—-]+\\s*|(?:tack|throw|stick)\\s+on\\s+(?:there\\s+)?that\\s+|(?:add|append|put)\\s+(?:this\\s+)?(?:to|on)\\s+(?:(?:that|it|this)(?:\\s+(?:one|note|batch))?|(?:(?:the|my)\\s+[^:,]*?(?:notes?|batch|one)|notes?))(?:\\s+that)?(?:\\s*[:,.;–—-]+\\s*|\\s+|$)|add(?:ed)?\\s+(?:that|also|in)\\s+|add\\s+(?=(?:they|it|its|theyre|we|\\d+|[a-z]+)\\s))`,
  "iu",
);
const corrector = new RegExp(
  `^${lead}(?:(?:an?\\s+)?(?:small\\s+|slight\\s+|quick\\s+|little\\s+)*correction(?:\\s+(?:there|here))?(?:\\s+(?:to|on|for)\\s+(?:that|it|this|the|my|last)[^:,]*?)?\\s*[:,]\\s*|(?:correct|fix|change|amend|edit|update)\\s+(?:(?:that|it|this)(?:\\s+(?:one|note|batch))?|(?:the|my)\\s+[^:,]*?(?:notes?|batch|one)|last\\s+note)(?:\\s+to)?(?:\\s*[:,.;–—-]+\\s*|\\s+|$))`,
  "iu",
);

/** "..., that should be in my notes", "could the notes have that", "keep it in my notes will you". */
const inNotes =
  /[\s,.;–—-]*(?:(?:please|and|so|can you|could you|would you|can|could|let|may|i want|i['’]?d like|i need|make sure|hang on to|hold on to|keep|store|leave|remember|put|add|save|write|get|stick|pop|bung|enter|file|note|record|jot|log)\s+)*(?:(?:(?:that|it|this)(?:['’]?s)?|all (?:that|this)|the lot)(?:\s+(?:is|one|all|another|a|note|down|should|must|has|have|needs?|could|can|might|may|will|would|to|ought|be|goes|go|belongs?|stands?|gets?))*\s+(?:in|into|for)\s+(?:the|my)\s+(?:batch\s+|baking\s+)?(?:notes?|log\w*|book|notebook|diary|journal|records?)|(?:the|my)\s+(?:batch\s+|baking\s+)?(?:notes?|log|book|notebook|diary|journal|records?)\s+(?:have|get|hold|know)\s+(?:that|this|it|all\s+(?:that|this)|the\s+lot))(?:\s+(?:please|pls|too|for\s+(?:me|us|later)|as\s+well|thanks|thank\s+you|ta|cheers|(?:will|would|can|could)\s+you))*[\s.!?]*$/iu;

/** "real quick before i forget - made lemon": haste, and nothing of the batch. */
const haste =
  /^(?:(?:oh|ok|so|and|hey|hi|right|just|real|really|a|one|super)[\s,]+)*(?:quick(?:ly)?(?:\s+(?:one|note|thing))?[\s,:–—-]+)?(?:(?:before|while|in\s+case|lest|so)\s+i\s+(?:(?:do\s+not|don['’]?t|still)\s+)?(?:forget|remember)(?:\s+(?:it|this|again))?)[\s,:–—-]+(?=\S)/iu;

/** "i'd like a batch noted: ...", "it put on record that ...": what is left in front of an order that was put indirectly. */
const asWished =
  /^(?:(?:(?:batch|bake|it|this)\s+)?(?:noted|recorded|logged|written|entered|put)(?:\s+(?:down|on\s+record))?(?:\s*[:,–-]|\s+that\b)|(?:on\s+)?(?:paper|record)(?:\s*[:,–-]|\s+that\b)|(?:in\s+)?writing\s*[:,–-]|that(?=\s+(?:the|to?day['’]?s|yesterday['’]?s|my|i|we|they|it|its)\s))\s*/iu;

/** "write this up for me: ...", "make a note of this: ...": an order that ends at its colon, where the batch begins. */
const upToColon = new RegExp(
  `^${lead}(?:(?:write|type)\\s+up|(?:write|type|scribble|jot|pen|mark|note|put|log|book|file|record)\\s+(?:this|that|it|these|the\\s+following)(?:\\s+(?:one|batch|lot))?(?:\\s+(?:up|down|in))?|(?:make|take|keep)\\s+(?:a|another)\\s+note\\s+of\\s+(?:this|that|it|these))(?:\\s+(?:for\\s+(?:me|us)|please|pls|one|batch))*\\s*:\\s*`,
  "iu",
);

/** The words of a new note. @param isWithin the order stands behind the batch that it is about */
export const noteWords = (text: string, isWithin = false): string =>
  (isWithin
    ? text.replace(orderWithin.test(text) ? orderWithin : orderBetween, ", ")
    : text.replace(haste, "").replace(asWished, "").replace(upToColon, "").replace(opener, "")
  )
    .replace(inNotes, "")
    .replace(closer, "")
    .trim();

/** The words that are added to a note. */
export const addedWords = (text: string): string => text.replace(appender, "").trim();

/** What a note is corrected to, in words. */
export const correctedWords = (text: string): string => text.replace(corrector, "").trim();
