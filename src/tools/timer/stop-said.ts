/** A timer stopped in words that say so only of one that runs: "ditch it", "never mind the blue trays". */
import { smallNumbers } from "../../../data/words/numbers.ts";
import { otherDishes } from "../../../data/words/other-dishes.ts";
import type { Memory } from "../contract/index.ts";
import { type Piece, textOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { matching } from "./find.ts";

const lead =
  "(?:(?:ok|okay|right|alright|all right|so|and|now|oh|no|nah|nope|yeah|yes|ah|well|actually|enough|please|pls|you can|can you|just|then|lets|,) )*";
const drops =
  "(?:never ?mind|nvm|forget(?: about)?|call off|ditch|drop|axe|bin|lose|nix|abort|chuck|toss|(?:(?:im|i am|were|we are) )?(?:all )?(?:done|finished|through) with|(?:(?:i|we) )?(?:dont|do not|no longer) need|no (?:more )?need (?:for|of))";
const tails =
  "(?: (?:anymore|any more|any longer|now|then|please|pls|after all|for me|thanks|already|too|altogether|[.!?]))*";
const order = new RegExp(`^${lead}${drops} (?:the |my |that |this )?(.+?)(?: timer| one| alarm)?${tails}$`);
/** "the syrup one can stop", "oven isnt needed any more": the timer stands in front. */
const over =
  "(?:(?:can|may|could|should|must|might) (?:now |just |also |already )?(?:stop|end|go|be (?:stopped|ended|cancelled|canceled|off|killed|dropped|deleted|scrapped))|(?:isnt|is not|wont be|is no longer|no longer) (?:needed|wanted|necessary|required)|(?:is |has been )?(?:not|no longer) needed|is (?:all )?done with|needs? (?:to )?(?:be stopped|stopping|stop)|has to stop)";
const named = new RegExp(`^${lead}(?:the |my |that |this )?(.+?)(?: timer| one| alarm)? ${over}${tails}$`);
/** The sign of that, right behind a timer. */
export const isOver = `^${lead}(?:the |my |that |this )?(?:\\S+ ){1,4}${over}${tails}$`;
/** "timer tray one stop", "cooling timer off": the order stands at the end. */
const atEnd = new RegExp(
  `^${lead}(?:timer (?:for |on |called )?(?:the |my )?(.+?)|(?:the |my |that )?(.+?) timer) (?:stop|off|end|cancel|kill|stopped|cancelled)${tails}$`,
);
const itself = /^(?:it|that|this|one)$/;

/** The sign behind a timer: of "it", or with the word. */
export const stopsIt = `^${lead}${drops} (?:it|that|this|that one|this one|that timer|this timer|the timer)${tails}$`;

const isDone =
  "(?:(?:is|are|was|were|came|come|has|have|s) )?(?:(?:all|already|just|now|out|been|coming) )*(?:done|ready|cooked|boiled|baked|finished|over|out|off|drained|early|hot|warm|cold|cool|soft|set|melted|thawed|risen|dry|skinned|preheated|heated(?: up)?|up to (?:temp|temperature|heat)|at temp(?:erature)?)(?: (?:already|now|early|then|too|[.!]))*";
const ends =
  "(?:(?:and|so|please|pls|you can|you may|can you|then|now|just|,) )*(?:stop|cancel|kill|end|clear|delete|silence|turn|switch)(?: (?:off|it|that|this|one|the|its|timer|alarm|please|pls))*";
const doneAndStop = new RegExp(`^${lead}(?:the |my |that )?(.+?) ${isDone} ${ends}${tails}$`);
const bakes = `(?:${otherDishes}|tea|laundry|washing|dishwasher|bath|nap|roast|eggs?)`;

/** Signs of "pasta is done, stop it" and "cancel the bread": whatever it is that was timed. */
export const stopsDone: readonly string[] = [
  `^${lead}(?:the |my |that )?(?:\\S+ ){1,3}?${isDone} ${ends}${tails}$`,
  `^${lead}(?:cancel|stop|kill|end|clear|turn off|switch off) (?:the |my |that )?${bakes}(?: (?:one|timer|only))*${tails}$`,
];

/** Of that name where one runs so, else the only one; of several it is asked which. */
function doneSaid(text: string, { names, table }: Memory): Draft | undefined {
  const said = doneAndStop.exec(text)?.[1];
  if (said === undefined || names.timers.length === 0) return undefined;
  const [hit, ...more] = itself.test(said)
    ? []
    : matching(
        asLabel(said),
        names.timers.map((label) => ({ label })),
      );
  if (hit && more.length === 0) return { do: "stop", name: hit.label };
  return { do: "stop", ...(itself.test(said) && table.timer ? { recent: table.timer } : {}) };
}

/** Only where one of that name runs, or "it" right behind a timer: any other "forget the butter" is no order of theirs. */
export function stopSaid(some: readonly Piece[], memory: Memory): Draft | undefined {
  if (some.some((each) => each.amount?.dim === "time")) return undefined;
  const text = textOf(some);
  const done = doneSaid(text, memory);
  if (done) return done;
  const behind = atEnd.exec(text);
  const said = behind ? (behind[1] ?? behind[2]) : (order.exec(text)?.[1] ?? named.exec(text)?.[1]);
  const name = said && asLabel(said);
  if (!name || memory.names.timers.length === 0) return undefined;
  // "ditch the timer": of several it is asked which
  if (name === "timer") return { do: "stop" };
  if (itself.test(said ?? "") && memory.last?.tool === "timer")
    return { do: "stop", ...(memory.table.timer ? { recent: memory.table.timer } : {}) };
  const live = memory.names.timers.map((label) => ({ label }));
  const [hit, ...others] = matching(name, live);
  return hit && others.length === 0 && isAll(name, hit.label) ? { do: "stop", name: hit.label } : undefined;
}

/** As a timer's own name has it: "cooling" is the cool timer, "tray one" is tray 1. */
export const asLabel = (said: string): string =>
  said
    .split(" ")
    .map((word) => {
      const step = /^(rest|bak|cool|chill|thaw)ing$/.exec(word)?.[1];
      const number = /^(?:one|two|three|four|five|six)$/.test(word) ? smallNumbers[word] : undefined;
      return step === "bak" ? "bake" : (step ?? (number === undefined ? word : String(number)));
    })
    .join(" ");

/** Every word of it is one of the timer's: "forget the blue icing" is about no blue tray. */
const isAll = (name: string, label: string): boolean => {
  const own = label.toLowerCase().split(/\s+/);
  return name.split(/\s+/).every((word) => own.includes(word));
};
