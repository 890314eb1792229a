/** How far the whites are whipped, asked on the way: "start meringue now, how stiff", "what peaks do i want". */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|now|so|right|then|well|hey|im|i'm|i am|ill|just|about to|going to|gonna|time to),? )*";
const doing =
  "(?:(?:start(?:ing)?|begin(?:ning)?|do(?:ing)?|mak(?:e|ing)|on|at|whip(?:ping)?|whisk(?:ing)?|beat(?:ing)?)(?: up)?(?: (?:the|my|on the|with the))?(?: (?:meringue|(?:egg )?whites|french meringue))?|meringue(?: time| next)?)(?: (?:now|next|again|today))*";
const asks =
  "(?:how (?:stiff|firm|far)|(?:what|which)(?: kind of| sort of)? peaks|what (?:should|do|does|must) (?:it|they|the peaks) look like|(?:stiff|soft) or (?:stiff|soft)(?: peaks)?)";
const tail =
  "(?: (?:do|should|does|must|will|can|i|it|they|the|peaks|go|take|whip|whisk|beat|them|to|need|be|is|want|wanted|for|that|this|get|have|has|on|look))*";

/** Butter itself, and none of cocoa or nuts. */
const butter =
  "(?<!\\b(?:cocoa|peanut|nut|almond|hazelnut|pistachio|cashew|cookie|apple|shea|brown) )butter\\b(?! ?cream)";
const weighed = new RegExp(
  `\\d ?(?:g|gr|grams?|kg|oz|ounces?|lbs?|sticks?(?: of)?)? (?:of )?(?:(?:soft|softened|unsalted|salted|cold|warm|room temperature) )*${butter}|${butter}(?:,|:| is| at)? ?\\d`,
);
const partsAsked =
  /\b(?:sugar|(?:egg )?whites?)(?:,? and|,| &| \+) (?:the )?(?:sugar|(?:egg )?whites?)\b|\b(?:rest|others?|parts|what else|what goes)\b/;
/** Another question of the turn, or of the meringue alone. */
const elseAsked =
  /\b(?:how (?:stiff|firm|far|long|hot|warm|high|many|often|do i|can i|should i)|peaks|whip|cups?|tbsps?|tsps?|tablespoons?|teaspoons?|in (?:oz|ounces|ml)|celsius|fahrenheit|timer|degrees?|temp|temperature|labels?|prices?|costs?|keeps?|notes?|log|fridge|stock|pantry|shells?|macarons?)\b/;
const isButtercream = (text: string): boolean =>
  (weighed.test(text) || (new RegExp(butter).test(text) && partsAsked.test(text))) && !elseAsked.test(text);

export const meringueAsked = (): readonly Phrase[] => [
  // "350 g butter. swiss meringue: sugar and whites?": with butter it is the buttercream
  {
    marks: ["swiss m", "italian m", "french m"],
    from: /(?<=\bbutter\b(?!cream).*)\b(swiss|italian|french) mer[ie]n(?:gue|ge)\b(?! butter ?cream)|\b(swiss|italian|french) mer[ie]n(?:gue|ge)\b(?! butter ?cream)(?=.*\bbutter\b)/g,
    to: (...found) => {
      const [said = "", before, ahead] = found;
      return isButtercream(String(found.at(-1))) ? `${before || ahead} meringue buttercream` : said;
    },
  },
  {
    marks: ["meringue", "whites", "whip", "whisk"],
    from: new RegExp(
      `^${lead}(?!meringue (?:is|was|went|wont)\\b)(?=.*(?:meringue|whites|whip|whisk))${doing},? (?:so |and )?${asks}${tail}[ ?.!]*$`,
      "g",
    ),
    to: "how stiff do i whip the meringue",
  },
  {
    marks: ["meringue", "whites"],
    from: new RegExp(
      `^${lead}${asks}(?: (?:do|should|does|must|will|can|i|it|go|take|whip|whisk|beat|to|need|is|want|for|on|in))* (?:the |my )?(?:(?:swiss|italian|french) )?(?:meringue|(?:egg )?whites)(?: (?:be|go|to be|get|now|then|need to be|stand))*(?:[ ?.!]*$|(?= ?[,;?] (?:and |also |then )*(?:how|what|whats|which|when|\\d|set|start|note|log)))`,
      "g",
    ),
    to: "how stiff do i whip the meringue",
  },
];
