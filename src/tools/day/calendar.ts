/** A plan as an iCalendar file (RFC 5545): an event a step, an alarm where hands are wanted, times that float. */
import ical, { ICalAlarmType } from "ical-generator";
import { type DayPlan, wallText } from "../day-plan/index.ts";

/**
 * The file's text. Times carry no zone, so a phone shows them as the kitchen's clock does, across a change of
 * daylight saving too.
 * @param now_ms stamps the events
 */
export function calendarOf(plan: DayPlan, now_ms: number): string {
  const calendar = ical({
    name: "Bake day",
    prodId: { company: "bowlside", product: "day plan", language: "EN" },
  });
  for (const step of plan.steps) {
    // a floating time is written from the date's UTC fields
    const at = (seconds: number) => new Date(`${wallText(seconds)}Z`);
    const event = calendar.createEvent({
      id: `${step.id}-${wallText(step.start).replace(/\D/g, "")}@bowlside`,
      stamp: new Date(now_ms),
      start: at(step.start),
      end: at(step.end),
      floating: true,
      summary: step.name,
      description: step.hands ? "Needs your hands" : "Goes by itself",
    });
    if (step.hands || step.id.startsWith("bake-"))
      event.createAlarm({ type: ICalAlarmType.display, trigger: 0, description: step.name });
  }
  return calendar.toString();
}
