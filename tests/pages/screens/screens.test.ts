/**
 * The README's screens: the built program in a real terminal, with the demo's record and a clock that stands. They are
 * current, or "npm run screens" makes them anew.
 */
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { openScreen } from "../../cli/chat-pty.ts";
import { builtProgram, type Program, root } from "../../support/built.ts";
import { standing } from "../../support/world.ts";
import { svgOf } from "./svg.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

interface Picture {
  name: string;
  title: string;
  columns: number;
  rows: number;
  /** Typed into the chat, each with what has to be seen before the next. */
  talk?: readonly (readonly [say: string, sees: string])[];
  /** Or one question on the command line. */
  question?: string;
}

const pictures: readonly Picture[] = [
  {
    name: "chat",
    title: "The chat: a dose from a bottle's own directions, and why; below it two timers run",
    columns: 88,
    rows: 40,
    talk: [
      ["how much pistachio flavor for 200 g ganache", "6 to 8 g"],
      ["why?", "because"],
    ],
  },
  {
    name: "day",
    title: "The day in progress as a chart over time: what goes on now and what comes next",
    columns: 88,
    rows: 40,
    question: "what's next",
  },
  {
    name: "narrow",
    title: "The same program in a narrow window",
    columns: 46,
    rows: 40,
    talk: [["which batch was my best", "salted caramel"]],
  },
];

it.each(pictures)("$name is current: npm run screens makes it anew", async (picture) => {
  const { name, title, columns, rows, talk, question } = picture;
  const env = { BOWLSIDE_NOW: standing, TMPDIR: "/tmp", TZ: "UTC", FORCE_COLOR: "1" };
  const args = ["--demo", ...(question ? [question] : [])];
  const screen = openScreen(program.file, columns, rows, env, args);
  if (talk) {
    await screen.sees("butter");
    for (const [say, sees] of talk) {
      screen.type(`${say}\r`);
      await screen.sees(sees);
      await settled(screen.raw);
    }
  } else await screen.ended();
  // the folder's name is another one each time
  const written = screen.raw().replace(/bowlside-demo-\w{6}/g, "bowlside-demo-aB3dE6");
  screen.pty.kill("SIGTERM");
  const drawn = await svgOf(written, columns, rows, title);
  expect(drawn).not.toContain("didn't understand");
  await expect(drawn).toMatchFileSnapshot(join(root, `data/pages/screens/${name}.svg`));
});

/** Waits until nothing more is written. */
async function settled(raw: () => string): Promise<void> {
  for (let before = -1; before !== raw().length; ) {
    before = raw().length;
    await new Promise((resolve) => setTimeout(resolve, 400));
  }
}
