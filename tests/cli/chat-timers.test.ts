import { describe, expect, it } from "vitest";
import { dueTimers, ringText, timerLines } from "../../src/cli/chat/countdown.ts";
import { clockOf, countdown, minutes } from "../../src/cli/chat/moments.ts";
import { ascii, drawn, signsFor } from "../../src/cli/chat/signs.ts";
import { width } from "../../src/cli/chat/text.ts";
import { watchTimers } from "../../src/cli/chat/watch.ts";
import type { World } from "../../src/tools/contract/index.ts";
import type { Timer } from "../../src/tools/contract/record.ts";

const min = 60_000;
const timer = (
  id: number,
  label: string,
  set_ms: number,
  due_ms: number,
  state: Timer["state"] = "running",
): Timer => ({ id, label, set_ms, due_ms, state });
const look = { columns: 40, signs: drawn, most: 4, still: false };

describe("running timers", () => {
  const three = [
    timer(1, "ganache", 0, 90 * min),
    timer(2, "shells", 0, 20 * min),
    timer(3, "rest", 0, 40 * min),
  ];

  it("come soonest first, with time left and a bar that fills", () => {
    expect(timerLines(three, 10 * min, look)).toEqual([
      "  10:00  ■■■■■·····  shells",
      "  30:00  ■■········  rest",
      "1:20:00  ■·········  ganache",
    ]);
  });

  it("take a few lines at most", () => {
    expect(timerLines(three, 0, { ...look, most: 2 })).toEqual([
      "20:00  ··········  shells",
      "       and 2 more",
    ]);
    expect(timerLines(three, 0, { ...look, most: 3 })).toHaveLength(3);
    expect(timerLines(three, 0, { ...look, most: 0 })).toEqual([]);
    expect(timerLines([], 0, look)).toEqual([]);
  });

  it("stay under 40 cells, whatever the label", () => {
    const long = timer(1, "shells of the raspberry batch, tray 2", 0, 30 * 60 * min);
    for (const signs of [drawn, ascii])
      for (const line of timerLines([long], 0, { ...look, signs })) {
        expect(width(line)).toBeLessThan(40);
        expect(line).toMatch(/^30:00:00 .* shells.*tray 2$/);
      }
  });

  it("name a timer in full where there is room for it", () => {
    const named = timer(1, "first tray of the pistachio shells", 0, 20 * min);
    // 5 + 2 + 10 + 2 cells before the name, 34 for it, and one free
    expect(timerLines([named], 0, { ...look, columns: 54 })[0]).toContain(
      "first tray of the pistachio shells",
    );
    expect(timerLines([named], 0, { ...look, columns: 53 })[0]).toContain(drawn.gap);
  });

  it("stand still for a screen reader", () => {
    const [at1, at2] = [1, 5].map((now) => timerLines(three, now * min, { ...look, still: true }));
    expect(at1).toEqual(at2);
    expect(at1?.[0]).toBe(`due ${clockOf(20 * min)}  shells`);
  });

  it("never show a full bar or a negative time before they ring, even with odd times", () => {
    expect(timerLines([timer(1, "a", 0, min)], min - 1, look)).toEqual(["0:01  ■■■■■■■■■·  a"]);
    expect(timerLines([timer(1, "a", min, min)], 2 * min, look)).toEqual(["0:00  ■■■■■■■■■■  a"]);
    expect(timerLines([timer(1, "a", 5 * min, 6 * min)], 0, look)).toEqual(["6:00  ··········  a"]);
  });
});

describe("a timer that is due", () => {
  it("is running and past its time, the earliest first", () => {
    const all = [
      timer(1, "b", 0, 20),
      timer(2, "a", 0, 10),
      timer(3, "later", 0, 99),
      timer(4, "off", 0, 5, "stopped"),
      timer(5, "old", 0, 5, "rung"),
    ];
    expect(dueTimers(all, 20).map((each) => each.label)).toEqual(["a", "b"]);
  });

  it("says how late it is, and that nobody could hear it", () => {
    const shells = timer(1, "shells", 0, 20 * min);
    expect(ringText(shells, 20 * min + 900, 0)).toBe("Ring: shells is done");
    expect(ringText(shells, 23 * min, 0)).toBe("Ring: shells is done; came due 3 min ago");
    expect(ringText(shells, 32 * min, 31 * min)).toBe(
      "Ring: shells is done; came due 12 min ago, while the chat was closed",
    );
  });
});

describe("lengths of time", () => {
  it.each([
    [0.5, "30 s"],
    [12, "12 min"],
    [12.7, "12 min"],
    [60, "1 h"],
    [125, "2 h 5 min"],
    [3 * 24 * 60, "3 days"],
  ])("%d min", (count, text) => expect(minutes(count)).toBe(text));

  it.each([
    [0, "0:00"],
    [1, "0:01"],
    [61_000, "1:01"],
    [10 * min, "10:00"],
    [61 * min, "1:01:00"],
    [26 * 60 * min, "26:00:00"],
  ])("%d ms left", (ms, text) => expect(countdown(ms)).toBe(text));
});

describe("signs", () => {
  it.each([
    [{}, drawn],
    [{ LANG: "en_US.UTF-8" }, drawn],
    [{ LANG: "C.utf8" }, drawn],
    [{ LANG: "en_US.UTF-8", LC_ALL: "C" }, ascii],
    [{ LANG: "en_US.ISO-8859-1" }, ascii],
    [{ LANG: "en_US.UTF-8", TERM: "linux" }, ascii],
  ])("for %o", (env, signs) => expect(signsFor(env)).toBe(signs));
});

/** The watch with a clock and a scheduler that only move when told. */
function watched(timers: Timer[], now_ms = 0) {
  const state = { timers, now_ms, fail: undefined as Error | undefined, elsewhere: false, unwritable: false };
  const heard: string[] = [];
  const pending = new Map<() => void, number>();
  let shown: string[] = [];
  const watch = watchTimers({
    async world() {
      if (state.fail) throw state.fail;
      return { timers: [...state.timers] } as World;
    },
    now_ms: () => state.now_ms,
    async ring(ids) {
      heard.push(`ring ${ids.join(" ")}`);
      const own = state.elsewhere ? [] : ids;
      state.timers = state.timers.map((each) =>
        ids.includes(each.id) ? { ...each, state: "rung" as const } : each,
      );
      if (state.unwritable) throw new Error("read only");
      return own;
    },
    show: (running) => {
      shown = running.map((each) => each.label);
    },
    announce: (due) => heard.push(`bell ${due.map((each) => each.label).join(" ")}`),
    trouble: (error) => heard.push(String(error)),
    later(run, ms) {
      pending.set(run, ms);
      return () => pending.delete(run);
    },
  });
  /** Lets the one planned look happen, the clock moved on by its pause. */
  const pass = async () => {
    const [[run, ms] = [() => {}, 0]] = pending;
    pending.delete(run);
    state.now_ms += ms;
    run();
    await watch.look();
  };
  return { watch, state, heard, pending, pass, shown: () => shown };
}

describe("watching", () => {
  it("looks on once a second while nothing runs, for what other windows set", async () => {
    const { watch, pending, heard, shown } = watched([
      timer(1, "old", 0, 5, "rung"),
      timer(2, "off", 0, 5, "stopped"),
    ]);
    await watch.look();
    expect([[...pending.values()], heard, shown()]).toEqual([[1000], [], []]);
  });

  it("looks about once a second while one runs, and rings once when it is due", async () => {
    const { watch, pending, heard, pass, shown, state } = watched([timer(1, "shells", 0, 2500)]);
    await watch.look();
    expect(shown()).toEqual(["shells"]);
    const pauses: number[] = [];
    while (heard.length === 0) {
      expect(pending.size).toBe(1);
      pauses.push(...pending.values());
      await pass();
    }
    expect(pauses.every((ms) => ms >= 200 && ms <= 1200)).toBe(true);
    expect(state.now_ms).toBe(2500);
    expect(heard).toEqual(["ring 1", "bell shells"]);
    expect(shown()).toEqual([]);
  });

  it("rings at the start for what came due while it was closed, with one bell for all", async () => {
    const { watch, heard, pending } = watched([timer(1, "b", 0, 20), timer(2, "a", 0, 10)], 1000);
    await watch.look();
    expect(heard).toEqual(["ring 2 1", "bell a b"]);
    expect(pending.size).toBe(1);
  });

  it("doesn't ring twice when the record wasn't marked, and rings again when the timer was set anew", async () => {
    const around = watched([timer(1, "shells", 0, 10)], 10);
    await around.watch.look();
    around.state.timers = [timer(1, "shells", 0, 10)];
    await around.watch.look();
    expect(around.heard).toEqual(["ring 1", "bell shells"]);
    around.state.timers = [timer(1, "shells", 0, 5000)];
    around.state.now_ms = 5000;
    await around.watch.look();
    expect(around.heard).toEqual(["ring 1", "bell shells", "ring 1", "bell shells"]);
  });

  it("leaves to another window what that one has rung", async () => {
    const { watch, heard, state } = watched([timer(1, "shells", 0, 10)], 10);
    state.elsewhere = true;
    await watch.look();
    expect(heard).toEqual(["ring 1"]);
  });

  it("rings all the same when the record can't be written", async () => {
    const { watch, heard, state } = watched([timer(1, "shells", 0, 10)], 10);
    state.unwritable = true;
    await watch.look();
    expect(heard).toEqual(["ring 1", "bell shells", "Error: read only"]);
  });

  it("names trouble once and looks again after the next answer", async () => {
    const { watch, state, heard, pending, shown } = watched([timer(1, "shells", 0, 9000)]);
    state.fail = new Error("no record");
    await watch.look();
    expect([heard, pending.size]).toEqual([["Error: no record"], 0]);
    state.fail = undefined;
    await watch.look();
    expect([shown(), pending.size]).toEqual([["shells"], 1]);
  });

  it("doesn't rush when the clock stands", async () => {
    for (const left of [1, 50, 1000, 1199, 1201, 5003]) {
      const { watch, pending } = watched([timer(1, "a", 0, left)]);
      await watch.look();
      for (const ms of pending.values()) expect(ms).toBeGreaterThanOrEqual(200);
    }
  });

  it("stops", async () => {
    const { watch, pending, heard, state } = watched([timer(1, "shells", 0, 10)]);
    await watch.look();
    await watch.stop();
    state.now_ms = 20;
    await watch.look();
    expect([pending.size, heard]).toEqual([0, []]);
  });
});
