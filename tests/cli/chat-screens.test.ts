/**
 * Every screen of the chat in a real pseudo-terminal at four widths, with color and without, kept as text that a person
 * can read. Before each line stands how its letters look; without color no more than "bold" may.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bundleChat, openScreen, type Screen } from "./chat-pty.ts";

let bundle: Awaited<ReturnType<typeof bundleChat>>;
const open: Screen[] = [];
const now_ms = new Date("2026-03-14T09:30:00").getTime();
const min = 60_000;
const timer = (id: number, label: string, from: number, to: number) => ({
  id,
  label,
  set_ms: now_ms + from * min,
  due_ms: now_ms + to * min,
  state: "running",
});
const timers = [
  timer(1, "ganache in the fridge", -10, 90),
  timer(2, "shells, tray 1", -5, 10),
  timer(3, "rest", 0, 30),
];

beforeAll(async () => {
  bundle = await bundleChat();
});
afterAll(async () => {
  for (const screen of open) screen.pty.kill("SIGKILL");
  await bundle.remove();
});

const clear = "\u0015";
const files = (columns: number, look: string, name: string) => `screens/${name}-${columns}${look}.txt`;

describe.each([40, 60, 80, 120])("at %i columns", (columns) => {
  it.each([
    ["in color", "", {}],
    ["without color", "-plain", { NO_COLOR: "1" }],
    ["in ASCII", "-ascii", { NO_COLOR: "1", LANG: "C" }],
  ])("%s", async (_name, look, env: Record<string, string>) => {
    const screen = openScreen(bundle.file, columns, 24, {
      ...env,
      FIXTURE_NOW: String(now_ms),
      FIXTURE_TIMERS: JSON.stringify(timers),
      TZ: process.env.TZ ?? "",
    });
    open.push(screen);
    const kept = (name: string) =>
      expect(`${screen.marked().join("\n")}\n`).toMatchFileSnapshot(files(columns, look, name));

    await screen.sees(/fridge\n\S\s*\n"help" for/);
    await kept("opening");

    screen.type("batter f");
    await screen.sees("batter for 24 macarons");
    await kept("suggestion");
    screen.type(clear);

    screen.type("big\r");
    await screen.sees("any key goes back");
    await kept("big");
    screen.type("x");
    await screen.sees(/\n\S\s*\n"help" for/);
    // the key that goes back is no letter of a question
    expect(screen.lines().join("\n")).not.toMatch(/^\S x/m);

    const asked = [
      "I have 230 g buttercream, how much flavor?",
      "check",
      "composition",
      "trouble",
      "ratings",
    ];
    const more = ["compare", "day", "flavor", "why?", "help", "copy", "", "break"];
    for (const line of [...asked, ...more]) screen.type(`${line}\r`);
    await screen.sees("That didn't work");
    screen.type("bye\r");
    expect(await screen.ended()).toBe(0);
    await kept("answers");
  });
});

it("the large timers follow the window, and leave nothing behind on the first screen", async () => {
  const screen = openScreen(bundle.file, 40, 20, {
    FIXTURE_TIMERS: JSON.stringify(timers),
    FIXTURE_NOW: String(now_ms),
  });
  open.push(screen);
  await screen.sees(/fridge\n\S\s*\n"help" for/);
  screen.type("check\rbig\r");
  await screen.sees("any key goes back");
  screen.resize(60, 24);
  await screen.sees(/(?:■|·){59}\n/);
  screen.type("z");
  await screen.sees(/6 %, over[\s\S]*fridge\n\S\s*\n"help" for/);
  expect(screen.lines().join("\n")).not.toContain("█");
});

it("where there is no speech program, it says so", async () => {
  const screen = openScreen(bundle.file, 60, 24, { PATH: "/nowhere" });
  open.push(screen);
  screen.type("speak\r");
  await screen.sees("There is no speech program here");
});

it("without color nothing but weight is used", async () => {
  const screen = openScreen(bundle.file, 80, 24, { NO_COLOR: "1", FIXTURE_TIMERS: JSON.stringify(timers) });
  open.push(screen);
  screen.type("check\rbreak\r");
  await screen.sees("That didn't work");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
  const styles = [...screen.raw().matchAll(/\u001b\[([\d;]*)m/g)].map((match) => match[1]);
  expect(new Set(styles)).toEqual(new Set(["1", "22"]));
});
