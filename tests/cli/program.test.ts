/** The program as it is shipped: exit codes, what stands on standard output and what doesn't, lines, homes, the clock. */
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

const question = "I have 230 g buttercream, how much flavor?";
/** Turns of an input, as --json tells them; the record is a fresh one unless a home is named. */
let homes = 0;
async function turns(input: string | Buffer, env: Record<string, string> = {}) {
  homes += 1;
  const { stdout, stderr, status } = await program.run(["--json"], {
    input,
    env: { BOWLSIDE_HOME: `${program.home}-${homes}`, ...env },
  });
  expect([status, stderr]).toEqual([0, ""]);
  return stdout
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line));
}

describe("one question", () => {
  it.each([
    ["answered", question, 0],
    ["a detail is asked for", "how much flavor for my buttercream", 2],
    ["not what it is for", "who won the football last night", 3],
    ["no rule for it", "how much cocoa powder for 300 g ganache", 3],
    ["it can't be", "flavor for -50 g buttercream", 3],
    ["nothing to undo", "undo", 3],
    ["an empty list is an answer", "what timers are running", 0],
  ])("%s: %s ends with %i", async (_, said, status) => {
    const ran = await program.run([said], { env: { BOWLSIDE_HOME: `${program.home}-empty` } });
    expect([ran.status, ran.stderr]).toEqual([status, ""]);
    expect(ran.stdout.trim()).not.toBe("");
  });

  it.each(["???", "...", "🍪", "\u0301", "!"])("%j is answered too: not understood", async (said) => {
    const ran = await program.run(["--json", said]);
    expect(ran.status).toBe(3);
    expect(JSON.parse(ran.stdout).answers[0].status).toBe("declined");
  });

  it("needs no quotes", async () => {
    expect((await program.run(question.split(" "))).stdout).toBe((await program.run([question])).stdout);
  });

  it("says the number first, and nothing but the answer", async () => {
    const { stdout } = await program.run([question]);
    expect(stdout.split("\n")[0]).toBe("6.9 to 11.5 g flavor");
    expect(stdout.endsWith("\n")).toBe(true);
    expect(stdout).not.toContain("\u001b");
  });

  it("is one JSON object on one line with --json", async () => {
    const { stdout } = await program.run(["--json", question]);
    expect(stdout.trimEnd().split("\n")).toHaveLength(1);
    expect(JSON.parse(stdout)).toMatchObject({
      asked: question,
      answers: [
        { tool: "dose", status: "answered", figures: [{ name: "flavor", low: 6.9, high: 11.5, unit: "g" }] },
      ],
    });
  });

  it("ends by the state of the worst answer, where a turn has two", async () => {
    expect((await program.run(["350 f in c and how much flavor for my buttercream"])).status).toBe(2);
  });

  it("waits for no standard input", async () => {
    const child = spawn(process.execPath, [program.file, question], {
      stdio: ["pipe", "ignore", "ignore"],
      env: { BOWLSIDE_HOME: program.home },
    });
    expect(await new Promise((resolve) => child.on("close", resolve))).toBe(0);
    child.stdin.end();
  });
});

describe("what broke ends with 1, on standard error", () => {
  it.each([
    ["an option that isn't there", ["--nope"], {}, /--nope/],
    ["a home that isn't named", ["--home"], {}, /home/],
    ["a clock that isn't one", ["help"], { BOWLSIDE_NOW: "half past nine" }, /half past nine/],
  ] as const)("%s", async (_, args, env, message) => {
    const ran = await program.run(args, { env });
    expect(ran.status).toBe(1);
    expect(ran.stdout).toBe("");
    expect(ran.stderr).toMatch(message);
    expect(ran.stderr).not.toMatch(/ {4}at /);
  });

  it("a home that can't be", async () => {
    const file = join(program.home, "..", "a-file");
    writeFileSync(file, "no folder");
    const ran = await program.run(["--home", file, "set a timer for 12 min"]);
    expect(ran.status === 1 || ran.status === 3).toBe(true);
    expect(ran.stdout + ran.stderr).not.toMatch(/ {4}at /);
    expect(readFileSync(file, "utf8")).toBe("no folder");
  });
});

describe("help and version", () => {
  it.each(["--help", "-h"])("%s", async (flag) => {
    const ran = await program.run([flag]);
    expect([ran.status, ran.stderr]).toEqual([0, ""]);
    for (const part of ["--json", "--home", "BOWLSIDE_HOME"]) expect(ran.stdout).toContain(part);
  });

  it.each(["--version", "-v"])("%s", async (flag) => {
    const ran = await program.run([flag]);
    expect(ran.status).toBe(0);
    expect(ran.stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});

describe("lines on standard input", () => {
  const talk = [question, "and for 300?", "who won the football last night"];

  it("are one conversation, an object each, and it ends with 0 whatever the answers", async () => {
    const all = await turns(`${talk.join("\n")}\n`);
    expect(all.map(({ asked }) => asked)).toEqual(talk);
    expect(all.map(({ answers }) => answers[0].status)).toEqual(["answered", "answered", "declined"]);
    expect(all[1].answers[0].figures[0]).toMatchObject({ low: 9, high: 15, unit: "g" });
  });

  it("end in LF or CRLF alike, and the last needs no end", async () => {
    const expected = await turns(`${talk.join("\n")}\n`);
    expect(await turns(`${talk.join("\r\n")}\r\n`)).toEqual(expected);
    expect(await turns(talk.join("\n"))).toEqual(expected);
  });

  it("don't end at a lone carriage return", async () => {
    const all = await turns("I have 230 g buttercream,\rhow much flavor?\n");
    expect(all).toHaveLength(1);
    expect(all[0].asked).toBe(question);
  });

  it("start a new conversation at a blank line, which has no answer; the record stays", async () => {
    const all = await turns(`set a timer for 12 min\n${question}\n\nand for 300?\nwhat timers are running\n`);
    expect(all).toHaveLength(4);
    expect(all[2].answers[0].status).not.toBe("answered");
    expect(all[3].answers[0].items).toHaveLength(1);
  });

  it("that are blank or spaces only have no answers", async () => {
    expect(await turns("\n\n   \n\t\n")).toEqual([]);
    expect(await turns("")).toEqual([]);
  });

  it("are told as plain text without --json, a blank line between turns", async () => {
    const { stdout, status } = await program.run([], { input: `${question}\nand for 300?\n` });
    expect(status).toBe(0);
    expect(stdout).toMatch(/^6\.9 to 11\.5 g flavor\n/);
    expect(stdout).toMatch(/\n\n9 to 15 g flavor\n/);
  });

  it("have several answers in one object when they ask several things", async () => {
    const [turn, ...more] = await turns("9 oz in grams and 350 f in c\n");
    expect(more).toEqual([]);
    expect(turn.answers.map(({ tool }: { tool: string }) => tool)).toEqual(["convert", "convert"]);
  });

  it("are cleaned of what controls a terminal, and bytes that are no text break nothing", async () => {
    const [first, second] = await turns(
      Buffer.concat([
        Buffer.from("\u001b[31m230 g\u0007 buttercream\u001b[0m, how much flavor?\n"),
        Buffer.from([0xff, 0xfe, 0x80, 0x0a]),
      ]),
    );
    expect(first.asked).toBe("230 g buttercream, how much flavor?");
    expect(first.answers[0].status).toBe("answered");
    expect(second.answers[0].status).toBe("declined");
  });

  it("may be very long", async () => {
    const [turn] = await turns(`${"very ".repeat(2000)}much flavor for 230 g buttercream\n`);
    expect(turn.answers).toHaveLength(1);
  });
});

describe("homes", () => {
  const saves = "set a timer for 12 min";

  it("BOWLSIDE_HOME names one, --home goes before it", async () => {
    const [named, flagged] = [join(program.home, "named"), join(program.home, "flagged")];
    await program.run([saves], { env: { BOWLSIDE_HOME: named } });
    expect(existsSync(join(named, "record.json"))).toBe(true);
    await program.run([saves, "--home", flagged], { env: { BOWLSIDE_HOME: join(program.home, "other") } });
    expect(existsSync(join(flagged, "record.json"))).toBe(true);
    expect(existsSync(join(program.home, "other"))).toBe(false);
  });

  it("what is saved is there the next time", async () => {
    const env = { BOWLSIDE_HOME: join(program.home, "kept") };
    await program.run([saves], { env });
    const { stdout } = await program.run(["--json", "what timers are running"], { env });
    expect(JSON.parse(stdout).answers[0].items).toMatchObject([{ due: "2026-03-14T09:42:00" }]);
  });

  it("a question that saves nothing makes no home", async () => {
    const env = { BOWLSIDE_HOME: join(program.home, "none") };
    await program.run([question], { env });
    expect(existsSync(env.BOWLSIDE_HOME)).toBe(false);
  });

  it("a damaged record is told of on standard error, kept, and the answer comes all the same", async () => {
    const home = join(program.home, "damaged");
    mkdirSync(home, { recursive: true });
    writeFileSync(join(home, "record.json"), '{"version": 1, "timers": [');
    const ran = await program.run([question], { env: { BOWLSIDE_HOME: home } });
    expect(ran.status).toBe(0);
    expect(ran.stdout).toMatch(/^6\.9 to 11\.5 g flavor/);
    expect(ran.stderr).not.toMatch(/ {4}at /);
  });
});

describe("the clock", () => {
  it("stands where BOWLSIDE_NOW says", async () => {
    const [at] = await turns("set a timer for 45 min\n", { BOWLSIDE_NOW: "2026-12-31T23:30:00" });
    expect(JSON.stringify(at)).toContain("2027-01-01T00:15:00");
  });

  it("means local time, in any zone", async () => {
    for (const TZ of ["UTC", "America/Los_Angeles", "Asia/Tokyo"]) {
      const [, list] = await turns("set a timer for 12 min\nwhat timers are running\n", { TZ });
      expect(list.answers[0].items[0].due).toBe("2026-03-14T09:42:00");
    }
  });
});

it("a reader that goes away is no fault", async () => {
  const child = spawn(process.execPath, [program.file, "--json"], { env: { BOWLSIDE_HOME: program.home } });
  let problems = "";
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    problems += text;
  });
  child.stdin.on("error", () => {});
  child.stdout.destroy();
  child.stdin.end(`${question}\n`.repeat(300));
  const status = await new Promise((resolve) => child.on("close", resolve));
  expect([status, problems]).toEqual([0, ""]);
});
