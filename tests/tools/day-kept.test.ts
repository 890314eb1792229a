/** A plan outlives the process: gone on with by another session over the same record. Times worked by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { startSession } from "../../src/cli/session.ts";
import { understanding } from "../../src/intents/understanding.ts";
import { doneBy } from "../../src/tools/day/progress.ts";
import { planDay, usualFillings, usualSettings } from "../../src/tools/day-plan/index.ts";
import { tools } from "../../src/tools/registry.ts";
import { type Baker, baker, memoryStore } from "../support/ask.ts";

/** 24 for tomorrow 15:00: weigh 11:37, meringue 11:57, pipe 12:22 and 12:37, ganache 12:57, bakes 13:02 and 13:17. */
async function planned(line = "24 macarons for tomorrow 3pm, when do I start"): Promise<Baker> {
  const chat = baker();
  await chat.one(line);
  return chat;
}
/** Another process, later. */
const later = (before: Baker, now: string) => baker({ now: `2026-03-${now}:00`, record: before.record() });
const starts = async (chat: Baker, line: string) =>
  new Map((await chat.one(line)).steps?.map((each) => [each.name, each.start.slice(11, 16)]));

describe("in another process", () => {
  test("what is next", async () => {
    const chat = later(await planned(), "14T13:00");
    expect((await chat.one("what's next?")).headline).toMatch(/Ganache.*Next at 13:02: Bake tray 1/);
  });

  test("nothing is planned twice, and a later number takes its place", async () => {
    const chat = await planned();
    await chat.one("24 macarons for tomorrow 3pm, when do I start");
    await chat.one("make it 12 macarons");
    expect(chat.record().plans).toHaveLength(1);
    expect(chat.record().plans[0]?.macarons).toBe(12);
  });

  test("another order is another plan; the one at work is meant", async () => {
    const chat = await planned();
    await chat.one("36 macarons by friday 6 pm, when do I start");
    expect(chat.record().plans).toHaveLength(2);
    expect((await later(chat, "14T12:00").one("what's next?")).headline).toMatch(
      /Meringue.*12:22: Pipe tray 1/,
    );
    expect((await later(chat, "16T12:00").one("what's next?")).headline).toMatch(/Next Thu 19 Mar/);
  });

  // 40 min late at 12:00: weighing since 11:37 is moved to 12:17, ends 12:37; all of it 40 min later: 15:40
  test("40 minutes late: said when they would be ready, and gone on for that hour", async () => {
    const chat = later(await planned(), "14T12:00");
    const said = await chat.one("I'm running 40 minutes late");
    expect(said.status).toBe("impossible");
    expect(said.headline).toMatch(/tomorrow 15:40.*goes on for that hour/);
    const next = await later(chat, "14T12:30").one("what's next?");
    expect(next.headline).toMatch(/Now: Weigh and sift. Next at 12:37: Meringue/);
    await chat.one("undo");
    expect((await chat.one("what's next?")).headline).toMatch(/12:22: Pipe tray 1/);
  });

  test("skip the rest: what has begun stays, and undo brings the rest back", async () => {
    const chat = later(await planned(), "14T12:40");
    const names = async (line: string) => [...(await starts(chat, line)).keys()].join();
    expect(await names("skip the rest")).not.toMatch(/Rest tray 2/);
    await chat.one("undo");
    expect(await names("what's next?")).toMatch(/Rest tray 2/);
  });

  test("timers and the calendar file", async () => {
    const chat = later(await planned(), "14T10:00");
    expect((await chat.one("set timers for it")).items).toHaveLength(10);
    await chat.one("calendar file");
    expect(chat.files.map((each) => each.name)).toEqual(["bake-2026-03-14.ics"]);
  });

  test("timers move with the plan", async () => {
    const chat = await planned();
    await chat.one("set timers for it");
    const late = later(chat, "14T12:00");
    await late.one("running 10 minutes late");
    const rings = late
      .record()
      .timers.map((each) => `${new Date(each.due_ms).toTimeString().slice(0, 5)} ${each.label}`);
    expect(rings).toContain("12:32 Pipe tray 1");
    expect(rings).toContain("14:20 Box and label");
  });

  test.each([
    "running 10 minutes late",
    "skip the rest",
    "calendar file",
    "set timers for it",
    "done boxing",
  ])("when it is over: %s", async (line) => {
    const said = await later(await planned(), "15T15:00").one(line);
    expect(said.status).toBe("impossible");
    expect(said.headline).toMatch(/over: 24 macarons were due 15:00/);
  });

  test("when it is over there is nothing next", async () => {
    expect(await later(await planned(), "16T15:00").one("what's next?")).toMatchObject({
      status: "answered",
      headline: expect.stringMatching(/over: 24 macarons were due yesterday 15:00/),
    });
  });

  test("a plan is dropped, and brought back", async () => {
    const chat = later(await planned(), "14T10:00");
    await chat.one("forget the plan");
    expect((await chat.one("what's next?")).headline).toMatch(/There is no plan/);
    await chat.one("undo");
    expect((await chat.one("what's next?")).headline).toMatch(/11:37: Weigh and sift/);
  });

  test("planning alone is no change to take back", async () => {
    expect((await (await planned()).one("undo")).status).toBe("impossible");
  });
});

describe("said to be done", () => {
  // tray 1 piped at 12:40, 8 min behind: rests till 13:10, so all of its bakes and what follows 8 min later
  test("behind the plan", async () => {
    const said = await later(await planned(), "14T12:40").one("I'm done piping tray 1");
    expect(said.headline).toMatch(/ready tomorrow 15:08/);
    expect(said.steps?.find((each) => each.name === "Bake tray 1")?.start.slice(11, 16)).toBe("13:10");
  });

  test("ahead of the plan: the rest stays as late as it can", async () => {
    const chat = later(await planned(), "14T11:50");
    const said = await starts(chat, "done weighing");
    expect([said.get("Meringue and macaronage"), said.get("Pipe tray 1")]).toEqual(["11:57", "12:22"]);
  });

  test("a filling that was made before its time is not made again", async () => {
    const chat = later(await planned(), "14T12:36");
    const said = await chat.one("I'm done with the ganache");
    expect(said.status).toBe("answered");
    expect((await chat.one("what's next?")).headline).toMatch(/Next at 12:37: Pipe tray 2/);
  });

  test.each(["done piping tray 7", "done with the meringue tray 9"])("no such step: %s", async (line) => {
    expect((await later(await planned(), "14T12:40").one(line)).status).toBe("impossible");
  });

  test("any step at any moment: no error, and nothing that is done is planned again", () => {
    const order = {
      macarons: 24,
      due: 20_527 * 86_400 + 54_000,
      now: 20_526 * 86_400,
      settings: usualSettings,
      fillings: usualFillings,
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 120 }),
        fc.nat(1000),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(30_000),
        (macarons, which, part, spare) => {
          const plan = planDay({ ...order, macarons });
          if (!plan.fits) return;
          const steps = plan.steps.filter((step) => step.hands || step.id.startsWith("bake-"));
          const target = steps[which % steps.length];
          if (!target) return;
          const now = plan.start + Math.floor(part * (plan.ready - plan.start));
          const done = doneBy(plan, target, now);
          expect(done.find(({ id }) => id === target.id)?.end).toBe(now);
          const anew = planDay({ ...order, macarons, now, due: order.due + spare, done });
          if (!anew.fits) return;
          for (const step of anew.steps.filter(
            ({ id, hands }) => hands && !done.some((each) => each.id === id),
          ))
            expect(step.start).toBeGreaterThanOrEqual(now);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe("a batch noted after a planned bake", () => {
  const order = "24 macarons for tomorrow 3pm, apricot ganache and vanilla buttercream";

  test("takes the plan's figures, and says which", async () => {
    const chat = later(await planned(order), "15T10:00");
    const said = await chat.one("note: good feet, two hollow");
    expect(chat.record().notes).toMatchObject([
      { date: "2026-03-14", macarons: 24, trays: 2, flavors: ["apricot", "vanilla"], problems: ["hollow"] },
    ]);
    expect(said.assumed?.join()).toMatch(
      /from the plan: 24 macarons, 2 trays, apricot and vanilla, baked yesterday/,
    );
  });

  test("what is said wins", async () => {
    const chat = later(await planned(order), "15T10:00");
    await chat.one("note: made 20 macarons, vanilla, good feet");
    expect(chat.record().notes).toMatchObject([{ macarons: 20, flavors: ["vanilla"], date: "2026-03-14" }]);
    expect(chat.record().notes[0]?.trays).toBeUndefined();
  });

  test.each([
    ["another flavor", "15T10:00", "note: lemon batch, good feet"],
    ["another day", "15T10:00", "note for march 8: good feet"],
    ["no batch", "15T10:00", "note: the oven light is broken"],
    ["before it was baked", "14T12:00", "note: good feet"],
    ["long after", "20T12:00", "note: good feet"],
  ])("not for %s", async (_, now, line) => {
    const chat = later(await planned(order), now);
    const said = await chat.one(line);
    expect(chat.record().notes[0]?.macarons).toBeUndefined();
    expect(said.assumed?.join() ?? "").not.toMatch(/plan/);
  });

  test("once, and undo gives the plan back to the next note", async () => {
    const chat = later(await planned(order), "15T10:00");
    await chat.one("note: good feet");
    await chat.one("note: hollow ones on the second tray");
    expect(chat.record().notes[1]?.macarons).toBeUndefined();
    await chat.one("undo");
    await chat.one("undo");
    await chat.one("note: good feet again");
    expect(chat.record().notes[0]?.macarons).toBe(24);
  });
});

test("a record that can't be written costs the keeping, not the plan", async () => {
  const { store } = memoryStore();
  const problem = { kind: "full" as const, message: "the disk is full.", try: "make room" };
  const session = startSession({
    store: { ...store, change: async () => ({ ok: false, problem }) },
    understanding: understanding(tools),
    now_ms: () => new Date("2026-03-14T09:30:00").getTime(),
  });
  const ask = async (line: string) => (await session.ask(line)).answers[0];
  const said = await ask("24 macarons for tomorrow 3pm, when do I start");
  expect(said?.status).toBe("answered");
  expect(said?.cautions?.join()).toMatch(/plan isn't kept: the disk is full/);
  expect((await ask("set timers for it"))?.headline).toMatch(/Not saved/);
});
