/** The calendar file, read back by an iCalendar parser and held against RFC 5545. */
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { calendarOf } from "../../src/tools/day/calendar.ts";
import {
  type DayPlan,
  planDay,
  usualFillings,
  usualSettings,
  wallSeconds,
  wallText,
} from "../../src/tools/day-plan/index.ts";
import { baker } from "../support/ask.ts";

const now_ms = Date.UTC(2026, 2, 14, 9, 30);

/** Signs that have to be escaped, letters of several octets, and more than 75 octets in a line. */
const awkward =
  "Crème pâtissière; with “rum”, raisins \\ and\na second line, long enough that 日本の抹茶 has to be folded somewhere inside";

function planOf(filling = usualFillings): DayPlan {
  const plan = planDay({
    macarons: 24,
    due: wallSeconds("2026-03-15T15:00"),
    now: wallSeconds("2026-03-14T09:30"),
    settings: usualSettings,
    fillings: filling,
  });
  if (!plan.fits) throw new Error("no plan");
  return plan;
}

const plain = planOf();
const odd = planOf([{ name: awkward, handsMin: 20, setMin: 45 }]);
const parsed = (text: string) => new ICAL.Component(ICAL.parse(text));
const events = (text: string) => parsed(text).getAllSubcomponents("vevent");
const text = calendarOf(plain, now_ms);
const oddText = calendarOf(odd, now_ms);

describe("what is in it", () => {
  test("an event a step, with the step's name, from its start to its end", () => {
    const got = events(text).map((each) => {
      const event = new ICAL.Event(each);
      return [event.summary, event.startDate.toString(), event.endDate.toString()];
    });
    expect(got).toEqual(plain.steps.map((step) => [step.name, wallText(step.start), wallText(step.end)]));
    expect(got.length).toBe(17);
  });

  test("every event has a UID of its own, the same whenever it is written", () => {
    const uids = events(text).map((each) => each.getFirstPropertyValue("uid"));
    expect(new Set(uids).size).toBe(plain.steps.length);
    expect(
      events(calendarOf(plain, now_ms + 5_000)).map((each) => each.getFirstPropertyValue("uid")),
    ).toEqual(uids);
  });

  test("DTSTAMP is the moment it was written, in UTC", () => {
    for (const each of events(text)) {
      const stamp = each.getFirstPropertyValue("dtstamp") as ICAL.Time;
      expect(stamp.toString()).toBe("2026-03-14T09:30:00Z");
    }
  });

  test("an alarm where hands or the oven are wanted: DISPLAY, with TRIGGER and DESCRIPTION", () => {
    events(text).forEach((each, at) => {
      const step = plain.steps[at];
      const alarms = each.getAllSubcomponents("valarm");
      expect(alarms).toHaveLength(step?.hands || step?.id.startsWith("bake-") ? 1 : 0);
      for (const alarm of alarms) {
        expect(alarm.getFirstPropertyValue("action")).toBe("DISPLAY");
        expect(alarm.getFirstPropertyValue("description")).toBe(step?.name);
        expect((alarm.getFirstPropertyValue("trigger") as ICAL.Duration).toSeconds()).toBe(0);
      }
    });
  });

  test("times float: no zone, no Z, no VTIMEZONE", () => {
    for (const each of events(text))
      for (const name of ["dtstart", "dtend"]) {
        const property = each.getFirstProperty(name);
        expect(property?.getParameter("tzid")).toBeUndefined();
        expect((property?.getFirstValue() as ICAL.Time | undefined)?.zone).toBe(ICAL.Timezone.localTimezone);
      }
    expect(parsed(text).getAllSubcomponents("vtimezone")).toEqual([]);
    expect(text).toMatch(/^DTSTART:20260314T113700\r$/m);
  });

  test("VERSION 2.0 and a PRODID", () => {
    expect(parsed(text).getFirstPropertyValue("version")).toBe("2.0");
    expect(parsed(text).getFirstPropertyValue("prodid")).toMatch(/bowlside/);
  });
});

describe("how it is written", () => {
  test.each([
    ["plain", text],
    ["awkward", oddText],
  ])("every line ends in CRLF and nothing else (%s)", (_, written) => {
    expect(written.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    expect(written).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(written.trimEnd()).toMatch(/END:VCALENDAR$/);
  });

  test.each([
    ["plain", text],
    ["awkward", oddText],
  ])("no line is over 75 octets (%s)", (_, written) => {
    const long = written.split("\r\n").filter((line) => Buffer.byteLength(line, "utf8") > 75);
    expect(long).toEqual([]);
  });

  test("the awkward name needs folding, and comes back whole", () => {
    expect(oddText.split("\r\n").some((line) => line.startsWith(" "))).toBe(true);
    const names = events(oddText).map((each) => new ICAL.Event(each).summary);
    expect(names).toContain(awkward);
    expect(names).toContain(`${awkward} sets`);
  });

  test("backslash, semicolon, comma and line break are escaped", () => {
    const whole = oddText.replaceAll("\r\n ", "");
    expect(whole).toContain(
      "SUMMARY:Crème pâtissière\\; with “rum”\\, raisins \\\\ and\\na second line\\, long",
    );
  });
});

describe("asked for", () => {
  test("after a plan, it is that plan", async () => {
    const chat = baker();
    const plan = await chat.one("24 macarons for tomorrow 3pm, when do I start");
    const said = await chat.one("save it as a calendar file");
    expect(said).toMatchObject({ tool: "day", status: "answered" });
    expect(chat.files.map((each) => each.name)).toEqual(["bake-2026-03-14.ics"]);
    const written = chat.files[0]?.text ?? "";
    expect(events(written)).toHaveLength(plan.steps?.length ?? 0);
    expect(events(written).map((each) => new ICAL.Event(each).startDate.toString())).toEqual(
      plan.steps?.map((each) => each.start),
    );
  });
});
