/** "they wobble after 15 min": shells that aren't done yet; "how many hours before do i take the butter out": no rule. */

import { methodRows } from "../../../data/rules/methods.ts";
import type { Outcome, Reading } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { inBase } from "../lib/units.ts";

const wobble =
  "(?:wobbl(?:e|es|ed|ing|y)|jiggl(?:e|es|ed|ing|y)|(?:move|moves|moving|slide|slides|sliding|shift|shifts) (?:(?:about|around|still|a bit) )*(?:when (?:i|you) (?:touch|nudge|push|poke|tap|press)|on (?:the|their|its) feet|if (?:i|you) (?:touch|nudge|push|poke|tap|press)))";
const notOurs =
  "(?!.*(?:timer|alarm|remind|curd|jelly|cheesecake|custard|<base=|(?:^| )(?:add|give|gave|another|more|extra|put|extend|set|start|stick|need|needs|minutes_more|longer)(?: |$)|(?:another|more|extra)_|(?:^| )(?:note|log|record|jot)(?: |$)))";
const subject =
  "(?:they|theyre|them|shells|tops?|macs|macarons|mine|feet|still|it|its|these|\\S*<count=(?:shells|macarons)[^ ]*)";
/** The same with their minutes: it stands alone. */
export const wobblesAfter = "^(?=.*<time>)";
/** Told of shells in the oven, and no order for the timer that runs ("give it 3 more, they still wobble"), with their minutes or without. */
export const wobbles: readonly string[] = [
  `^${notOurs}(?:\\S+ ){0,4}?${subject} (?:\\S+ ){0,4}?${wobble}`,
  `^${notOurs}(?:(?:and|but|oh|so|ok|after|at) )*\\S*<time> (?:\\S+ ){0,4}?${subject} (?:\\S+ ){0,4}?${wobble}`,
];

const butter = "\\S*<[^>]*ingredient=(?:salted_)?butter[^>]*>";
const ask =
  "(?:when|how long|how many (?:hours|minutes|min|h)(?:<\\S*)?|how soon|how early|what time|how far ahead|how much time)";
const soften =
  "(?:soft|soften|softens|softened|room[ _]temp\\S*|take|takes|get|bring|pull|warm|come|leave|let)";
const notKept =
  "(?!.*(?:^| )(?:keep|keeps|safe|last|lasts|good|stay|ok|okay|freeze|freezer|much butter|grams?|add)(?: |$))(?!.*<base=ganache)";
export const softens: readonly string[] = [
  `^${notKept}(?:\\S+ )*?${ask} (?:\\S+ ){0,8}?${soften} (?:\\S+ ){0,4}?${butter} (?:\\S+ ){0,3}?(?:out|soft|soften|room[ _]temp\\S*|to|warm|before|ahead)`,
  `^${notKept}(?:\\S+ )*?${ask} (?:\\S+ ){0,6}?${butter} (?:\\S+ ){0,6}?(?:soft|soften|out|room[ _]temp\\S*|warm up|temperature)`,
  `^${notKept}(?:\\S+ )*?${ask} (?:\\S+ ){0,6}?(?:soften|soft|room[ _]temp\\S*|take out|get out|bring out) (?:\\S+ ){0,3}?${butter}`,
  `^${notKept}(?:\\S+ )*?(?:soft|softened|room[ _]temp(?:erature)?|soften)(?:ed)? (?:the |my )?${butter} (?:\\S+ ){0,4}?${ask}`,
  `^${notKept}(?:\\S+ )*?${butter} (?:\\S+ ){0,5}?(?:soft|soften|room[ _]temp\\S*|out of the fridge|out|warm)(?: \\S+){0,4}? ${ask}`,
];

const whole = (each: string) => new RegExp(`${each}(?= |$)`);
let compiled: { wobbles: RegExp[]; softens: RegExp[] } | undefined;

/** What the sentence tells or asks of the two. */
export function signTold({
  mask,
  amounts,
  things,
}: Reading): { step: string; wobbles: true; judge_min?: number } | { softens: true } | undefined {
  const isButter = things.some(({ ingredient }) => ingredient?.includes("butter"));
  if (!isButter && !/wobbl|jiggl|(?:^| )(?:mov|slid|shift)/.test(mask)) return undefined;
  compiled ??= { wobbles: wobbles.map(whole), softens: softens.map(whole) };
  if (isButter) return compiled.softens.some((each) => each.test(mask)) ? { softens: true } : undefined;
  if (!compiled.wobbles.some((each) => each.test(mask))) return undefined;
  const [time, ...more] = amounts.filter(({ dim }) => dim === "time");
  return {
    step: "bake",
    wobbles: true,
    ...(time && more.length === 0 ? { judge_min: inBase(time.value, time.unit) } : {}),
  };
}

/** They aren't done, however long they have been in. */
export function bakeOn(so_far?: number): Outcome {
  const row = methodRows.find(({ id }) => id === "bake");
  const time = row?.figures?.find(({ unit }) => unit === "min");
  const { low = 0, high = 0 } = time ?? {};
  const isLong = so_far !== undefined && so_far >= high;
  return {
    status: "answered",
    headline: `Bake on: shells are done when the top doesn't wobble on its feet. Look again every 1-2 min${so_far === undefined ? "" : isLong ? `; ${plain(so_far)} min is past the usual ${plain(low)}-${plain(high)}, so check the oven's heat` : `, up to ${plain(high)} min is usual`}`,
    figures: time ? [{ ...time }] : [],
    rule: {
      text: `${row?.headline ?? ""}; done when the top doesn't wobble on its feet`,
      basis: row?.basis ?? "common practice",
    },
    cautions: ["If they brown before that, lay foil or a tray over them for the last minutes."],
  };
}

/** No row has a number of hours for it. */
export const noSoftening: Outcome = {
  status: "declined",
  headline:
    "I have no rule for how long butter takes to soften: the room and the size of the piece decide. It is ready when a finger dents it easily and it still holds its shape; in cubes it gets there sooner.",
};
