/**
 * Timers that are put right, meant by their place or their name, several at once; what is kept and no timer; notes in
 * which something is told again. Minutes and medians by arithmetic; that a time right behind a note is of its batch is how it is
 * meant to be understood.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

/** What is kept after some turns: the minutes of each timer and its name, with its state where it isn't running. */
async function kept(turns: string): Promise<string[]> {
  const { ask, record } = baker();
  for (const turn of turns.split("|")) await ask(turn);
  return record().timers.map(
    ({ set_ms, due_ms, label, state }) =>
      `${(due_ms - set_ms) / 60_000} ${label}${state === "running" ? "" : ` ${state}`}`,
  );
}

const rest = "set timer 30 min rest";
const two = "timer 10 min ganache|timer 20 min shells";
const three = `${two}|timer 30 min rest`;
const trays = "timer 12 min tray 1|timer 14 min tray 2";

describe("another length for a timer that runs", () => {
  it.each([
    [`${rest}|it should be 20 min`, ["20 rest"]],
    [`${rest}|the rest should be 20 min`, ["20 rest"]],
    [`${rest}|that was meant to be 20 min`, ["20 rest"]],
    [`${rest}|it was supposed to be 20`, ["20 rest"]],
    [`${rest}|it needs to be 20 min`, ["20 rest"]],
    [`${rest}|20 not 30`, ["20 rest"]],
    [`${rest}|not 30, 20 min`, ["20 rest"]],
    [`${rest}|i said 20`, ["20 rest"]],
    [`${rest}|i wanted 20 minutes`, ["20 rest"]],
    [`${rest}|20 min instead`, ["20 rest"]],
    [`${rest}|oops 20`, ["20 rest"]],
    [`${rest}|correction 20 min`, ["20 rest"]],
    [`${rest}|timer 12 min bake|rest was supposed to be 40`, ["40 rest", "12 bake"]],
    [`${rest}|timer 12 min bake|bake is 14 not 12`, ["30 rest", "14 bake"]],
    [`${rest}|200 g in oz|rest timer should be 20 min`, ["20 rest"]],
    [`${trays}|tray 1 should be 13`, ["13 tray 1", "14 tray 2"]],
    // so many more, and not so many in all: 10 + 3
    ["timer 10 min ganache|add 5|no 3", ["13 ganache"]],
    ["timer 10 min|timer 12 min|make timer 2 15", ["10 timer", "15 timer 2"]],
    ["timer 10 min|timer 12 min|give timer 2 another 5 min", ["10 timer", "17 timer 2"]],
  ])("%s", async (turns, timers) => expect(await kept(turns)).toEqual(timers));
  it("another name instead of the new one", async () =>
    expect(await kept("timer 10 min lemon|rename it rose|no call it lime")).toEqual(["10 lime"]));
});

describe("by place, by number, both", () => {
  it.each([
    [`${two}|add 5 to the first`, ["15 ganache", "20 shells"]],
    [`${two}|add 5 to the last one`, ["10 ganache", "25 shells"]],
    [`${two}|the first should be 12 min`, ["12 ganache", "20 shells"]],
    [`${two}|add 5 to both`, ["15 ganache", "25 shells"]],
    [`${three}|stop the last two`, ["10 ganache", "20 shells stopped", "30 rest stopped"]],
    [`${three}|stop the first two`, ["10 ganache stopped", "20 shells stopped", "30 rest"]],
    [`${three}|stop both|ganache and rest`, ["10 ganache stopped", "20 shells", "30 rest stopped"]],
    [`${three}|stop both|stop ganache and rest`, ["10 ganache stopped", "20 shells", "30 rest stopped"]],
    ["timer 15 min|timer 15 min|stop timer 1", ["15 timer stopped", "15 timer 2"]],
    ["timer 15 min|timer 15 min|stop timer 2", ["15 timer", "15 timer 2 stopped"]],
    ["timer 10 min bake|timer 12 min bake|stop the second bake", ["10 bake", "12 bake 2 stopped"]],
  ])("%s", async (turns, timers) => expect(await kept(turns)).toEqual(timers));
  it("tells how long the first has, and sets nothing", async () =>
    expect((await talk("timer 15 min", "timer 20 min", "how long on the first")).of("left")?.value).toBe(15));
  it("is one answer for both", async () => {
    const { ask } = baker();
    for (const turn of two.split("|")) await ask(turn);
    expect(await ask("stop both")).toHaveLength(1);
  });
  it.each([
    [`${three}|stop both`, "Which two"],
    ["timer 10 min|timer 12 min|stop tray 2", "No timer is called tray 2"],
    ["timer 10 min|timer 12 min|add 2 to tray 2", "No timer is called tray 2"],
    [`${two}|stop the second tray`, "No timer is called second tray"],
    ["timer 10 min ganache|stop timer 2", "No timer is called timer 2"],
  ])("asks and stops none: %s", async (turns, question) => {
    const { ask, record } = baker();
    let headline = "";
    for (const turn of turns.split("|")) headline = (await ask(turn))[0]?.headline ?? "";
    expect(headline).toContain(question);
    expect(record().timers.every(({ state }) => state === "running")).toBe(true);
  });
});

describe("a timer a tray", () => {
  it.each([
    ["timer for 3 trays 15 min each", ["15 tray 1", "15 tray 2", "15 tray 3"]],
    ["15 min for each of 3 trays", ["15 tray 1", "15 tray 2", "15 tray 3"]],
    ["timer 15 min each for tray 1 and tray 2", ["15 tray 1", "15 tray 2"]],
    [
      "timers for 4 trays, 14 min each|stop tray 3",
      ["14 tray 1", "14 tray 2", "14 tray 3 stopped", "14 tray 4"],
    ],
    ["3 timers of 15 min each", ["15 timer", "15 timer 2", "15 timer 3"]],
  ])("%s", async (turns, timers) => expect(await kept(turns)).toEqual(timers));
});

describe("what has been kept is no timer", () => {
  it.each([
    "bought pasteurised whites open 8 days",
    "carton of whites open 5 days",
    "opened cream 4 days",
    "frozen shells 2 months",
    "jam open a month",
    "shells in a tin 10 days",
    "ganache in the fridge 3 days",
  ])("%s", async (said) => expect(await kept(said)).toEqual([]));
  it("runs where that was meant", async () => {
    expect((await talk("opened cream 4 days")).status).toBe("asking");
    expect(await kept("opened cream 4 days|yes")).toEqual(["5760 opened cream"]);
  });
  it("and not where it wasn't", async () => expect(await kept("opened cream 4 days|no")).toEqual([]));
});

describe("the rest of a plan", () => {
  const plan = "plan 48 macs for tomorrow 4pm";
  it.each([`${plan}|put the rest on timers`, `${plan}|done with weighing|put the rest on timers`])(
    "%s",
    async (turns) => {
      const timers = await kept(turns);
      expect(timers.length).toBeGreaterThan(5);
      expect(timers.some((each) => each.endsWith(" Fill"))).toBe(true);
      expect(timers.some((each) => each.endsWith(" Weigh and sift"))).toBe(!turns.includes("done"));
    },
  );
});

const batch = "note: raspberry, 40 of them, 148 c 15 min";
const lemon = "note: lemon 24 macs, rested 30 min, baked 15 min at 148 c";

/** The last note after some turns, and how many timers were set. */
async function noted(turns: string) {
  const { ask, record } = baker();
  for (const turn of turns.split("|")) await ask(turn);
  return { ...record().notes.at(-1), notes: record().notes.length, timers: record().timers.length };
}

describe("told again behind a note", () => {
  it.each([
    [`${batch}|and it was 16 min`, { bake_min: 16 }],
    [`${batch}|and 16 min`, { bake_min: 16 }],
    [`${batch}|it was 16 min actually`, { bake_min: 16 }],
    [`${batch}|16 not 15`, { bake_min: 16, macarons: 40 }],
    [`${batch}|baked 16 not 15`, { bake_min: 16, macarons: 40 }],
    [`${batch}|baked 16 min`, { bake_min: 16 }],
    [`${batch}|should be 16 min`, { bake_min: 16 }],
    [`${batch}|and 150 c`, { oven_c: 150, bake_min: 15 }],
    [`${batch}|38 not 40`, { macarons: 38, bake_min: 15 }],
    [`${batch}|there were 38`, { macarons: 38 }],
    [`${batch}|and they rested 35 min`, { rest_min: 35, bake_min: 15 }],
    [`${batch}|and they cooled 20 min`, { bake_min: 15 }],
    [`${batch}, 7/10|8/10`, { rating: 8 }],
    [
      `${lemon}|oven was 150 not 148|rested 40 not 30|baked 16 not 15`,
      { oven_c: 150, rest_min: 40, bake_min: 16 },
    ],
    [`${lemon}|i rested them 40 min not 30`, { rest_min: 40, bake_min: 15 }],
    [`${lemon}|the oven was at 150 really`, { oven_c: 150 }],
    [`${lemon}|make that 150`, { oven_c: 150, macarons: 24 }],
    ["note: lemon 24 macs 148 c rested 30 baked 15", { macarons: 24, rest_min: 30, bake_min: 15 }],
  ])("%s", async (turns, fields) =>
    expect(await noted(turns)).toMatchObject({ ...fields, notes: 1, timers: 0 }),
  );
  it("counts in what is usual", async () =>
    expect((await talk(batch, "and it was 16 min", "how long do i usually bake")).of("bake")?.value).toBe(
      16,
    ));
  it("asks which time is meant, and what it is answered stays with the note", async () => {
    // 17 min is near neither a bake of 15 nor, so close, a rest of 20: both are within half as much again
    expect((await talk(`${batch}, rested 20 min`, "and it was 17 min")).status).toBe("asking");
    expect((await talk(batch, "and 40 min")).status).toBe("asking");
    expect(await noted(`${lemon}|it was 50|rested 50 min`)).toMatchObject({ rest_min: 50, notes: 1 });
  });
});

describe("a mark with words behind it", () => {
  it.each([
    ["note: rose 24 macs 7/10 sticky", { rating: 7, macarons: 24, problems: ["sticky bottoms"] }],
    ["note: rose 24 macs, 4/5 hollow", { rating: 8 }],
    ["note: rose 24 macs 8/10 lovely feet", { rating: 8, macarons: 24 }],
    ["note: rose 24 macs, 7/10 shells cracked", { rating: undefined }],
  ])("%s", async (said, fields) => {
    const note = await noted(said);
    for (const [name, value] of Object.entries(fields))
      expect(note[name as keyof typeof note]).toEqual(value);
  });
  // the middle of 7 and 9
  it("counts in the average", async () =>
    expect(
      (
        await talk(
          "note yesterday: rose, 24 macs, 150 c, 15 min, 7/10 sticky",
          "note: rose again 30 macs 145 c 17 min 9/10",
          "average rating",
        )
      ).of("rating")?.value,
    ).toBe(8));
});

describe("what stays as it was", () => {
  it("days of maturing, and of a reminder, are", async () => {
    expect(await kept("mature 2 days")).toEqual(["2880 mature"]);
    expect(await kept("remind me in 3 days to use the whites")).toEqual(["4320 use the whites"]);
  });
  it("is the resting where one timer is meant", async () =>
    expect(await kept("plan 48 macs for tomorrow 4pm|start the rest timer")).toEqual(["30 rest"]));
  it("a timer is one still", async () => {
    expect(await noted(`${batch}|and a timer for 16 min`)).toMatchObject({ bake_min: 15, timers: 1 });
    expect(await noted(`${batch}|16 min`)).toMatchObject({ bake_min: 15, timers: 1 });
  });
});
