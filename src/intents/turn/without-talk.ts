/**
 * What is left of a turn without what is told around it: "I can't face sums before coffee. What is 15 percent of 640?",
 * "before I forget, could you note that ...", "my mum says ...". Only tried where the whole turn wasn't understood, so
 * a wrong cut costs nothing; what holds an amount, a question or a "no" is never cut off.
 */
import { saysWhatIsMade } from "../chosen/other-dish.ts";
import { hasAmount } from "./has-amount.ts";

/**
 * Shorter ways to say the turn, the longest first; none where nothing can be left out. Pure.
 * @param partly something of it was understood: then it isn't taken for a note as a whole
 */
export function withoutTalk(text: string, partly = false): string[] {
  const sentences = text.match(sentence)?.map((each) => each.trim()) ?? [];
  const needed = sentences.filter((each) => !isTalk(each));
  const from = sentences.findIndex((each) => !isTalk(each));
  const shorter = [
    ...(from > 0 ? [sentences.slice(from).join(" ")] : []),
    ...(needed.length < sentences.length ? [needed.join(" ")] : []),
  ];
  const whole = shorter.at(-1) ?? text;
  return [...new Set([...shorter, ...withoutLead(whole), ...(partly ? [] : asNote(whole))])].filter(
    (each) => each !== "" && each !== text,
  );
}

/** A dot in a number or behind one letter ends none. */
const sentence = /(?:[^.?!;]|[.](?=\d)|(?<=\b[a-z])[.](?! *$))+(?:[.?!;]+(?=\s|$)|$)/gi;

const asks =
  /\?|^(?:(?:and|so|but|ok|okay|well|now|right|also|then|please),? )*(?:how|what|whats|which|when|why|where|who|can|could|would|should|do|does|did|is|are|may|might|will|shall)\b/i;
/** "no butter today" and "I put in some more" say what is in it; "just out of the oven" doesn't. */
const refuses =
  /\b(?:no|not|without|never|instead|only|just(?! (?:out|back|now|come|came|got|had|been|finished|pulled|started|arrived|remembered|realised|realized|noticed|sat|woken|opened|about to)\b)|put|added|adding|used|weighed|poured|tipped|dripped|mixed|swapped|replaced|left out)\b/i;
const orders =
  /^(?:(?:and|so|but|ok|please|now|then|also),? )*(?:note|log|jot|write|record|set|start|make|put|take|add|remind|save|remember|keep|give|tell|show|list|scale|convert|split|divide|work|plan|cancel|stop|undo|label|print|use)\b/i;
/** "ground earl grey tea." tells of nobody and nothing: it is what is asked about. */
const tells =
  /\b(?:i|i'?m|i'?ve|i'?d|i'?ll|we|we'?re|we'?ve|she|he|they|they'?re|it|it'?s|is|was|are|were|have|has|had|says?|said|my|our|there'?s|that'?s|sorry|thanks|anyway|one more (?:thought|thing|question))\b/i;
const isTalk = (said: string): boolean =>
  tells.test(said) &&
  ![asks, refuses, orders].some((each) => each.test(said)) &&
  !hasAmount(said) &&
  // "I'm making cupcakes": what everything behind it is of
  saysWhatIsMade(said) === undefined;

/** Where what is asked for may begin within a sentence: behind "..., so", "..., and", "my mum says". */
const begins =
  /^(?:[^,?!;:\d]{3,80}(?:,? (?:so|but)|,(?: and)?)|(?:(?:and|but|so) )?(?:my |our |the |a )?[a-z]+ (?:says?|said|reckons?|thinks?|tells? me|told me|insists?|suggests?)(?: that| i should| we should| to)?) (?=\S)/i;

function withoutLead(text: string): string[] {
  const lead = begins.exec(text)?.[0];
  if (lead === undefined || !isTalk(lead)) return [];
  const rest = text.slice(lead.length);
  return hasAmount(rest) ? [rest, ...withoutLead(rest)] : [];
}

/** "could you note that i made ...", "please log yesterday's batch as ...": an order to note, wherever it stands. */
const noting =
  /(?:^|[.,;] |\b(?:could|can|would|will|might) (?:you|i|we) |\b(?:please|to|must|should|let me|lets|ill|id like) )(?:(?:just|also|quickly|please|kindly) )*(?:note|log|jot|write|record|put|pop|make|add|enter)(?: (?:it|this|that|them|down|in|a note|a new note|an entry|a record|in the log|in my notes))*(?: (?:that|of|for|as|saying))*:? /i;

function asNote(text: string): string[] {
  const order = noting.exec(text);
  if (!order || !/note|log|jot|record|entry|down/i.test(order[0])) return [];
  const told = text.slice(order.index + order[0].length);
  return /\?\s*$/.test(told) && !/\b(?:can|could|would|will|might)\b/i.test(order[0])
    ? []
    : [`note: ${told.replace(/\s*\?\s*$/, "")}`];
}
