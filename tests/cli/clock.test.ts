/** The one clock: it stands where BOWLSIDE_NOW says, in local time, or it runs. */
import { describe, expect, it } from "vitest";
import { clockFrom } from "../../src/cli/clock.ts";

const real = () => 1234;
const now = (told: string | undefined) => {
  const clock = clockFrom(told, real);
  return clock.ok ? clock.now_ms() : clock.message;
};

it("runs when nothing is said", () => {
  expect(now(undefined)).toBe(1234);
  expect(now("")).toBe(1234);
});

it("stands at a local moment, with or without seconds", () => {
  expect(now("2026-03-14T09:30:00")).toBe(new Date(2026, 2, 14, 9, 30).getTime());
  expect(now("2026-03-14T09:30")).toBe(new Date(2026, 2, 14, 9, 30).getTime());
  expect(now("2026-12-31T23:59:59")).toBe(new Date(2026, 11, 31, 23, 59, 59).getTime());
});

describe("refuses what is no local moment, and says how one looks", () => {
  it.each([
    "now",
    "2026-03-14",
    "09:30",
    "2026-03-14 09:30:00",
    "2026-03-14T09:30:00Z",
    "2026-03-14T09:30:00+01:00",
    "2026-13-01T00:00:00",
    "2026-03-14T25:00:00",
    "2026-02-30T12:00:00",
    "14.3.2026",
    "1773480600000",
    " 2026-03-14T09:30:00",
  ])("%s", (told) => {
    expect(String(now(told))).toMatch(/^BOWLSIDE_NOW is ".*2026-03-14T09:30:00/);
  });
});
