/** Fillings as steps of the day: how long the hands are on them, and how long they set. */
import { type DayFilling, usualFillings } from "../day-plan/index.ts";
import { capital } from "../lib/show.ts";
import type { Filling } from "./order.ts";
import { fillingName } from "./portions.ts";

/** A filling that has no length of its own takes this. From memory. */
const usualHands_min = 20;

export const fillingSteps = (fillings: readonly Filling[]): DayFilling[] =>
  fillings.slice(0, 10).map((filling) => {
    const usual = usualFillings.find((each) => each.name.toLowerCase() === filling.base);
    const { handsMin = usualHands_min, setMin = 0 } = usual ?? {};
    return { name: capital(fillingName(filling)), handsMin, setMin };
  });
