/** When filled macarons have matured: from the hour they were filled, or so many hours against the usual ones. */
import { inFridge } from "../../../data/rules/keeping.ts";
import { matures } from "../../../data/rules/step-times.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { clock, localDay, shortDay } from "../lib/days.ts";
import { plain } from "../lib/show.ts";
import { ahead, behind, type Moment, type NoMoment, type Said } from "../lib/when.ts";
import type { KeepInputs } from "./keep.ts";

const hour_ms = 3_600_000;

/** @throws never: a moment that can't be comes back as `impossible`. */
export function maturing({ made, on, matured_min, coming }: KeepInputs, world: World): Outcome {
  const least_h = world.bench.mature_h ?? matures.low_h;
  const most_h = Math.max(matures.high_h, least_h);
  const span = least_h === most_h ? `${plain(least_h)} h` : `${plain(least_h)} to ${plain(most_h)} h`;
  const common = {
    status: "answered" as const,
    rule: {
      text: `filled macarons mature ${span}, boxed airtight in the fridge; the days count from filling, ${inFridge.days} at most`,
      basis: world.bench.mature_h === undefined ? matures.basis : ("your bench" as const),
    },
    figures: [{ name: "mature", low: least_h * 60, high: most_h * 60, unit: "min" }] as Figure[],
  };
  if (matured_min !== undefined) return { ...common, headline: verdict(matured_min / 60, least_h, most_h) };
  const from = made && (coming ? ahead(made, world.now_ms) : eitherWay(made, world.now_ms));
  if (from && !from.ok) return { status: "impossible", headline: from.why };
  if (!from?.timed)
    return {
      ...common,
      headline: `${span} after filling, boxed airtight in the fridge: say at what hour they were filled`,
    };
  const ready_ms = from.at_ms + least_h * hour_ms;
  const until = on?.minute === undefined ? undefined : ahead(on, world.now_ms);
  if (until && !until.ok) return { status: "impossible", headline: until.why };
  const said = until ? `${verdict((until.at_ms - from.at_ms) / hour_ms, least_h, most_h)}; ` : "";
  return {
    ...common,
    headline: `${said}${said ? "m" : "M"}atured from ${at(ready_ms)} on, ${plain(least_h)} h after filling; ${plain(most_h)} h are up at ${at(from.at_ms + most_h * hour_ms)}`,
    ...(from.assumed.length > 0 ? { assumed: from.assumed } : {}),
    items: [{ filled: at(from.at_ms), matured: at(ready_ms) }],
    working: [`${at(from.at_ms)} + ${plain(least_h)} h = ${at(ready_ms)}`],
  };
}

const eitherWay = (when: Said, now_ms: number): Moment | NoMoment => {
  const past = behind(when, now_ms);
  return past.ok ? past : ahead(when, now_ms);
};

const verdict = (hours: number, least_h: number, most_h: number): string =>
  hours < least_h
    ? `No: ${plain(hours)} h is under the ${plain(least_h)} h that they take`
    : `Yes: ${plain(hours)} h is ${hours > most_h ? `over the ${plain(most_h)} h that are usual` : `enough, ${plain(least_h)} to ${plain(most_h)} h is usual`}`;

const at = (ms: number) => {
  const day = localDay(ms);
  return `${shortDay(day)} ${clock(ms)} (${day})`;
};
