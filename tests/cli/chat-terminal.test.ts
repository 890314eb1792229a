/** The chat under a real pseudo-terminal. Waits for what is on the screen, never for time. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bundleChat, openScreen, type Screen } from "./chat-pty.ts";

let bundle: Awaited<ReturnType<typeof bundleChat>>;
const open: Screen[] = [];

beforeAll(async () => {
  bundle = await bundleChat();
});
afterAll(async () => {
  for (const screen of open) screen.pty.kill("SIGKILL");
  await bundle.remove();
});

async function chat(columns = 80, rows = 24, env: Record<string, string> = {}): Promise<Screen> {
  const screen = openScreen(bundle.file, columns, rows, env);
  open.push(screen);
  await screen.sees("to leave");
  return screen;
}

const question = "I have 230 g buttercream, how much flavor?";
const times = (screen: Screen, what: string) => screen.lines().filter((line) => line.includes(what)).length;

describe("asking", () => {
  it.each([40, 60, 80, 120])("shows the number first at %i columns", async (columns) => {
    const screen = await chat(columns);
    screen.type(question);
    screen.type("\r");
    await screen.sees("6.9 to 11.5 g flavor");
    await screen.sees(/! Caution: The directions on your bottle\s+are the limit\./);
    screen.type("recipe\rtimers\rnotes\rday\rflavor\rwhy?\r");
    await screen.sees("230 × 5 / 100 = 11.5 g");
    screen.type("\u0003");
    expect(await screen.ended()).toBe(0);
    await expect(`${screen.lines().join("\n")}\n`).toMatchFileSnapshot(`chat-screen-${columns}.txt`);
  });

  it("takes text and Enter in one chunk, and lines in a burst, in order", async () => {
    const screen = await chat();
    screen.type("one\rtwo\rthree\r");
    await screen.sees("heard: three");
    expect((await screen.log()).slice(0, 3)).toEqual(["ask one", "ask two", "ask three"]);
  });

  it("takes a paste of several lines; what isn't ended waits", async () => {
    const screen = await chat();
    screen.type("\u001b[200~first line\rsecond\tline\r\nthe rest\u001b[201~");
    await screen.sees("heard: second line");
    await screen.sees("∪ the rest");
    screen.type("!\r");
    await screen.sees("heard: the rest!");
    expect(screen.raw()).toContain("\u001b[?2004h");
  });

  it("edits by what the eye takes for a character", async () => {
    const screen = await chat();
    screen.type("crème 👩‍🍳x\u007f\u007f½");
    await screen.sees("∪ crème ½");
    screen.type("\u001b[1;5D\u001b[1;5D2 \r");
    await screen.sees("heard: 2 crème ½");
  });

  it("takes what was typed before it could be seen", async () => {
    const screen = openScreen(bundle.file, 80, 24);
    open.push(screen);
    screen.type(`${question}\n`);
    await screen.sees("6.9 to 11.5 g flavor");
  });

  it("keeps the questions for the next session", async () => {
    const env = { FIXTURE_HISTORY: `${bundle.folder}/history` };
    const first = await chat(80, 24, env);
    first.type("something worth keeping\rbye\r");
    expect(await first.ended()).toBe(0);
    const second = await chat(80, 24, env);
    second.type("\u001b[A");
    await second.sees("∪ something worth keeping");
  });

  it("stays open when the record can't be read", async () => {
    const screen = await chat();
    screen.type("break\rafter\r");
    await screen.sees("That didn't work: the record can't be read.");
    await screen.sees("heard: after");
  });
});

describe("timers", () => {
  it("count down where they can be seen, ring, and are marked", async () => {
    const screen = await chat();
    screen.type("timer shells 3\rtimer rest 600\r");
    await screen.sees(/0:0[123] {2}[■·]{10} {2}shells\n10:00 {2}·{10} {2}rest/);
    expect(screen.raw()).not.toContain("\u0007");
    await screen.sees("Ring: shells is done");
    expect(screen.raw().split("\u0007")).toHaveLength(2);
    await screen.sees("9:5");
    expect(times(screen, "■  shells")).toBe(0);
    expect(await screen.log()).toContain("ring 1");
    screen.type("\u0003");
    expect(await screen.ended()).toBe(0);
    expect(screen.lines().at(-1)).toBe("1 timer runs on; it rings when the chat is open.");
  });

  it("ring when the chat is opened again, with how long ago that was", async () => {
    const now = Date.now();
    const timers = [
      { id: 1, label: "shells", set_ms: now - 3_600_000, due_ms: now - 12.5 * 60_000, state: "running" },
      { id: 2, label: "ganache", set_ms: now, due_ms: now + 3_600_000, state: "running" },
    ];
    const screen = await chat(60, 24, { FIXTURE_TIMERS: JSON.stringify(timers) });
    await screen.sees("Ring: shells is done; came due 12 min ago, while the chat\n  was closed");
    await screen.sees(/59:\d\d {2}·{10} {2}ganache/);
  });

  it("leave what is being written alone while they count and ring", async () => {
    const screen = await chat();
    screen.type("timer shells 2\r");
    await screen.sees("  shells");
    screen.type("half a quest");
    await screen.sees("Ring: shells is done");
    screen.type("ion\r");
    await screen.sees("heard: half a question");
    expect(times(screen, "∪ half a question")).toBe(1);
  });
});

// A resize reaches the terminal and the program at different moments; rarely a frame falls between the two.
describe("the window", { retry: 2 }, () => {
  it("is made narrow with a question being written: nothing lost, nothing twice", async () => {
    const screen = await chat(120, 30);
    screen.type(`${question}\rtimer shells 600\r`);
    await screen.sees("  shells");
    screen.type("a draft that is quite a bit longer than forty cells");
    await screen.sees("forty cells");
    screen.resize(40, 30);
    await screen.sees(/∪ a draft that is quite a bit longer\s*\n {2}than forty cells\n"help"/);
    expect(times(screen, "·  shells")).toBe(1);
    expect(times(screen, "a draft that")).toBe(1);
    expect(times(screen, "6.9 to 11.5 g flavor")).toBe(1);
    screen.type("\r");
    await screen.sees("heard: a draft that is quite a bit");
  });

  it("is made low: finished lines stay, and the hint comes back", async () => {
    const screen = await chat(60, 30);
    screen.type("one\rtwo\rtimer shells 600\rthree\r");
    await screen.sees("heard: three");
    screen.resize(60, 8);
    await screen.sees(/heard: three\n\n.*shells\n∪\n"help" for examples/);
    for (const each of ["one", "two", "three"]) expect(times(screen, `heard: ${each}`)).toBe(1);
    screen.resize(60, 5);
    await screen.sees(/heard: three\n\n.*shells\n∪\n"help" for examples/);
  });
});

describe("the window at rest", () => {
  it("gets its hint back without a key or a tick", async () => {
    const screen = await chat(60, 30);
    screen.type("one\r");
    await screen.sees("heard: one");
    screen.resize(60, 6);
    await screen.sees(/heard: one\n\n∪\n"help" for examples/);
  });
});

describe("sticky fingers", () => {
  it("an empty Enter asks nothing, and what was said before still holds", async () => {
    const screen = await chat();
    screen.type("one\r");
    await screen.sees("heard: one");
    screen.type("\r\r  \rtwo\r");
    await screen.sees("heard: two");
    expect(await screen.log()).toEqual(["ask one", "ask two"]);
    expect(screen.lines().join("\n")).not.toContain("new conversation");
    screen.type("new conversation\r");
    await screen.sees("A new conversation: what was said before is set aside");
    expect((await screen.log()).at(-1)).toBe("ask");
  });

  it("Ctrl-C takes a begun line away and stays; on the empty line it leaves", async () => {
    const screen = await chat();
    screen.type("half a quest");
    await screen.sees("∪ half a quest");
    screen.type("\u0003");
    await screen.sees(/∪\s*\n"help"/);
    expect(times(screen, "half a quest")).toBe(0);
    screen.type("whole\r");
    await screen.sees("heard: whole");
    screen.type("\u0003");
    expect(await screen.ended()).toBe(0);
    expect(await screen.log()).toEqual(["ask whole", "closed"]);
  });
});

describe("leaving", () => {
  it.each([
    ["Ctrl-C", "\u0003"],
    ["Ctrl-D on an empty line", "\u0004"],
    ["quit", "quit\r"],
    ["exit", "exit\r"],
    ["bye", "Bye!\r"],
  ])(
    "with %s: code 0, cursor shown, below everything, line mode and paste mode as before",
    async (_name, keys) => {
      const screen = await chat();
      screen.type("one\r");
      await screen.sees("heard: one");
      screen.type(keys);
      expect(await screen.ended()).toBe(0);
      expect(screen.cursor()).toMatchObject({ hidden: false, x: 0 });
      expect(screen.cursor().y).toBeGreaterThanOrEqual(screen.lines().length);
      expect(screen.lines().join("\n")).not.toContain("to leave");
      expect(screen.raw().lastIndexOf("[?2004l")).toBeGreaterThan(screen.raw().lastIndexOf("[?2004h"));
      expect((await screen.log()).at(-1)).toBe("closed");
    },
  );

  it.each(["SIGTERM", "SIGHUP", "SIGINT"])("by %s: the terminal is given back too", async (signal) => {
    const screen = await chat();
    screen.type("a draft");
    await screen.sees("∪ a draft");
    screen.pty.kill(signal);
    expect(await screen.ended()).toBeLessThan(0);
    expect(screen.cursor().hidden).toBe(false);
    expect(screen.raw()).toMatch(/\[\?2004l[\s\S]*$/);
    expect(screen.cursor().y).toBeGreaterThanOrEqual(screen.lines().length);
  });
});

describe("the environment", () => {
  it("may say CI: whoever sees the chat sits before a terminal", async () => {
    const screen = await chat(80, 24, { CI: "true" });
    screen.type("timer shells 600\r");
    await screen.sees("·  shells");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
    expect(screen.raw()).toMatch(/\u001b\[1mshells: 600 s/);
  });

  it("may forbid color: weight is left", async () => {
    const screen = await chat(80, 24, { NO_COLOR: "1" });
    screen.type(`${question}\r`);
    await screen.sees("Caution");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
    const styles = [...screen.raw().matchAll(/\u001b\[([\d;]*)m/g)].map((match) => match[1]);
    expect(new Set(styles)).toEqual(new Set(["1", "22"]));
  });

  it("may have no more than ASCII", async () => {
    const screen = await chat(80, 24, { LANG: "C" });
    screen.type("timer shells 600\r");
    await screen.sees(/10:00 {2}\.{10} {2}shells\nu\n/);
  });

  it("may be a screen reader: the countdown stands still", async () => {
    const screen = await chat(80, 24, { INK_SCREEN_READER: "true" });
    screen.type("timer shells 600\r");
    await screen.sees(/due \d\d:\d\d {2}shells/);
  });
});
