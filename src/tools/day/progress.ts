/** How far the bench is: which step was said to be done, what is going on, whether it is all over. */
import type { DayPlan, DayStep } from "../day-plan/index.ts";
import type { DayInputs } from "./day.ts";

/** The steps as their ids name them: `pipe-2`, `weigh`. */
const ofTray = ["pipe", "rest", "bake", "cool"];

/** The step of a plan that is meant; without a tray's number the last of its kind. */
export function stepMeant(plan: DayPlan, said: DayInputs["step"]): DayStep | undefined {
  if (!said) return undefined;
  const { kind, tray, filling } = said;
  if (filling !== undefined)
    return plan.steps.find(
      (step) => step.id.startsWith("filling-") && step.name.toLowerCase().includes(filling.toLowerCase()),
    );
  if (kind === undefined) return undefined;
  if (!ofTray.includes(kind)) return plan.steps.find((step) => step.id === kind);
  const trays = plan.steps.filter((step) => step.id.startsWith(`${kind}-`));
  return tray === undefined
    ? [...trays].sort((a, b) => b.end - a.end)[0]
    : trays.find((step) => step.id === `${kind}-${tray}`);
}

/** When a step really begins: what goes by itself as soon as the one before it has ended. */
export const begins = (step: DayStep): number => step.from ?? step.start;

/** What is going on at a moment, seconds; a step that starts right then is. */
export const goingOn = (plan: DayPlan, now: number): DayStep[] =>
  plan.steps.filter((step) => begins(step) <= now && now < step.end);

/** Trays whose shells stand piped for longer than `limit` seconds before they bake. */
export function standingLong(plan: DayPlan, limit: number): { tray: string; from: number; to: number }[] {
  return plan.steps.flatMap((step) => {
    const [kind, tray = ""] = step.id.split("-");
    const stands = kind === "rest" && step.end - begins(step) > limit;
    return stands ? [{ tray, from: begins(step), to: step.end }] : [];
  });
}
