/** A bake day of fifty turns, typed into a real terminal over a real record; a second is over three minutes. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { bundleChat, openScreen, type Screen } from "./chat-pty.ts";

let bundle: Awaited<ReturnType<typeof bundleChat>>;
let screen: Screen | undefined;
const home = mkdtempSync(join(tmpdir(), "chat-day-"));
beforeAll(async () => {
  bundle = await bundleChat("chat-day-fixture.ts");
}, 60_000);
afterAll(async () => {
  screen?.pty.kill("SIGKILL");
  rmSync(home, { recursive: true, force: true });
  await bundle?.remove();
});

/** What is typed, and what has to be seen for it. Numbers worked by hand from the rules. */
const turns: readonly (readonly [string, string | RegExp])[] = [
  ["hello", "Hello"],
  ["batter for 24 macarons", /batter/],
  ["timer 30 min for the rest", "30 min on rest"],
  ["I have 230 g buttercream, how much flavor?", "6.9 to 11.5 g flavor"], // 3-5 %
  ["and for 300?", "9 to 15 g flavor"],
  ["9 g flavor in 150 g buttercream, too strong?", "6 %, over"],
  ["350 f in c", "176.7 °C"], // (350 - 32) × 5/9
  ["what is 3/4 of 260", "195"],
  ["set a timer for 12 min", "12 min"],
  ["how long left", /left/],
  ["my shells have no feet, why", "check   a fingertip drags"],
  ["help with ganache", "how much cream for piping"],
  ["300 g dark chocolate how much cream for piping", "240 g cream"], // 1.25 : 1
  ["why?", /300/],
  ["note: pistachio, 36 macarons, 150 c 15 min, 6 out of 10", "Noted"],
  ["note: pistachio, 38 macarons, 148 c 16 min, 8 out of 10", "Noted"],
  ["note: pistachio, 40 macarons, 148 c 16 min, 9 out of 10", "Noted"],
  ["ratings of pistachio", /■■■■■■····\s+6/],
  ["compare my last pistachio batch with the one before", /rating\s+9\s+8\s+\+1/],
  ["which batch was my best", "9 out of 10"],
  ["undo", /[Uu]ndo|[Tt]aken back/],
  ["copy", "clipboard"],
  ["thanks", "You're welcome"],
  ["composition of 110 g white chocolate 70 g cream", "░ sugar"],
  ["what can you do", "Here in the chat"],
];

const plain = (text: string) => text.replace(/[^\p{L}\p{N}\s"'%]/gu, "\\$&");

it("is answered turn by turn, and its timers ring", async () => {
  screen = openScreen(bundle.file, 80, 30, {
    FIXTURE_HOME: home,
    FIXTURE_SPEED: "200",
    FIXTURE_NOW: String(new Date("2026-03-14T09:30:00").getTime()),
  });
  await screen.sees("I have 230 g buttercream");
  let asked = 0;
  for (const round of [1, 2])
    for (const [line, seen] of turns) {
      screen.type(`${line}\r`);
      asked += 1;
      // behind the question as it was asked this time, so that no earlier answer is taken for it
      const question = `^∪ ${plain(line.slice(0, 30))}[\\s\\S]*?`;
      const answer = typeof seen === "string" ? plain(seen) : seen.source;
      await screen.sees(new RegExp(`(?:${question}){${round}}${answer}`, "m"));
    }
  expect(screen.lines().join("\n")).not.toContain("That didn't work");
  expect(asked).toBe(50);
  await screen.sees("Ring: rest is done");
  expect(screen.raw()).toContain("\u0007");
  screen.type("bye\r");
  expect(await screen.ended()).toBe(0);
}, 120_000);
