/** Going back to the record of an earlier day: which copy that is, and what is said. */
import type { Outcome, World } from "../contract/index.ts";
import { friendlyDay, localDay } from "./days.ts";
import { listed } from "./show.ts";
import { behind, type Said } from "./when.ts";

const rule = "A copy is made before the first change of a day; the last seven are kept.";

/**
 * Goes back to the record as it was at the end of a day; without a day, to the newest copy. A day without a copy is a
 * day without a change, so the copy before it holds the same. Timers are left as they are.
 */
export function goBack(when: Said | undefined, world: World): Outcome {
  const days = world.copies?.days ?? [];
  const newest = days.at(-1);
  const oldest = days[0];
  if (!newest || !oldest)
    return { status: "impossible", headline: `There is no copy of your record yet. ${rule}` };
  const moment = when ? behind(when, world.now_ms) : undefined;
  if (moment && !moment.ok) return { status: "impossible", headline: moment.why };
  const asked = moment?.day ?? newest;
  const said = friendlyDay(asked, world.now_ms);
  if (asked >= localDay(world.now_ms))
    return {
      status: "impossible",
      headline: 'That is the record you have. To take single changes back, say "undo".',
    };
  const { changed_ms } = world.copies ?? {};
  if (changed_ms !== undefined && localDay(changed_ms) <= asked)
    return {
      status: "impossible",
      headline: `Nothing was changed since ${said}: that is the record you have.`,
    };
  const day = days.findLast((each) => each <= asked);
  if (!day)
    return {
      status: "impossible",
      headline: `There is no copy of ${said} any more; the oldest is of ${friendlyDay(oldest, world.now_ms)}.`,
    };
  const found = friendlyDay(day, world.now_ms);
  const name = `going back to the record of ${found}`;
  return {
    status: "answered",
    headline: `Your record is as it was at the end of ${found}. "undo" brings back how it was just now.`,
    assumed: [
      ...(day === asked ? [] : [`nothing was changed from then to the end of ${said}`]),
      ...(moment?.assumed ?? []),
      "timers go on as they are",
    ],
    effects: [{ do: "restore", day }],
    change: name,
  };
}

/** The days that can be gone back to. */
export function listCopies(world: World): Outcome {
  const days = world.copies?.days ?? [];
  if (days.length === 0)
    return { status: "answered", headline: `There is no copy of your record yet. ${rule}` };
  const names = listed(days.map((day) => friendlyDay(day, world.now_ms)));
  return {
    status: "answered",
    headline: `You can go back to the end of ${names}.`,
    items: days.map((day) => ({ day, copy: friendlyDay(day, world.now_ms) })),
  };
}
