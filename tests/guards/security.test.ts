/**
 * What could be tried against a baker's machine, through the program as it is shipped.
 *
 * | tried                                                        | what comes of it                              |
 * | ------------------------------------------------------------ | --------------------------------------------- |
 * | escapes and controls in a question, a note, a timer's name   | never reach the screen                        |
 * | the same in a record edited by hand                          | never reach the screen                        |
 * | the same in the name of the record's folder                  | shown as "?"                                  |
 * | functions, prototypes and files in a sum                     | no number, nothing done                       |
 * | a file name in the record that leads out of its folder       | not followed; see tests/store/parts-damage    |
 * | a link in the place of what is written beside the record     | not followed, its target untouched            |
 * | another user reading the record                              | files 0600, folders 0700                      |
 * | the network                                                  | a socket, a look-up, a fetch: none is made    |
 */
import * as fs from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

// biome-ignore lint/suspicious/noControlCharactersInRegex: looking for them is the point
const controls = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;
const nasty = "\u001b]0;owned\u0007\u001b[2J\u009b31m\u202eabc";
const record = () => join(program.home, "record.json");
const said = async (args: string[], more = {}) => {
  const { stdout, stderr, status } = await program.run(args, more);
  return { text: stdout + stderr, status };
};

describe("escapes never reach the screen", () => {
  it.each([
    `note: pistachio ${nasty}, 2 hollow`,
    `set a timer for 20 min called ${nasty}`,
    `I have 230 g ${nasty} buttercream, how much flavor?`,
    nasty,
  ])("from %j", async (line) => {
    expect((await said([line])).text).not.toMatch(controls);
    expect(
      (await said([], { input: `${line}\nwhy?\nhow did you read that?\nmy last note\n` })).text,
    ).not.toMatch(controls);
  });

  it("from a record that was edited by hand", async () => {
    await said(["note: lemon batch, 2 hollow"]);
    const text = fs.readFileSync(record(), "utf8");
    fs.writeFileSync(record(), text.replaceAll("lemon batch", JSON.stringify(nasty).slice(1, -1)));
    for (const line of ["my last note", "undo", "show my notes", "how long left"]) {
      expect((await said([line])).text).not.toMatch(controls);
      expect((await said(["--json", line])).text).not.toMatch(controls);
    }
  });

  it("from the name of a folder", async () => {
    const home = join(program.home, `x\u001b[31m`);
    fs.mkdirSync(home, { recursive: true });
    fs.writeFileSync(join(home, "record.json"), "damaged");
    expect((await said(["--home", home, "my last note"])).text).not.toMatch(controls);
    fs.writeFileSync(join(home, "file"), "");
    expect((await said(["--home", join(home, "file"), "my last note"])).text).not.toMatch(controls);
  });
});

describe("a sum is numbers and nothing else", () => {
  it.each([
    "constructor.constructor('return process')()",
    "what is import('fs')",
    "what is 2 + __proto__.x",
    "what is cos.constructor",
    "what is eval('1')",
    "what is createUnit('x')",
    "what is f(x) = x; f(2)",
  ])("%s", async (line) => {
    const { text } = await said(["--json", line]);
    const { answers } = JSON.parse(text.split("\n")[0] ?? "");
    for (const answer of answers) expect(answer.figures ?? []).toEqual([]);
    expect(text).not.toMatch(/\[object|native code|function/);
  });
});

it.skipIf(process.platform === "win32")("all that is written is the owner's alone", async () => {
  await said(["note: one"]);
  await said(["note: two"], { env: { BOWLSIDE_NOW: "2026-03-15T09:30:00" } });
  const all = fs
    .readdirSync(program.home, { recursive: true, encoding: "utf8" })
    .map((name) => join(program.home, name));
  const open = all.filter((path) => !path.includes("\u001b") && fs.statSync(path).mode & 0o077);
  expect(open.map((path) => path.slice(program.home.length))).toEqual([]);
  expect(all.some((path) => path.includes("record.copies/"))).toBe(true);
});

it("a link where a file of the record would be made is not followed", async () => {
  const target = join(program.home, "target");
  fs.writeFileSync(target, "mine");
  const home = join(program.home, "linked");
  fs.mkdirSync(home);
  fs.symlinkSync(target, join(home, "record.json.lock"));
  await said(["--home", home, "note: one"], {});
  expect(fs.readFileSync(target, "utf8")).toBe("mine");
}, 30_000);

it("the network is never touched", async () => {
  const spy = join(program.home, "spy.cjs");
  fs.writeFileSync(
    spy,
    `const log = (what) => require("node:fs").appendFileSync(${JSON.stringify(`${spy}.log`)}, what + "\\n");
const stop = (on, name, what) => { on[name] = () => { log(what); throw new Error(what); }; };
const net = require("node:net"), dns = require("node:dns"), dgram = require("node:dgram");
stop(net.Socket.prototype, "connect", "connect"); stop(net.Server.prototype, "listen", "listen");
stop(dns, "lookup", "lookup"); stop(dgram, "createSocket", "datagram"); stop(globalThis, "fetch", "fetch");
if (process.env.SPY_TEST) try { fetch("x"); } catch {}`,
  );
  const env = { NODE_OPTIONS: `--require ${spy}` };
  await said(["convert 1 cup sugar to g"], { env: { ...env, SPY_TEST: "1" } });
  expect(fs.readFileSync(`${spy}.log`, "utf8")).toBe("fetch\n");
  fs.rmSync(`${spy}.log`);
  const input =
    "230 g buttercream how much flavor\nnote: x, 2 hollow\nimport notes from nothing.csv\n24 macarons for tomorrow 3pm when do i start\nsave it as a calendar file\nexport my notes as csv\nmy last note\nundo\nhelp\n";
  await said([], { env, input });
  await said(["--demo", "which batch was my best"], { env });
  expect(fs.existsSync(`${spy}.log`)).toBe(false);
});
