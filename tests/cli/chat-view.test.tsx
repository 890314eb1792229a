/** The chat drawn by ink onto streams that only look like a terminal. */
import { Console } from "node:console";
import { PassThrough } from "node:stream";
import { afterEach, describe, expect, it } from "vitest";
import { type ChatOptions, openChat } from "../../src/cli/chat/main.tsx";
import type { Timer } from "../../src/tools/contract/record.ts";
import { fixedAnswers } from "./chat-answers.ts";

// ink takes the console over while it draws; the test runner's own has no class to make another from.
console.Console ??= Console;

interface Fake {
  options: ChatOptions;
  /** Everything written, without escapes. */
  plain(): string;
  raw(): string;
  type(text: string): void;
  saved: string[][];
  rang: number[][];
  modes: boolean[];
  sees(what: string): Promise<void>;
  open(): Promise<void>;
  done: () => boolean;
}

const opened: Promise<void>[] = [];
afterEach(async () => {
  await Promise.all(opened.splice(0));
});

function fake(change: Partial<ChatOptions> = {}, timers: Timer[] = []): Fake {
  let written = "";
  let wake = () => {};
  const stdout = Object.assign(new PassThrough(), { isTTY: true, columns: 60, rows: 24 });
  stdout.on("data", (chunk) => {
    written += String(chunk);
    wake();
  });
  const modes: boolean[] = [];
  const stdin = Object.assign(new PassThrough(), {
    isTTY: true,
    setRawMode: (on: boolean) => modes.push(on),
    ref() {},
    unref() {},
  });
  const saved: string[][] = [];
  const rang: number[][] = [];
  // biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
  const plain = () => written.replace(/\u001b\[[0-?]*[ -/]*[@-~]/g, "");
  let ended = false;
  const options: ChatOptions = {
    session: {
      async ask(line) {
        if (line === "break")
          throw Object.assign(new Error("The record is locked."), { hint: "Close the other window." });
        return { asked: line, answers: fixedAnswers[line] ?? [] };
      },
      world: async () => ({
        now_ms: 0,
        bench: {},
        timers,
        notes: [],
        bottles: [],
        stock: [],
        formulas: [],
        plans: [],
      }),
    },
    now_ms: () => Date.now(),
    home: "/record",
    intro: () => ["Hello."],
    examples: [],
    ring: async (ids) => {
      rang.push(ids);
      return ids;
    },
    loadHistory: async () => ["timers"],
    keepHistory: async (lines) => void saved.push([...lines]),
    stdin: stdin as unknown as NodeJS.ReadStream,
    stdout: stdout as unknown as NodeJS.WriteStream,
    env: {},
    ...change,
  };
  return {
    options,
    plain,
    raw: () => written,
    type: (text) => stdin.write(text),
    saved,
    rang,
    modes,
    sees: (what) =>
      new Promise((resolve, reject) => {
        const limit = setTimeout(() => reject(new Error(`Not seen: ${what}\n${plain()}`)), 5000);
        wake = () => {
          if (!plain().includes(what)) return;
          clearTimeout(limit);
          resolve();
        };
        wake();
      }),
    open() {
      const chat = openChat(options).finally(() => {
        ended = true;
      });
      opened.push(chat.catch(() => {}));
      return chat;
    },
    done: () => ended,
  };
}

describe("the chat", () => {
  it("opens with what it was given, answers, and gives the terminal back", async () => {
    const chat = fake();
    const end = chat.open();
    await chat.sees("to leave");
    expect(chat.plain()).toContain("Hello.\r\nYour record is in /record".replace("\r", ""));
    chat.type("I have 230 g buttercream, how much flavor?\r");
    await chat.sees("! Caution: The directions on your bottle are the limit.");
    chat.type("bye\r");
    await end;
    expect(chat.modes.at(0)).toBe(true);
    expect(chat.modes.at(-1)).toBe(false);
    expect(chat.raw()).toMatch(/\[\?2004h[\s\S]*\[\?2004l/);
    expect(chat.raw().lastIndexOf("[?25h")).toBeGreaterThan(chat.raw().lastIndexOf("[?25l"));
  });

  it("keeps the terminal from echoing before anything is waited for", async () => {
    const modes: boolean[][] = [];
    const chat = fake({
      async loadHistory() {
        modes.push([...chat.modes]);
        return [];
      },
    });
    const end = chat.open();
    chat.type("\u0003");
    await end;
    expect(modes).toEqual([[true]]);
  });

  it("keeps the questions, and finds those of earlier sessions", async () => {
    const chat = fake();
    const end = chat.open();
    await chat.sees("to leave");
    chat.type("\u001b[A\r");
    await chat.sees("2 timers");
    chat.type("both\rbye\r");
    await end;
    expect(chat.saved).toEqual([["both"]]);
  });

  it("stays open when something goes wrong, and says what to try", async () => {
    const chat = fake();
    const end = chat.open();
    chat.type("break\r");
    await chat.sees("That didn't work: The record is locked. Close the other\n  window.");
    chat.type("both\r");
    await chat.sees("2 timers");
    chat.type("\u0003");
    await end;
  });

  it("survives a history that can't be read or kept", async () => {
    const fails = () => Promise.reject(new Error("no such place"));
    const chat = fake({ loadHistory: fails, keepHistory: fails });
    const end = chat.open();
    chat.type("both\r");
    await chat.sees("2 timers");
    await chat.sees("That didn't work: no such place");
    chat.type("\u0004");
    await end;
  });

  it("rings for what came due while it was closed, once, and names what runs on when it is left", async () => {
    const now = Date.now();
    const timer = (id: number, label: string, due_ms: number): Timer => ({
      id,
      label,
      set_ms: now - 3_600_000,
      due_ms,
      state: "running",
    });
    const chat = fake({}, [timer(1, "shells", now - 12.5 * 60_000), timer(2, "rest", now + 600_000)]);
    const end = chat.open();
    await chat.sees("Ring: shells is done; came due 12 min ago, while the");
    await chat.sees("  rest");
    chat.type("both\r");
    await chat.sees("2 timers");
    chat.type("\u0003");
    await end;
    expect(chat.rang).toEqual([[1]]);
    expect(chat.raw().split("\u0007")).toHaveLength(2);
    expect(chat.plain()).toContain("1 timer runs on; it rings when the chat is open.");
  });

  it("waits for the answer under way before it is closed", async () => {
    let finish = () => {};
    const slow = new Promise<void>((resolve) => {
      finish = resolve;
    });
    const base = fake();
    const chat = fake({
      session: { ...base.options.session, ask: (line) => slow.then(() => ({ asked: line, answers: [] })) },
    });
    const end = chat.open();
    await chat.sees("to leave");
    chat.type("slow\r\u0003");
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(chat.done()).toBe(false);
    finish();
    await end;
  });
});
