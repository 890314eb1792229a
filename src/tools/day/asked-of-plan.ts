/** What is asked of a plan that stands: what is to do at an hour, when a step comes, whether one can be moved by itself. */
import type { Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";

const lead = "(?:(?:and|so|ok|okay|but|then|now|right|well|hm|please) )*";
const moment = "\\S*<(?:when|number)>";
const behind = "(?: (?:then|today|please|exactly|roughly))*(?: [?])?$";

/** "what am i doing at 2pm", "whats on at 3", "am i free at noon", "where should i be by 2". */
export const asksMoment: readonly string[] = [
  `^${lead}(?=.*(?:^| )(?:doing|do|happening|happens|on|be|step|steps|stage|part|bit|where|wheres|to|working)(?: |$))(?:what|whats|which|where|wheres)(?: (?:am|are|will|would|should|do|must|shall|i|ill|we|be|is|the|step|steps|stage|part|bit|happening|happens|going|on|doing|up|in|to|comes|have|supposed|meant|plan|does|say|says|at|working|left))*(?:(?: (?:at|around|about|by))? \\S*<when>| (?:at|around|about|by) \\S*<number>)${behind}`,
  `^${lead}(?:at|around|about|by) ${moment}(?: ,)? (?:what|whats|where|which) (?:am|are|will|should|do|must|is|step|happens|i|we|on|happening|be|doing|to)(?: (?:i|we|be|doing|do|on|at|happening|is|it|to|have))*(?: [?])?$`,
  `^${lead}(?:am i|are we|will i be|do i have to be|do i need to be) (?:still )?(?:free|busy|baking|piping|working|at it|in the kitchen|there)(?: (?:at|around|about|by))? ${moment}${behind}`,
];
const atMoment = /<(?:when|number)>/;

const kinds: readonly (readonly [RegExp, NonNullable<Draft["step"]>])[] = [
  [/\bganache\b/, { filling: "ganache" }],
  [/\bbuttercream\b/, { filling: "buttercream" }],
  [/\b(?:weigh|sift)/, { kind: "weigh" }],
  [/\b(?:meringue|macaronage|batter|fold|whip)/, { kind: "macaronage" }],
  [/\bpip(?:e|ed|ing)\b/, { kind: "pipe" }],
  [/\b(?:bak(?:e|ed|ing)|oven|go in|goes in|going in)\b/, { kind: "bake" }],
  [/\b(?:rest|resting|drying)\b/, { kind: "rest" }],
  [/\bcool/, { kind: "cool" }],
  [/\b(?:fill|filling|filled|assemble)\b/, { kind: "fill" }],
  [/\b(?:box|boxed|boxing|label|pack)/, { kind: "box" }],
];
const stepWord =
  "(?:\\S*<(?:step|base|use)=[^>]*>|weigh\\S*|sift\\S*|meringue|macaronage|batter|fold|whip|pip(?:e|ed|ing)|bak(?:e|ed|ing)|oven|go in|goes in|rest|resting|cool|cooling|fill|filling|filled|assemble|\\S*<count=boxes>|box|boxed|boxing|label|pack)";
/** "when do i bake", "what time does tray 2 go in", "when am i piping". */
export const asksStep: readonly string[] = [
  `^${lead}(?:when|what time|at what time)(?: exactly)? (?:do|does|should|must|am|will|would|is|are|shall|can)(?: (?:i|we|it|they|the|my|have|need|needs|to|be|make|do|put|get|start|supposed|meant|in|for|that|this|them|shells|tray|trays|\\S*<count=\\S*|\\S*<number>|\\S*<(?:taste|chocolate)[^ ]*))* ${stepWord}(?: (?:it|them|the|those|in|in the|shells|trays?|oven|piping|baking|filling|up|made|done|\\S*<count=\\S*|\\S*<number>|\\S*<base=\\S*))*${behind}`,
];
/** The day begins with it: asked for otherwise. */
const asksBegin = /\b(?:start|begin)(?:<\S*)? (?:with )?(?:bak|the bake|it)/;

const stepAt = (reading: Reading): Draft["step"] => {
  const text = reading.mask.replace(/<[^>]*>/g, "").replaceAll("_", " ");
  const step = kinds.find(([word]) => word.test(text))?.[1];
  const tray = reading.amounts.find(({ of }) => of?.count === "trays")?.value;
  const named = tray ?? Number(/\btray (\d+)\b/.exec(text)?.[1] ?? Number.NaN);
  return step && Number.isInteger(named) && step.kind ? { ...step, tray: named } : step;
};

const asked = (patterns: readonly string[]) => patterns.map((each) => new RegExp(each));
let compiled: { moment: RegExp[]; step: RegExp[] } | undefined;

/** "and at 3", behind what there is to do at 2. */
export const momentAgain = `^${lead}(?:(?:what|how) about |and )?(?:at|around|about) ${moment}${behind}`;
const andThen = new RegExp(momentAgain);

function momentSaid({ whens, amounts }: Reading): Draft | undefined {
  const said = whens.at(-1);
  if (said) {
    const { at: _at, ...at } = said;
    return { want: "at", at, as_kept: true };
  }
  const hour = amounts.find(({ dim, unit }) => dim === "number" && unit === "");
  return hour && hour.value > 0 && hour.value < 24
    ? { want: "at", at: { minute: hour.value * 60 }, as_kept: true }
    : undefined;
}

/** Nothing of the order was said: the plan's own stands. */
export function askedOfPlan(reading: Reading, last?: Draft): Draft | undefined {
  const { mask, whens } = reading;
  const isMore = last?.want === "at" && andThen.test(mask);
  if (isMore) return momentSaid(reading);
  if (!/(?:^| )(?:what|whats|when|where|wheres|which|am|are|do|will)(?: |$)/.test(mask)) return undefined;
  compiled ??= { moment: asked(asksMoment), step: asked(asksStep) };
  if (atMoment.test(mask) && compiled.moment.some((each) => each.test(mask))) return momentSaid(reading);
  if (whens.length > 0 || asksBegin.test(mask) || !compiled.step.some((each) => each.test(mask)))
    return undefined;
  const step = stepAt(reading);
  return step && { want: "when", step, as_kept: true };
}

const can =
  "(?:can|could|may|should|shall|is it (?:ok|okay|fine|possible|alright) (?:if|to)|would it (?:work|be ok|be fine|do) (?:if|to)|what if|will it work if|do i have time to|is there time to|lets|ill|i will|i want to|i wanna|id like to|id rather|i would rather|im going to|i could|i can|better)(?: (?:i|we|just|also|still|already|even|only|to))*";
const works =
  "(?:do|make|bake<[^>]*>|bake|pipe|mix|whip|prepare|prep|get|have|finish|start|begin|fill|whisk)(?: (?:with|on|making|baking|piping|doing))*";
const shells =
  "(?:(?:the|my|all|those|all the|just|only|of) )*\\S*(?:<count=shells>|<base=batter>|meringue\\S*|macaronage\\S*|<step=bake>|\\bbaking|shells)";
const mixes =
  "(?:(?:the|my|all|those) )*(?:\\S+ )?\\S*(?:<base=(?:ganache|buttercream|filling)>|ganache|buttercream|filling|fillings|piping|boxing)";
const notReady = "(?!.*(?:^| )(?:ready|needed|due|deliver|delivered|collected|picked)(?: |$))";
const ahead = "(?: (?:at|on|by|from|around|about|for|in|already|now))*";

/** "can i do the shells tonight at 8": what begins the bake, at an hour. */
export const shellsAt = `^${notReady}${lead}${can} ${works} ${shells}${ahead} \\S*<when>${behind}`;
/** "can i make the ganache tonight": a step that a plan places by itself. */
export const mixAt = `^${notReady}${lead}${can} ${works} ${mixes}(?: done| made)?${ahead} \\S*<when>${behind}`;

let moved: { shells: RegExp; mix: RegExp } | undefined;

/** A step that is wanted at an hour: the start where it is the first, else none that can be moved by itself. */
export function stepMoved(reading: Reading): Draft | undefined {
  const { mask, whens } = reading;
  const said = whens.at(-1);
  if (!said || !/(?:^| )(?:can|could|may|should|shall|ill|i|if|lets|better|to)(?: |$)/.test(mask))
    return undefined;
  moved ??= { shells: new RegExp(shellsAt), mix: new RegExp(mixAt) };
  const { at: _at, ...start } = said;
  if (moved.shells.test(mask)) {
    const isOrder =
      /^(?:(?:and|so|ok|okay|but|then|now|right|well) )*(?:lets|ill|i will|i want|i wanna|id|i would|im|better)(?: |$)/.test(
        mask,
      );
    return { start, start_as: isOrder ? "at" : "asked" };
  }
  if (!moved.mix.test(mask)) return undefined;
  const step = stepAt(reading);
  return { want: "pin", ...(step ? { step } : {}), as_kept: true };
}

const told = "(?:(?:and|so|ok|okay|but|oh|sorry|well|actually|no|oops|ah|now|right|then) )*";
const who =
  "(?:i|we|im|were|ive|weve|i have|we have|i had)(?: (?:only|just|actually|finally|already|really|have|did|had|not))*";
const what =
  "(?: (?:it|them|that|this|baking|late|later|early|earlier|than|planned|a bit|bit|a|weighing|the|bake|today|with|off|,|only|just|not))*";
const begun = new RegExp(
  `^(?!.*(?:^| )(?:if|what|when|could|would|can|should|will|im|were)(?: |$))${told}(?:${who} (?:start|began|begin) ?|(?:${who} )?(?:started|begun|got going|got started|kicked off)) ?${what.replace("(?: (", "(?:(").replace("))*", ") ?)*")}(?:(?:at|around|about|by|from) )*\\S*<when>(?: (?:instead|today|late|then|not .*|and .* late|though|sorry|than planned))*$`,
);
/** "only just started", "im just starting now": at this moment. */
const begunNow = new RegExp(
  `^(?!.*(?:^| )(?:if|what|when|could|would|can|should|timer)(?: |$))${told}(?:${who} )?(?:only |just |finally |now )+(?:started|starting|begun|beginning|got going|got started|getting started|getting going)${what}(?: now| late)*$`,
);

/** "i started late at 1pm", "only just started": told of the bake that is under way. */
export function begunSaid({ mask, whens, amounts }: Reading): Draft | undefined {
  const [said] = whens;
  if (!said)
    return amounts.length === 0 && begunNow.test(mask) ? { start: {}, start_as: "begun" } : undefined;
  if (!begun.test(mask)) return undefined;
  const { at: _at, ...start } = said;
  return { start, start_as: "begun" };
}
