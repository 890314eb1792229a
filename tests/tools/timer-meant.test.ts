/** Which of several timers is meant, lists of them, and lengths that could be an hour. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const minute = 60_000;

/** What is kept after some turns: minutes and label of each timer, with its state where it isn't running. */
async function kept(...turns: string[]): Promise<string[]> {
  const { ask, record } = baker();
  for (const turn of turns) await ask(turn);
  return record().timers.map(({ set_ms, due_ms, label, state }) =>
    `${(due_ms - set_ms) / minute} ${label}${state === "running" ? "" : ` ${state}`}`.trim(),
  );
}

describe("lists: one timer a length", () => {
  it.each([
    ["set two timers 10 and 12 min", [10, 12]],
    ["10 and 15 minute timers please", [10, 15]],
    ["timers for 10, 12 and 15 min", [10, 12, 15]],
  ])("%s", async (said, minutes) =>
    expect((await kept(said)).map(Number.parseFloat).sort((a, b) => a - b)).toEqual(minutes),
  );
});

describe("the one that is meant", () => {
  const set = ["timer 12 min for tray 1", "timer 20 min for the ganache", "timer 45 min for the rest"];
  const without = (gone: string) =>
    ["12 tray 1", "20 ganache", "45 rest"].map((each) => (each.endsWith(gone) ? `${each} stopped` : each));
  it.each([
    ["stop the 20 minute one", "ganache"],
    ["cancel the 45 min timer", "rest"],
    ["stop the ganache timer", "ganache"],
    ["cancel the first one", "tray 1"],
    ["cancel the last one", "rest"],
  ])("%s", async (said, gone) => expect(await kept(...set, said)).toEqual(without(gone)));

  it("asks where several could be", async () => {
    const { ask, one, record } = baker();
    for (const turn of set) await ask(turn);
    expect((await one("stop the timer")).status).toBe("asking");
    expect(record().timers.every(({ state }) => state === "running")).toBe(true);
  });
});

describe("a length that could be an hour", () => {
  it("asks what 1:30 is", async () => {
    const { one, record } = baker();
    expect((await one("timer 1:30")).status).toBe("asking");
    expect(record().timers).toEqual([]);
  });
  it("takes 1:30 with its unit", async () =>
    expect(await kept("set a timer for 1:30 minutes")).toEqual(["1.5 timer"]));
});

it("how long till a timer rings: 12 min less the 5 gone", async () => {
  const { ask, one, setClock } = baker({ now: "2026-03-14T10:00:00" });
  await ask("timer 12 min for tray 1");
  setClock("2026-03-14T10:05:00");
  expect((await one("how long till tray 1")).headline).toMatch(/7 min/);
});
