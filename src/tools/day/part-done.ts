/** "half of them are baked", "done with half of them": a share of the trays, where that makes whole ones; else it is asked. */
import type { Amount, Memory, Outcome, Reading } from "../contract/index.ts";
import type { DayPlan, DayStep } from "../day-plan/index.ts";
import { asking } from "../lib/asking.ts";
import { exact } from "../lib/exact.ts";
import { bareNumbers } from "../lib/find.ts";
import { counted } from "../lib/show.ts";
import type { DayInputs } from "./day.ts";
import { isOut, kindDone } from "./done.ts";
import type { Draft } from "./draft.ts";

type Step = NonNullable<DayInputs["step"]>;

/** The steps that are made a tray at a time, and how one says that they are over. */
const ofTray: Readonly<Record<string, string>> = {
  pipe: "piped",
  rest: "rested",
  bake: "baked",
  cool: "cooled",
};

const done = /\b(?:done|finished|through|completed|piped|baked|rested|cooled|filled|boxed|ready|made)\b/;
/** Asked, ordered or noted, and not told. */
const elsewise =
  /\b(?:when|how|what|which|why|will|would|until|till|if|note|log|want|wants|need|needs|make|do|with (?!(?:a |the |my )?(?:first |last |one )?(?:half|third|quarter|\d|piping|baking|resting|cooling|filling|boxing))\w+)\b/;

/** Something is told to be over. */
export const saysDone = ({ text }: Reading): boolean => done.test(text) || isOut.test(text);

const isSome = ({ dim, unit, value, fraction }: Amount): boolean =>
  dim === "number" && unit === "" && fraction !== undefined && value > 0 && value < 1;

/** "12 of them", where a plan is spoken of. */
const ofThem = ({ text }: Reading, { dim, unit, at, fraction }: Amount): boolean =>
  dim === "number" &&
  unit === "" &&
  !fraction &&
  /^ (?:of (?:them|those|these|the (?:macarons|macs))|macarons|macs)\b/.test(text.slice(at[1]));

/** "one of the trays", "two trays are out": so many, and not which. */
const ofTrays = ({ text }: Reading, { dim, unit, at, fraction }: Amount): boolean =>
  dim === "number" &&
  unit === "" &&
  !fraction &&
  /^ (?:of (?:the|my|those|these) )?(?:trays|sheets|mats)\b/.test(text.slice(at[1]));

/** Which share or number of the macarons a step is done of. */
export function partDone(reading: Reading): Step | undefined {
  const { amounts, text, things, whens } = reading;
  const [only, ...others] = amounts.filter(({ of }) => of?.count !== "trays" || !isTrayNumber(of.text));
  const some = isHalfway.test(text) ? 0.5 : undefined;
  const mix = things.find(({ base }) => base === "ganache" || base === "buttercream")?.base;
  // "half the batter is piped" is of the trays; "half of them lemon" is nothing that was done
  const isOther = things.some((each) => each.taste || (each.base && each.base !== "batter")) && !mix;
  // "half done, half to go" says it twice
  const isOne = others.length === 0 || [only, ...others].every((each) => each && isSome(each));
  if (whens.length > 0 || !isOne || isOther) return undefined;
  if ((!saysDone(reading) && some === undefined) || elsewise.test(text)) return undefined;
  const kind = /\bpip(?:ed|ing)\b/.test(text) ? "pipe" : kindDone(reading);
  const of = mix ? { filling: mix } : kind === undefined ? {} : { kind };
  if (only && ofTrays(reading, only)) return { kind: kind ?? "bake", tray: only.value, first: true };
  if (!only && /\bone of (?:the|my|those|these) trays\b/.test(text))
    return { kind: kind ?? "bake", tray: 1, first: true };
  if (only && isSome(only)) return { ...of, share: only.value };
  if (only && ofThem(reading, only)) return { ...of, count: only.value };
  return !only && some !== undefined ? { ...of, share: some } : undefined;
}

const isHalfway = /\b(?:half ?way|halfway) (?:through|done|there|with)\b/;
/** "trays" counts them; "tray 2" names one. */
const isTrayNumber = (text: string): boolean => !text.endsWith("s");

/** "tray 2", "the first two", "piping", where it was asked which. */
export function partAnswered(reading: Reading, { slot, last }: Memory): Draft | undefined {
  const before = slot === "step" && last?.tool === "day" ? (last.inputs as Draft).step : undefined;
  if (!before) return undefined;
  const kind = kindDone(reading) ?? before.kind;
  const tray =
    reading.amounts.find(({ of }) => of?.count === "trays")?.value ?? bareNumbers(reading)[0]?.value;
  if (kind === undefined) return undefined;
  if (tray !== undefined && Number.isInteger(tray))
    return { want: "done", step: { kind, tray, first: true } };
  return kind === before.kind ? undefined : { want: "done", step: { ...before, kind } };
}

/** The trays of a kind in the order in which they are planned. */
const traysOf = ({ steps }: DayPlan, kind: string): DayStep[] =>
  steps.filter(({ id }) => id.startsWith(`${kind}-`)).sort((a, b) => a.end - b.end);

const oneStep: Outcome = {
  status: "impossible",
  headline: "That is one step of the plan: tell me when all of it is done. Nothing is changed.",
};

/** The step that ends the share which is done, or what has to be asked first. */
export function shareDone(plan: DayPlan, said: Step, macarons: number): { step: Step } | Outcome {
  const { kind, share, count, filling } = said;
  if (filling !== undefined) return oneStep;
  if (kind === undefined) return asking("What is done of them: piping, baking, filling? Say which.", "step");
  const verb = ofTray[kind];
  if (!verb) return oneStep;
  const trays = traysOf(plan, kind);
  const part = share === undefined ? exact(count ?? 0).div(exact(macarons)) : exact(share);
  const number = part.mul(exact(trays.length)).valueOf();
  const last = Number.isInteger(number) ? trays[number - 1] : undefined;
  if (!last)
    return asking(`There are ${counted(trays.length, "tray")}: up to which one are they ${verb}?`, "step");
  return { step: { kind, tray: Number(last.id.split("-")[1]), first: true } };
}

/** A share that is told behind its planned end, with the next tray still at work, is as the plan has it. */
export function isAsPlanned(plan: DayPlan, target: DayStep, said: Draft["step"], now: number): boolean {
  if (!said?.first || target.end > now) return false;
  const trays = traysOf(plan, target.id.split("-")[0] ?? "");
  const next = trays[trays.indexOf(target) + 1];
  return next === undefined || next.end > now;
}
