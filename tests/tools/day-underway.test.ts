/** A plan in use: moved, put on timers, asked about in the middle of the bake, run late. Times worked by hand. */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { type Baker, baker } from "../support/ask.ts";

const at = ({ steps = [] }: Answer, name: string) =>
  steps.find((each) => each.name === name)?.start.slice(11, 16);

/** 24 for tomorrow 15:00: weigh 11:37, meringue 11:57, pipe 12:22 and 12:37, ganache 12:57, bakes 13:02 and 13:17. */
async function planned(): Promise<Baker> {
  const chat = baker();
  await chat.one("24 macarons for tomorrow 3pm, when do I start");
  return chat;
}

describe("moved", () => {
  test("an hour later, every step is", async () => {
    const said = await (await planned()).one("they want them at 4 now");
    expect(at(said, "Weigh and sift")).toBe("12:37");
    expect(said.headline).toMatch(/ready tomorrow 16:00/);
  });

  // 1 tray: fill 12 x 20 s = 4 min at 14:06; cool 13:36, bake 13:21, rest 12:51, pipe 12:41, meringue 12:16, weigh 11:56
  test("another number is another plan", async () => {
    expect(at(await (await planned()).one("make it 12 macarons"), "Weigh and sift")).toBe("11:56");
  });

  test("skipping the rest", async () => {
    const said = await (await planned()).one("what if i skip the rest");
    expect(said.steps?.some((each) => each.name.startsWith("Rest"))).toBe(false);
  });

  test("a new hour after a calendar file asks for the plan, not for another file", async () => {
    const chat = await planned();
    await chat.one("save it as a calendar file");
    await chat.one("they want them at 4 now");
    expect(chat.files).toHaveLength(1);
  });
});

describe("on timers", () => {
  test("one at the start of each step that wants hands or the oven, at its clock time", async () => {
    const chat = await planned();
    expect((await chat.one("put the steps on timers")).items).toHaveLength(10);
    const timers = chat
      .record()
      .timers.map((each) => `${new Date(each.due_ms).toTimeString().slice(0, 5)} ${each.label}`);
    expect(timers).toEqual([
      "11:37 Weigh and sift",
      "11:57 Meringue and macaronage",
      "12:22 Pipe tray 1",
      "12:37 Pipe tray 2",
      "12:57 Ganache",
      "13:02 Bake tray 1",
      "13:17 Bake tray 2",
      "13:32 Buttercream",
      "14:02 Fill",
      "14:10 Box and label",
    ]);
  });

  test("and all of them are taken back at once", async () => {
    const chat = await planned();
    await chat.one("put the steps on timers");
    await chat.one("undo");
    expect(chat.record().timers).toEqual([]);
  });

  test("in the middle of the bake only for what is still to come", async () => {
    const chat = await planned();
    chat.setClock("2026-03-14T13:00:00");
    await chat.one("put the steps on timers");
    expect(chat.record().timers.map((each) => each.label)).toEqual([
      "Bake tray 1",
      "Bake tray 2",
      "Buttercream",
      "Fill",
      "Box and label",
    ]);
  });
});

describe("in the middle of the bake", () => {
  test("what is next, by the plan that was made", async () => {
    const chat = await planned();
    chat.setClock("2026-03-14T13:00:00");
    const said = await chat.one("whats next");
    expect(said.status).toBe("answered");
    // 12:57-13:17 ganache, 12:32-13:02 rest of tray 1, 12:47-13:17 rest of tray 2
    expect(said.headline).toMatch(/Now: .*Ganache.*Next at 13:02: Bake tray 1/);
  });

  test('the next day "tomorrow" isn\'t counted again', async () => {
    const chat = await planned();
    chat.setClock("2026-03-15T14:00:00");
    const said = await chat.one("whats next");
    expect(said.headline).toMatch(/Next at 14:10: Box and label/);
    expect(said.steps?.at(-1)?.end).toBe("2026-03-15T15:00:00");
  });

  test("a new hour, said the next day, belongs to the day that was settled", async () => {
    const chat = await planned();
    chat.setClock("2026-03-15T09:00:00");
    const said = await chat.one("they want them at 4 now");
    expect(said.steps?.at(-1)?.end).toBe("2026-03-15T16:00:00");
    expect(at(said, "Fill")).toBe("14:02");
  });

  // An hour more is free at the end: what had begun by 12:40 less 20 min is moved by 20 (weigh 11:57, meringue 12:17 to
  // 12:42), the rest goes as late as it can for 16:00: fill 15:02, bakes from 14:02
  test("running late, what has begun is kept and the rest follows", async () => {
    const chat = await planned();
    await chat.one("they want them at 4 now");
    chat.setClock("2026-03-14T13:10:00");
    // by the plan for 16:00: weigh 12:37, meringue 12:57, pipe 13:22; 20 min late: weigh 12:57
    const said = await chat.one("running 20 minutes late");
    expect(said.status).toBe("impossible");
    // nothing was spare: 16:00 + 20 min
    expect(said.headline).toMatch(/16:20/);
  });

  test("late before it has begun: still impossible by as much, and said so", async () => {
    const chat = await planned();
    chat.setClock("2026-03-14T11:37:00");
    const said = await chat.one("running 15 minutes late");
    expect(said.status).toBe("impossible");
    expect(said.headline).toMatch(/15:15/);
  });

  test("late with an hour in hand: the plan goes on", async () => {
    const chat = await planned();
    chat.setClock("2026-03-14T12:00:00");
    // meringue since 11:57; now they are wanted an hour later, and the bench is 20 min behind: weighing till 12:17
    const moved = await chat.one("they want them at 4 now");
    expect(at(moved, "Weigh and sift")).toBe("11:37");
    const said = await chat.one("running 20 minutes late");
    expect(said.status).toBe("answered");
    expect(at(said, "Fill")).toBe("15:02");
    expect(said.headline).toMatch(/ready tomorrow 16:00/);
  });
});
