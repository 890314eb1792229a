/** The demo: an invented record around now, in a place of its own that never touches the baker's. */
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { demo } from "../../data/demo.ts";
import { demoChanges } from "../../src/cli/demo/record.ts";
import { applyEffects } from "../../src/store/apply.ts";
import { emptyRecord, RecordData } from "../../src/store/schema.ts";
import { imports } from "../guards/sources.ts";
import { baker } from "../support/ask.ts";
import { builtProgram, type Program } from "../support/built.ts";
import { standing } from "../support/world.ts";
import { openScreen, type Screen } from "./chat-pty.ts";

const recordAt = (now_ms: number) =>
  demoChanges(now_ms).reduce(
    (record, { effects, change }) => applyEffects(record, effects, change, now_ms),
    emptyRecord(),
  );
const demoBaker = (now = standing) => baker({ now, record: recordAt(new Date(now).getTime()) });

describe("the record", () => {
  it("has twelve batches, three recipes, a shelf with bottles, stock and prices, a day with timers", () => {
    const record = recordAt(new Date(standing).getTime());
    expect(RecordData().safeParse(record).success).toBe(true);
    expect(record.notes).toHaveLength(12);
    expect(record.formulas).toHaveLength(3);
    expect(record.bottles.length).toBeGreaterThan(2);
    expect(record.stock.length).toBeGreaterThan(4);
    for (const { name, price_per_g } of record.stock) expect(price_per_g, name).toBeGreaterThan(0);
    expect(record.plans).toHaveLength(1);
    expect(record.timers).toHaveLength(2);
  });

  it.each(demo.notes.map((note) => [note.text, note] as const))(
    "a batch is noted as it is read: %s",
    async (text, { days_ago: _, ...expected }) => {
      const said = baker();
      await said.one(`note: ${text}`);
      const [{ id: _id, date: _date, noted_ms: _noted, ...noted } = {}] = said.record().notes;
      expect(noted).toEqual(expected);
    },
  );

  it("has its bake under way and its timers running at any hour of any day", () => {
    const zone = process.env.TZ;
    for (const TZ of ["UTC", "Europe/Berlin", "America/Los_Angeles", "Asia/Kathmandu"]) {
      process.env.TZ = TZ;
      const from = Date.UTC(2026, 0, 1);
      fc.assert(
        fc.property(fc.integer({ min: from, max: from + 366 * 86_400_000 }), (now_ms) => {
          const { timers, plans, notes } = recordAt(now_ms);
          for (const { due_ms, set_ms } of timers) {
            // an hour more where the clocks change in between
            expect(due_ms - now_ms).toBeGreaterThan(-3_600_000);
            expect(due_ms - now_ms).toBeLessThan(95 * 60_000);
            expect(due_ms).toBeGreaterThan(set_ms);
          }
          expect(plans[0]?.ready).toBeGreaterThan(plans[0]?.start ?? Number.NaN);
          for (const { noted_ms } of notes) expect(noted_ms).toBeLessThan(now_ms);
        }),
        { numRuns: 60 },
      );
    }
    process.env.TZ = zone;
  });

  it.each(["2026-03-14T09:30:00", "2026-03-14T00:05:00", "2026-07-01T14:59:59", "2026-11-30T23:40:00"])(
    "at %s the program finds what is in it",
    async (now) => {
      const said = demoBaker(now);
      expect((await said.one("what's next")).headline).toMatch(/^Now: .*Bake tray 1.*Next at .*Bake tray 2/);
      const timers = await said.one("what timers are running");
      expect(timers.items?.map(({ label }) => label).sort()).toEqual(["butter", "tray 1"]);
      // 10 out of 10 is the highest of the ratings in data/demo.ts
      expect((await said.one("which batch was my best")).headline).toContain("salted caramel");
      // the bottle says 3-4 %: 6 and 8 g of 200 g
      const dose = await said.one("how much pistachio flavor for 200 g ganache");
      expect(dose.figures?.[0]).toMatchObject({ low: 6, high: 8 });
      expect(dose.rule?.basis).toBe("your bench");
      expect((await said.one("show snowy shells")).headline).toContain("105 g");
      expect((await said.one("what's on the shelf")).items).toHaveLength(13);
      expect((await said.one("undo")).status).toBe("answered");
      expect((await said.one("what timers are running")).items).toHaveLength(1);
    },
  );
});

it("nothing but the demo reads its data", () => {
  const readers = imports.filter(({ to }) => to === "data/demo.ts").map(({ from }) => from);
  expect(readers).toEqual(["src/cli/demo/record.ts"]);
});

describe("the program", () => {
  let program: Program;
  let places = { own: "", temporary: "" };
  const screens: Screen[] = [];
  beforeAll(async () => {
    program = await builtProgram();
  }, 180_000);
  afterAll(() => program?.remove());
  afterEach(() => {
    for (const screen of screens.splice(0)) screen.pty.kill("SIGKILL");
  });

  let rooms = 0;
  /** An own record with one timer, and a folder for temporary files that is looked at. */
  async function room() {
    rooms += 1;
    const own = `${program.home}-own-${rooms}`;
    const temporary = `${program.home}-tmp-${rooms}`;
    mkdirSync(temporary);
    places = { own, temporary };
    const env = { BOWLSIDE_HOME: own, TMPDIR: temporary };
    await program.run(["set a timer for 12 min"], { env });
    const before = readFileSync(join(own, "record.json"), "utf8");
    return { env, untouched: () => expect(readFileSync(join(own, "record.json"), "utf8")).toBe(before) };
  }
  const left = () => readdirSync(places.temporary);

  it("answers a question from the invented record and leaves nothing behind", async () => {
    const { env, untouched } = await room();
    const ran = await program.run(["--demo", "which batch was my best"], { env });
    expect([ran.status, ran.stderr]).toEqual([0, ""]);
    expect(ran.stdout).toMatch(/^10 out of 10\./);
    expect((await program.run(["--demo", "note: a batch of my own"], { env })).status).toBe(0);
    untouched();
    expect(left()).toEqual([]);
  });

  it("answers lines, which see each other's changes", async () => {
    const { env, untouched } = await room();
    const input = "forget the recipe snowy shells\nwhat recipes do I have\n";
    const { stdout, status } = await program.run(["--demo", "--json"], { env, input });
    const [, list] = stdout.trim().split("\n");
    expect(status).toBe(0);
    expect(list).toContain("evening ganache");
    expect(list).not.toContain("snowy shells");
    untouched();
    expect(left()).toEqual([]);
  });

  it("makes no home for who has none", async () => {
    const home = join(program.home, "never");
    await program.run(["--demo", "set a timer for 12 min"], { env: { BOWLSIDE_HOME: home } });
    expect(existsSync(home)).toBe(false);
  });

  async function chat() {
    const { env, untouched } = await room();
    const screen = openScreen(program.file, 80, 24, env, ["--demo"]);
    screens.push(screen);
    await screen.sees("A demo");
    await screen.sees("butter");
    expect(left()).toHaveLength(1);
    return { screen, untouched };
  }

  it("opens the chat with the bake under way, says that it is a demo, and is gone after it", async () => {
    const { screen, untouched } = await chat();
    screen.type("which batch was my best\r");
    await screen.sees("salted caramel");
    expect(screen.lines().join("\n")).not.toContain("Your record");
    screen.type("bye\r");
    expect(await screen.ended()).toBe(0);
    expect(screen.lines().at(-1)).toBe("The demo's record is gone, and its 2 timers with it.");
    untouched();
    expect(left()).toEqual([]);
  });

  it.each(["SIGTERM", "SIGHUP", "SIGINT"])("is gone after %s too", async (signal) => {
    const { screen, untouched } = await chat();
    screen.pty.kill(signal);
    await screen.ended();
    untouched();
    expect(left()).toEqual([]);
  });

  it("is gone when the terminal's window is closed", async () => {
    const { screen, untouched } = await chat();
    screen.type("which batch was my best\r");
    await screen.sees("salted caramel");
    // closes the terminal under it, as a window does: writing to it fails from then on
    (screen.pty as unknown as { destroy(): void }).destroy();
    await expect.poll(left, { timeout: 5000 }).toEqual([]);
    untouched();
  });

  it("is in a file of its own, which a question without it never loads", async () => {
    const lines = demo.notes.map(({ text }) => text);
    const folder = join(program.file, "..");
    const shipped = (name: string) => readFileSync(join(folder, name), "utf8");
    const parts = readdirSync(folder).filter((name) => /\.(?:cjs|pack)$/.test(name));
    for (const text of lines) {
      expect(shipped("demo.mjs")).toContain(text);
      for (const part of parts) expect(shipped(part), part).not.toContain(text);
    }
  });
});
