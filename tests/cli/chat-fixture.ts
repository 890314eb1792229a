/** A small program around the chat, for tests: a session with fixed answers, timers in memory, history in a file. */
import { appendFileSync, existsSync, readFileSync } from "node:fs";
import { openChat } from "../../src/cli/chat/main.tsx";
import type { Session } from "../../src/cli/session.ts";
import type { Timer } from "../../src/tools/contract/record.ts";
import { fixedAnswers } from "./chat-answers.ts";

/** A moment at which the clock stands, where a screen has to look the same every time. */
const now_ms = () => (process.env.FIXTURE_NOW ? Number(process.env.FIXTURE_NOW) : Date.now());
const timers: Timer[] = JSON.parse(process.env.FIXTURE_TIMERS ?? "[]");
const historyFile = process.env.FIXTURE_HISTORY ?? "";
const log = (line: string) => process.env.FIXTURE_LOG && appendFileSync(process.env.FIXTURE_LOG, `${line}\n`);

const session: Session = {
  async ask(line) {
    log(`ask ${line}`);
    const timer = /^timer (\S+) (\d+)$/.exec(line.trim());
    if (timer) {
      const set_ms = now_ms();
      const [, label = "", seconds] = timer;
      timers.push({
        id: timers.length + 1,
        label,
        set_ms,
        due_ms: set_ms + Number(seconds) * 1000,
        state: "running",
      });
      return {
        asked: line,
        answers: [{ tool: "timer", status: "answered", headline: `${label}: ${seconds} s` }],
      };
    }
    if (line.trim() === "break") throw new Error("the record can't be read.");
    return {
      asked: line.trim(),
      answers: line.trim()
        ? (fixedAnswers[line.trim()] ?? [{ tool: "help", status: "declined", headline: `heard: ${line}` }])
        : [],
    };
  },
  async world() {
    return {
      now_ms: now_ms(),
      bench: {},
      timers: [...timers],
      notes: [],
      bottles: [],
      stock: [],
      formulas: [],
      plans: [],
    };
  },
};

await openChat({
  session,
  now_ms,
  home: "/home/baker/record",
  intro: () => ["Ask the way you would say it."],
  examples: ["I have 230 g buttercream, how much flavor?", "batter for 24 macarons"],
  async ring(ids) {
    log(`ring ${ids.join(" ")}`);
    for (const timer of timers) if (ids.includes(timer.id)) timer.state = "rung";
    return ids;
  },
  loadHistory: async () =>
    existsSync(historyFile) ? readFileSync(historyFile, "utf8").split("\n").filter(Boolean) : [],
  keepHistory: async (lines) =>
    void (historyFile && appendFileSync(historyFile, lines.map((line) => `${line}\n`).join(""))),
});
log("closed");
