/** The shipped program's chat in a real terminal: asked, timed, left, opened again; what was kept is there. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";
import { openScreen, type Screen } from "./chat-pty.ts";

let program: Program;
let home: string;
const open: Screen[] = [];

beforeAll(async () => {
  program = await builtProgram();
  home = await mkdtemp(join(tmpdir(), "built-chat-"));
}, 180_000);
afterAll(async () => {
  for (const screen of open) screen.pty.kill("SIGKILL");
  await rm(home, { recursive: true, force: true });
  await program?.remove();
});

async function chat(): Promise<Screen> {
  const screen = openScreen(program.file, 80, 24, { BOWLSIDE_HOME: home });
  open.push(screen);
  await screen.sees("to leave");
  return screen;
}

it("answers, follows up, rings, and keeps timers and notes for the next time", async () => {
  const first = await chat();
  first.type("I have 230 g buttercream, how much flavor?\r");
  await first.sees("6.9 to 11.5 g flavor");
  first.type("and for 300?\r");
  await first.sees("9 to 15 g flavor");
  first.type("timer 1 second for the kettle\r");
  await first.sees(/Ring|rang/i);
  first.type("set a 40 min timer for the shells\r");
  await first.sees("40 min on shells");
  first.type("note: lychee batch, lovely feet, 9 out of 10\r");
  await first.sees("Noted");
  first.type("bye\r");
  expect(await first.ended()).toBe(0);

  const second = await chat();
  await second.sees("shells");
  second.type("which batch was my best\r");
  await second.sees("lychee");
  second.type("how long left on the shells\r");
  await second.sees(/(?:39|40) min/);
  second.type("\u0003");
  expect(await second.ended()).toBe(0);
});
