import { describe, expect, it } from "vitest";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { startTurns } from "../../src/cli/chat/turns.ts";
import {
  farewellLines,
  introLines,
  startOverLines,
  troubleLines,
  turnLines,
} from "../../src/cli/chat/words.ts";
import { dose, list } from "./chat-answers.ts";

function conversation(ask: (line: string) => Promise<void> = async () => {}) {
  const seen: string[] = [];
  const turns = startTurns({
    async ask(line) {
      seen.push(`ask ${line}`);
      await ask(line);
      return { asked: line, answers: [] };
    },
    show: (turn) => seen.push(`show ${turn.asked}`),
    isListing: () => false,
    own: (word) => void seen.push(`own ${word}`),
    startOver: () => seen.push("start over"),
    async after() {
      seen.push("after");
    },
    trouble: (error) => seen.push(String(error)),
    leave: () => seen.push("leave"),
  });
  return { turns, seen };
}

const later = () => new Promise<void>((resolve) => setTimeout(resolve, 5));

describe("turns", () => {
  it("are answered one after the other, however many come at once", async () => {
    const { turns, seen } = conversation(later);
    turns.submit(["one", "two"]);
    turns.submit(["bye", "three"]);
    while (!seen.includes("leave")) await later();
    await turns.stop();
    expect(seen).toEqual(["ask one", "show one", "after", "ask two", "show two", "after", "leave"]);
  });

  it("show the answer to a blank line that ends a list", async () => {
    const seen: string[] = [];
    const turns = startTurns({
      ask: async (line) => ({ asked: line, answers: line === "" ? [dose] : [] }),
      show: (turn) => seen.push(`show ${turn.answers.length}`),
      isListing: () => true,
      own: () => {},
      startOver: () => seen.push("start over"),
      after: async () => {},
      trouble: (error) => seen.push(String(error)),
      leave: () => {},
    });
    turns.submit(["105 g whites", ""]);
    await later();
    expect(seen).toContain("show 1");
    expect(seen).not.toContain("start over");
  });

  it.each(["quit", "exit", "bye", " Bye! ", "QUIT"])("end by word: %s", async (word) => {
    const { turns, seen } = conversation();
    turns.submit([word]);
    await later();
    expect(seen).toEqual(["leave"]);
  });

  it.each(["bye bye timer", "quit the timer", "exit 2"])("don't end by a sentence: %s", async (line) => {
    const { turns, seen } = conversation();
    turns.submit([line]);
    await turns.stop().then(later);
    expect(seen).not.toContain("leave");
  });

  it("leave in turn after what was asked", async () => {
    const { turns, seen } = conversation(later);
    turns.submit(["one"]);
    turns.leave();
    while (!seen.includes("leave")) await later();
    expect(seen).toEqual(["ask one", "show one", "after", "leave"]);
  });

  it("stop: what runs ends, what waits is dropped", async () => {
    const { turns, seen } = conversation(later);
    turns.submit(["one", "two"]);
    await Promise.resolve();
    await turns.stop();
    expect(seen).toEqual(["ask one", "show one", "after"]);
  });

  it("take an empty Enter for nothing, however often", async () => {
    const { turns, seen } = conversation();
    turns.submit(["", "one", "", "  ", "and for 300?"]);
    await later();
    expect(seen).toEqual(["ask one", "show one", "after", "ask and for 300?", "show and for 300?", "after"]);
  });

  it.each(["new conversation", "Start a new chat, please.", "start over", "let's start afresh"])(
    "start over when that is said: %s",
    async (line) => {
      const { turns, seen } = conversation();
      turns.submit(["one", line]);
      await later();
      expect(seen).toEqual(["ask one", "show one", "after", "ask ", "start over", "after"]);
    },
  );

  it("go on after trouble", async () => {
    const { turns, seen } = conversation(async (line) => {
      if (line === "bad") throw new Error("no record");
    });
    turns.submit(["bad", "good"]);
    await later();
    expect(seen).toEqual(["ask bad", "Error: no record", "ask good", "show good", "after"]);
  });
});

describe("words of the chat's own", () => {
  const text = (lines: { text: string }[]) => lines.map((line) => line.text);

  it("shows the question, then each answer to it", () => {
    const turn = { asked: "both of them, please", answers: [dose, list] };
    expect(text(turnLines(turn, 16, drawn)).slice(0, 3)).toEqual([
      "∪ both of them,",
      "  please",
      "6.9 to 11.5 g",
    ]);
    expect(text(turnLines(turn, 80, ascii)).filter((line) => /^\S/.test(line))).toEqual([
      "u both of them, please",
      dose.headline,
      "! Caution: The directions on your bottle are the limit.",
      list.headline,
    ]);
  });

  it("says where the record is, what goes on, and what went wrong", () => {
    expect(text(introLines(["Hello."], "/home/record", 80))).toEqual([
      "Hello.",
      "Your record is in /home/record",
    ]);
    expect(farewellLines(0, 80)).toEqual([]);
    expect(text(farewellLines(1, 80))).toEqual(["1 timer runs on; it rings when the chat is open."]);
    expect(text(farewellLines(2, 80))).toEqual(["2 timers run on; they ring when the chat is open."]);
    expect(text(introLines([], "/tmp/invented", 80, true))).toEqual([
      "The demo's record is in /tmp/invented",
    ]);
    expect([0, 1, 2].flatMap((running) => text(farewellLines(running, 80, true)))).toEqual([
      "The demo's record is gone.",
      "The demo's record is gone, and its timer with it.",
      "The demo's record is gone, and its 2 timers with it.",
    ]);
    expect(text(startOverLines("start over", 80, drawn))).toEqual([
      "∪ start over",
      "A new conversation: what was said before is set aside, the record stays.",
    ]);
    expect(
      text(troubleLines(Object.assign(new Error("It is locked."), { hint: "Close the other window." }), 80)),
    ).toEqual(["That didn't work: It is locked. Close the other window."]);
    expect(text(troubleLines("odd", 80))).toEqual(["That didn't work: odd"]);
  });
});
