/** What is to be done with the plan there is: shown, put into a calendar, timed, dropped, gone on with. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { readDone } from "./done.ts";
import type { Draft } from "./draft.ts";
import { partDone } from "./part-done.ts";

const wanted =
  (want: NonNullable<Draft["want"]>, words: RegExp): Way<Reading, Draft> =>
  (reading) =>
    says(reading, words) ? { want } : undefined;

const ways: readonly Way<Reading, Draft>[] = [
  wanted("calendar", /calendar|(?:^| )ics(?: |$)|diary/),
  wanted("timers", /(?:timers?|alarms?)(?:<\S+)?(?: |$)/),
  wanted(
    "next",
    /^(?:(?:ok|okay|right|so|now|and|im|lets) )*(?:start|starting|begin|go|get going)(?: now| then)?$|(?:whats|what is|what comes|what do i do|and) next|(?:whats|what is) (?:the |my )?first (?:step|thing)|what (?:do i do|comes) first|(?:whats|what is) (?:still )?left to do|what do i still have to do/,
  ),
  wanted(
    "drop",
    /^(?:\S+ )?(?:drop|forget|cancel|delete|scrap|remove|ditch|bin|call off) (?:the|that|my|this|the whole) (?:plan|schedule|bake|timetable)|^(?:(?:ok|no|actually|please|so|and|well|oh|then|sorry|,) )*(?:drop(?:<\S*)?|cancel|delete|scrap|remove|ditch|bin|call off) (?:it|that|this|it all)(?: (?:then|please|pls|again|after all|altogether))*$/,
  ),
  wanted(
    "plan",
    /^(?:(?:so|and|ok|now|please|can you|could you|let me) )*(?:show|see|read|list|give|tell|repeat|display|bring up|pull up) (?:me )?(?:back )?(?:the|my|that|our) (?:whole |full |bake |baking )?(?:plan|schedule|timetable|timeline|day plan)(?: (?:again|please|pls|now|once more|back))*(?: \?)?$/,
  ),
  // "what do i have planned", "anything planned": the plan there is, and no new one
  wanted(
    "plan",
    /^(?:(?:so|and|ok|now|but) )*(?:what|whats|which|is there|do i have|have i got|anything|is anything)(?: (?:do|have|is|are|i|got|we|there|else|still|anything|bakes?|plans?|any|on|now|my|the))* (?:planned|scheduled|coming up|in the plan|on the plan|in the pipeline)(?: (?:now|still|then|at all|for now))*(?: \?)?$|^(?:(?:so|and|ok) )*(?:anything|something|nothing) (?:planned|scheduled)(?: \?)?$/,
  ),
  // "when do i start", past another question: of the plan that there is
  (reading) =>
    reading.amounts.length === 0 &&
    reading.whens.length === 0 &&
    says(
      reading,
      /^(?:(?:so|and|ok|now) )*(?:when|what time) (?:do|should|must|can) i (?:have to |need to )?(?:start|begin)(?: then| again)?(?: \?)?$/,
    )
      ? { want: "plan" }
      : undefined,
  (reading) => {
    const step = partDone(reading) ?? readDone(reading);
    return step && { want: "done", step };
  },
  // "i'm 40 minutes late with the resting"
  (reading) => {
    const late = reading.amounts.find((each) => each.dim === "time");
    return late && says(reading, /(?:^| )(?:late|behind|delay|delayed|running)(?: |$)/)
      ? { want: "late", late_min: inBase(late.value, late.unit) }
      : undefined;
  },
];

/** Undefined where nothing is wanted of a plan: an order, or a change to one. */
export const readWant = (reading: Reading): Draft | undefined => firstOf(ways, reading);
