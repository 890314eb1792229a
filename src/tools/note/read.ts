/** Reads a note: a new one, more to one, a correction. What is behind the order is the baker's, word for word. */

import {
  belongsInNotes,
  besideNote,
  bookName,
  events,
  intoNote,
  noteBehindBatch,
  noteBehindFacts,
  noteClosers,
  noteOpeners,
  ontoNote,
  toldAndSaved,
  toldInHaste,
} from "../../../data/words/note-talk.ts";
import { leadingIn, opening, takingBack } from "../../../data/words/openers.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { exchangeSaid, fileSaid } from "../exchange/said.ts";
import { isSign, type Piece, pieces } from "../lib/pieces.ts";
import { tastesIn } from "../lib/tastes.ts";
import { placeless } from "../lib/when-said.ts";
import { isAnotherBatch, withoutLead } from "./another-batch.ts";
import { factsOf } from "./facts.ts";
import { readIgnoring } from "./ignoring.ts";
import type { NoteInputs } from "./note.ts";
import { swapped } from "./swapped.ts";
import { asAdvice, isToRemember, withoutOrder } from "./to-remember.ts";
import { isToldAgain, wrongNumbers } from "./told-again.ts";
import { isToBeNoted, withoutNeed } from "./wants-noting.ts";
import { addedWords, clauseText, correctedWords, noteWords } from "./words.ts";

type Draft = Partial<NoteInputs>;

const leads = `(?:(?:${leadingIn}|${takingBack}|also|hey|can you|could you|would you|all done|\\S*<count=batches> (?:is )?(?:done|finished)|dear (?:diary|notebook)|,) )*`;
const opens = new RegExp(`^${leads}${noteOpeners}(?: |$)`);
/** One of these is in any opener: compiling all of those takes longer than most questions do. */
const mayOpen =
  /note|jot|book|diary|journal|entry|log|record|down|batch|(?:^| )(?:ones?|up|in|remember|save|keep|store|write|type|scribble|pen|mark|file)(?: |$)/;
const opensNote = (mask: string): boolean => mayOpen.test(mask) && opens.test(mask);
const opensWithin = new RegExp(`^${leads}(?:${noteBehindBatch}|${noteBehindFacts})(?: |$)`);
const closes = new RegExp(
  `(?:^| )${noteClosers}(?: |$)|(?:<count=(?:batches|macarons)>|(?:^| )ones?) (?:to|(?:for|into) (?:the|my)) (?:log|notes?|records?|book|notebook|diary|journal)(?: |$)|${toldAndSaved}|${toldInHaste}|^${belongsInNotes}`,
);
const rated = /^(?:i )?(?:made|baked) (?:a |some |the )?\S*<[^>]*taste=.* (?:rating|rated) \S*<number/;
const tells =
  /^(?:and )?(?:\S*<when> )?(?:i |we )?(?:just )?(?:baked\S*|made) (?:\S+ ){0,3}\S*<[^>]*taste=.*(?:<number|<symptom|<temperature|<time)|^(?:(?:oh|and|also|then|from|on|for) )*\S*<when>(?: [:,-])? \S*<[^>]*taste=.*(?:<number,fraction| out of )/;
const adds = new RegExp(
  `^${leads}(?:${ontoNote} [:,;-]|(?:add|append|put) (?:this |an? note |another note |a line )?(?:to|on) (?:that|it|this|the|my|notes?(?= ))(?! ${bookName} (?:[:,;-]|\\S*<))|(?:tack|stick\\S*|pop|throw) on|add :|${intoNote}|(?:oh |and |ok )*add (?:that|also|in)(?= (?:the|they|it|its|i|my|all|some|most|one|\\S*<number>|tops|shells|feet|we) )|(?:oh |and |ok )*add(?= (?:they|it|its|theyre|we|\\S*<number> (?:were|was|had|cracked)) ))(?: |$)|add (?:that|this)(?: please| pls)?$`,
);
/** "add that everybody loved them", "also put down that day 3 was best", right behind a note: more of that one. */
const addsOn = new RegExp(
  `^${leads}(?:add (?:that )?(?!(?:to|it|this|an?) )|(?<=also )(?:note|put|write|jot|log|record)(?: it)?(?: down)?(?: that| :)? )\\S`,
);
const goesBeside = new RegExp(`^${leads}${besideNote}(?: |$)`);
const corrects = new RegExp(
  `^${leads}(?:(?:i (?:must|need to|have to|should|want to)|let me|id like to) )?(?:(?:correct|fix|change|amend|edit|update) (?:that|it|this|the|my|last)|(?:correction|to correct)|i (?:wrote|noted|typed) (?:that|it|this) (?:down )?wrong|(?:the|its|that) (?:rating|score) (?:should be|should have been|is really|was really))(?: |$)`,
);
const removes = new RegExp(
  `^${leads}(?:delete|remove|scrap|erase|forget) (?:that|the|my|this|last) (?:.*(?:note|entry|batch|<taste\\S* one)|(?:last |latest )?one$)`,
);
const takesBack =
  /^(?!wait \S*<time>$)(?:(?:oops|oh|wait|hmm) (?:, )?)*(?:not \S+ (?:, )?(?:i meant|but|its|it was)|no|nope|sorry|actually|wait|i meant|i mean|oops|it should|that should)(?: |$)|it was .* not /;
/** "they were 28 in the end". */
const wereSoMany =
  /^(?:(?:and|oh|so|actually|but) )*(?:they|there) were (?:only )?\S*<number>(?: \S*<count=macarons>)?(?: (?:in the end|in all|in total|altogether|of them|after all))*(?: [.!])?$/;
const alsoSeen =
  /^(?:(?:oh|ok) )*(?:also|and|plus|btw|forgot to say|forgot)(?: :| ,| that)? (?:(?:the|my|a|one|some|both|left|right|top|bottom|first|second|last|back|front|inner|outer|hand|side|few|most|all|of) )*(?:\S*<count=(?:trays|shells|macarons)\S*|trays?|sheets?|shells|tops|feet|bottoms|oven|half|batch|edges|one) /;
const carriesOn =
  /^(?:also|and|oh and|plus|forgot)(?= |$) (?:(?:they|it|the \S+|i|(?:some|most|all|a few)(?: of them)?) (?:all |both |just |only |really )?(?:were|was|had|tasted|came|turned|looked|look|taste|did|used|piped|spread|cracked|browned|stuck|sank|rose|leaked|smelled|smelt|got|went|stayed|needed)(?:<\S*)?|theyre|its)(?: |$)/;
const tellsAllergy =
  /^(?:please |ok )*(?:remember|note|dont forget|keep in mind) (?:that )?(?:my|our|the) \S+ (?:is|are) (?:allergic|intolerant)/;
/** "sorry, the lime should be 6 out of 10": the mark of a batch by its name. */
const remarks = new RegExp(
  `^${opening}(?:(?:the |my )([^ <]+)(?:<\\S*>)?(?: one| ones| batch\\S*)?|(it|that|this)) (?:should (?:be|have been)|(?:was|is|were)(?: really)?|deserves|gets) (?:only |an? )?\\S*<number> out of `,
);
/** "rate the lemon 8", "change the lemon rating to 7". */
const rerates = new RegExp(
  `^${opening}(?:(?:rate|score|mark) (?:the |my )?([^ <]+)(?:<\\S*>)?(?: one| batch\\S*)? (?:an? )?\\S*<number|(?:change|set|make|correct) (?:the |my )?([^ <]+)(?:<\\S*>)?(?: batch\\S*)? (?:rating|score|mark)s? (?:to |an? )*\\S*<number)`,
);
/** "make that 9 out of 10", right behind a note. */
const remarksLast = new RegExp(`^${opening}make (?:that|it) (?:an? )?\\S*<number> out of `);
/** "rating 7", "oh and rested 40 min", right behind a note. */
const goesOn =
  /^\S*<number> out of \S*<number>$|^(?:(?:oh|and|also|plus|i|it|forgot|to|say|mention|that|:|,) )*(?:(?:rating|rated|score|scored|rested|\S*<step=rest>|matured|oven(?: was| at| set to)|(?<=^(?:oh|and|also|plus|forgot) (?:and )?)oven) .*<(?:number|time|temperature)|(?:(?:id|i would|i|ill|we) )?(?:give|rate|score) (?:it|them|those|that|this)(?: one| ones| batch\S*)? (?:an? )?\S*<number)/;
const drops =
  /^(?:(?:oh|no|ok|actually|sorry|,) )*(?:never ?mind|nevermind|forget it|nothing|cancel|stop|skip it|leave it|no)(?: |$)/;
const asks = /(?:^| )(?:how|what|whats|which|when|why|who|whos|where)(?: |$)|\?/;

export function readNote(reading: Reading, memory: Memory): Draft {
  const { mask } = reading;
  const exchange = exchangeIn(reading, memory);
  if (exchange) return exchange;
  const text = clauseText(reading.said, mask);
  const isOpen = memory.last?.tool === "note" ? memory.slot : undefined;
  if (isOpen === "text" && drops.test(mask)) return {};
  if (isOpen === "text" && !asks.test(mask)) return filled(reading, memory, text);
  if (isOpen === "step") return fillStep(reading, memory);
  const aside = readIgnoring(reading);
  if (aside) return { ...(memory.table.note === undefined ? {} : { note: memory.table.note }), ...aside };
  if (removes.test(mask)) return { do: "remove", ...targetOf(reading, memory) };
  if (adds.test(mask))
    return { do: "append", ...targetOf(reading, memory), ...whole(reading, addedWords(text), true) };
  const onNote = memory.last?.tool === "note" ? (memory.last.inputs as Draft) : undefined;
  const named = onNote?.facts?.flavors ?? [];
  if (onNote && addsOn.test(mask) && tastesIn(pieces(reading)).every((each) => named.includes(each)))
    return { do: "append", ...targetOf(reading, memory), ...whole(reading, addedWords(noteWords(text))) };
  // "remember my sister is allergic to hazelnut": hers to know again, and no label's list
  if (tellsAllergy.test(mask))
    return {
      do: "add",
      text: text.replace(/^(?:please |ok )*(?:remember|note|don'?t forget|keep in mind)(?: that)? /i, ""),
      facts: nothingTold,
    };
  const swap = memory.last?.tool === "note" ? swapped(reading) : undefined;
  if (swap) {
    const told = whole(swap.reading, correctedWords(text));
    const facts = told.facts && { ...told.facts, wrong: swap.wrong };
    return { do: "correct", ...targetOf(reading, memory), ...told, ...(facts ? { facts } : {}) };
  }
  const again = rerates.exec(mask);
  const marked = (remarks.exec(mask)?.[1] ?? remarks.exec(mask)?.[2] ?? again?.[1] ?? again?.[2])?.replaceAll(
    "_",
    " ",
  );
  // "that", "the rating": of the note on the table
  const about =
    marked && !/^(?:that|this|it|last|the|my)$/.test(marked)
      ? { about: [marked] }
      : targetOf(reading, memory);
  if (marked && (!/^(?:it|that|this)$/.test(marked) || memory.last?.tool === "note"))
    return withMark({ do: "correct", ...about, ...whole(reading, text) }, reading);
  if (corrects.test(mask) || (remarksLast.test(mask) && memory.last?.tool === "note"))
    return { do: "correct", ...targetOf(reading, memory), ...whole(reading, correctedWords(text), true) };
  if (isToRemember(mask)) return asAdvice({ do: "add", ...whole(reading, withoutOrder(text)) }, mask);
  if (isToBeNoted(mask)) return { do: "add", ...whole(reading, withoutNeed(text)) };
  const answer = memory.last && isOfAnswer(mask) ? ofAnswer(memory.last) : undefined;
  if (answer) return answer;
  if (opensNote(mask) || closes.test(mask) || rated.test(mask) || (tells.test(mask) && !asks.test(mask)))
    return { do: "add", ...whole(reading, noteWords(text, opensWithin.test(mask))) };
  // "same again, honey batch, baked 16 min", behind a note
  const another = /^(?:(?:and|ok) )*same again , /.test(mask) && memory.last?.tool === "note";
  if (another) return { do: "add", ...whole(reading, noteWords(text.replace(/^.*?same again,? /i, ""))) };
  if (memory.last?.tool !== "note" || asks.test(mask)) return {};
  if (goesBeside.test(mask))
    return { do: "append", ...targetOf(reading, memory), ...whole(reading, addedWords(text)) };
  const before = (memory.last.inputs as Draft).facts?.flavors ?? [];
  const flavors = tastesIn(pieces(reading));
  if (isAnotherBatch(mask, flavors, before)) return { do: "add", ...whole(reading, withoutLead(text)) };
  const onTable = memory.table.note === undefined ? {} : { note: memory.table.note };
  if (wereSoMany.test(mask))
    return { do: "correct", again: true, ...onTable, ...whole(reading, addedWords(text)) };
  // "and it was 16 min", "16 not 15"
  const wrong = wrongNumbers(reading.said);
  if (isToldAgain(mask) || (wrong.length > 0 && isFigure.test(mask))) {
    const told = whole(reading, addedWords(text));
    const facts = told.facts && { ...told.facts, wrong: [...new Set([...told.facts.wrong, ...wrong])] };
    return { do: "correct", again: true, ...onTable, ...told, ...(facts ? { facts } : {}) };
  }
  if (takesBack.test(mask)) return { do: "correct", ...onTable, ...whole(reading, correctedWords(text)) };
  const ofSame = flavors.length > 0 && flavors.every((each) => before.includes(each));
  return carriesOn.test(mask) || alsoSeen.test(mask) || goesOn.test(mask) || (ofSame && ofBatch.test(mask))
    ? { do: "append", ...onTable, ...whole(reading, addedWords(text)) }
    : {};
}

/** "and the lemon batch rested 40 min", behind the note of the lemon. */
const ofBatch = /^(?:(?:oh|and|also|plus) )+(?:the|that|this|my) \S*taste=\S* (?:ones?|\S*<count=batches>)/;
const isFigure = /^\S*<(?:number|time|temperature)>$/;

/** The words of a new note, or what a correction says that was asked about. */
function filled(reading: Reading, { last }: Memory, text: string): Draft {
  const before = (last?.inputs ?? {}) as Draft;
  if (before.do !== "correct" && before.do !== "append")
    return { do: "add", ...whole(reading, noteWords(text)) };
  const { note, about } = before;
  return {
    do: before.do,
    ...(note === undefined ? {} : { note }),
    ...(about ? { about } : {}),
    ...whole(reading, correctedWords(text)),
  };
}

/** "rate the lemon 8": out of ten, and nothing else of the batch is told. */
function withMark(draft: Draft, reading: Reading): Draft {
  const number = reading.amounts.find((each) => each.dim === "number" && each.unit === "");
  const rating = draft.facts?.rating ?? number?.value;
  if (!draft.facts || rating === undefined || rating > 10) return draft;
  return {
    ...draft,
    facts: {
      ...nothingTold,
      rating,
      rating_said: draft.facts.rating_said ?? String(rating),
    },
  };
}

const nothingTold = {
  problems: [],
  praise: [],
  absent: [],
  flavors: [],
  loose_min: [],
  loose: [],
  wrong: [],
  wrong_flavors: [],
  assumed: [],
} satisfies Draft["facts"];

/** Notes going out or in; never the words of a note that speak of it: "note: all of it in a spreadsheet now". */
function exchangeIn(reading: Reading, memory: Memory): Draft | undefined {
  const { mask } = reading;
  const slot = memory.last?.tool === "note" ? memory.slot : undefined;
  if (slot === "file") return fileSaid(reading) ?? exchangeSaid(reading);
  const isNote = opensNote(mask) && (mask.includes(":") || !/(?:^| )(?:notes|diary)(?: |$)/.test(mask));
  if (slot === "text" || isNote || adds.test(mask) || corrects.test(mask)) return undefined;
  return exchangeSaid(reading);
}

/** The words, what they say, and the day. Where an order names another note first, only what is behind it counts. */
function whole(reading: Reading, text: string, behindHead = false): Draft {
  const some = pieces(reading);
  const from = behindHead ? headEnd(some) : 0;
  const slashed = slashedDay(reading.text);
  const when = slashed ? undefined : dayOf(some.slice(from));
  return {
    ...(text ? { text } : {}),
    facts: factsOf(reading, from),
    ...(slashed ? { when: slashed, slashed: true } : when ? { when: placeless(when) } : {}),
  };
}

/** "note for 3/12: ...": a day, where a mark out of ten would make no sense. Month first; the bench may turn it. */
function slashedDay(text: string): Draft["when"] {
  const said =
    /^(?:\S+ ){0,4}(?:for|on|from|of) (?:the )?(\d{1,2})\/(\d{1,2})(?:\/(\d{4}|\d\d))?(?= ?(?:[:,;.-]|$| ))/.exec(
      text,
    );
  const [one, two] = [Number(said?.[1]), Number(said?.[2])];
  if (!said || one < 1 || two < 1 || Math.min(one, two) > 12 || Math.max(one, two) > 31) return undefined;
  const year = said[3] === undefined ? {} : { year: (Number(said[3]) % 2000) + 2000 };
  return one > 12 ? { month: two, day: one, ...year } : { month: one, day: two, ...year };
}

/** Where "add to the lemon note:" ends. */
function headEnd(some: readonly Piece[]): number {
  const at = some.findIndex(
    (each, i) => i > 1 && (isSign(each) || ["note", "notes", "batch", "one"].includes(each.text)),
  );
  const named = some.slice(0, 4).some((each) => ["the", "my", "last"].includes(each.text));
  return named && at >= 0 && at <= 7 ? at + 1 : 0;
}

/** The note that an order is about: by flavor, by what is on the table, else the last. */
function targetOf(reading: Reading, memory: Memory): Draft {
  const some = pieces(reading);
  const about = tastesIn(some.slice(0, headEnd(some)));
  if (about.length) return { about };
  const isLast = /(?:^| )(?:last|latest)(?: |$)/.test(reading.mask);
  return memory.table.note !== undefined && !isLast ? { note: memory.table.note } : {};
}

const bakes = /^(?:made|baked|did|piped|make|bake|for)$/;

/** The day that a note is for. A day to come, or one that an event is on, is not the day of the bake. */
function dayOf(some: readonly Piece[]) {
  const at = some.findIndex((each, i) => {
    const when = each.when;
    if (!when) return false;
    const before = some.slice(Math.max(0, i - 3), i).map((other) => other.text);
    const last = before.at(-1) ?? "";
    if (["than", "like", "as", "since", "until", "till", "by", "before", "after"].includes(last))
      return false;
    if (when.days !== undefined) return when.days <= 0;
    if (when.weekday === undefined && when.day === undefined && when.month === undefined) return false;
    if (when.which === "next" || before.some((word) => events.has(word))) return false;
    const isEarly = some.slice(0, i).every((other) => !other.thing?.taste && !other.amount);
    // "a lavender batch for 2 march, faded": its date, where no event is named
    if (when.day !== undefined && when.month !== undefined && (last === "for" || last === ",")) return true;
    // "made fig macarons sunday": the day of the bake, where nothing else is named for it
    const isBehindBatch =
      when.weekday !== undefined &&
      /^(?:made|baked|did|piped)$/.test(
        some.slice(0, i).find((other) => bakes.test(other.text))?.text ?? "",
      ) &&
      (some[i - 1]?.thing?.taste !== undefined || /^(?:ones?|batch\S*|macarons|macs)$/.test(last)) &&
      !events.has(some[i + 1]?.text ?? "");
    return isEarly || isBehindBatch || ["on", "from", "of", "was"].includes(last) || when.which === "last";
  });
  return some[at]?.when;
}

/** "Was that the baking or the resting?" "baking". */
function fillStep(reading: Reading, memory: Memory): Draft {
  const step = reading.things.find((each) => each.step)?.step;
  if (step !== "bake" && step !== "rest" && step !== "mature") return {};
  return { ...(memory.last?.inputs as Draft), step };
}

/** Calculators whose answer may be what is to be written. */
const noted: ReadonlySet<string> = new Set(
  "dose scale shells fill ganache buttercream split convert cost".split(" "),
);
/** "keep it in the notes", with nothing told in it. */
const isOfAnswer = (mask: string): boolean => answerOrder.test(mask);
const answerOrder = new RegExp(
  `^(?:(?:and|then|also|please|pls|ok|can you|could you|,) )*(?:${noteClosers}|(?:note|log|jot|write|record) (?:it|that|this)(?: down)?)(?: (?:please|pls|for me|too|as well|then))*(?: [.!?])*$`,
);

/** The note of an answer; of what flavor it was, where that was of one. */
function ofAnswer({ tool, inputs }: NonNullable<Memory["last"]>): Draft | undefined {
  if (!noted.has(tool)) return undefined;
  const { taste } = inputs as { taste?: string };
  return { do: "add", answer: true, facts: { ...nothingTold, flavors: taste ? [taste] : [] } };
}
