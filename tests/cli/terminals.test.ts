/** Where the program stands: terminals that show color or don't, ASCII alone, half a terminal, none at all. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { spawn } from "@lydell/node-pty";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { wantsColor } from "../../src/cli/color.ts";
import { nodeFiles } from "../../src/store/files.ts";
import { underLock } from "../../src/store/lock.ts";
import { builtProgram, type Program } from "../support/built.ts";
import { openScreen } from "./chat-pty.ts";

const question = "I have 230 g buttercream, how much flavor?";
const esc = "\u001b";

describe("color", () => {
  it.each([
    [{}, true, true],
    [{}, false, false],
    [{ TERM: "dumb" }, true, false],
    [{ NO_COLOR: "1" }, true, false],
    // no-color.org's rule: an empty one counts as not there
    [{ NO_COLOR: "" }, true, true],
    [{ FORCE_COLOR: "1" }, false, true],
    [{ FORCE_COLOR: "3", TERM: "dumb" }, false, true],
    [{ FORCE_COLOR: "0" }, true, false],
    [{ FORCE_COLOR: "false" }, true, false],
    [{ FORCE_COLOR: "" }, false, false],
    [{ FORCE_COLOR: "1", NO_COLOR: "1" }, true, false],
  ])("%j, terminal %j: %j", (env, isTerminal, expected) => {
    expect(wantsColor(env as Record<string, string>, isTerminal)).toBe(expected);
  });
});

describe("the program", () => {
  let program: Program;
  let folder = "";
  beforeAll(async () => {
    program = await builtProgram();
    folder = mkdtempSync(join(tmpdir(), "terminals-"));
  }, 180_000);
  afterAll(() => {
    program?.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  /** A shell's command line in a terminal; `$B` is the program. Gives all that was written and the exit status. */
  function inTerminal(line: string, env: Record<string, string> = {}, typed = "") {
    return new Promise<{ text: string; status: number }>((resolve) => {
      let text = "";
      const pty = spawn("/bin/sh", ["-c", line], {
        cols: 80,
        rows: 24,
        cwd: folder,
        env: {
          PATH: process.env.PATH ?? "",
          TERM: "xterm-256color",
          LANG: "C.UTF-8",
          B: `${process.execPath} ${program.file}`,
          BOWLSIDE_HOME: program.home,
          BOWLSIDE_NOW: "2026-03-14T09:30:00",
          ...env,
        },
      });
      pty.onData((each) => {
        text += each;
      });
      pty.onExit(({ exitCode }) => resolve({ text, status: exitCode }));
      if (typed) pty.write(typed);
    });
  }

  it("colors a pipe when it is forced to, and no JSON", async () => {
    const env = { FORCE_COLOR: "1" };
    expect((await program.run([question], { env })).stdout).toContain(`${esc}[1m6.9 to 11.5 g flavor`);
    expect((await program.run(["--json", question], { env })).stdout).not.toContain(esc);
    expect((await program.run([question], { env: { ...env, NO_COLOR: "1" } })).stdout).not.toContain(esc);
  });

  it.each<Record<string, string>>([{ TERM: "dumb" }, { FORCE_COLOR: "0" }, { NO_COLOR: "1" }])(
    "writes no escape in a terminal with %j",
    async (env) => {
      const { text, status } = await inTerminal(`$B "${question}"`, env);
      expect(status).toBe(0);
      expect(text).toContain("6.9 to 11.5 g flavor");
      expect(text).not.toContain(esc);
    },
  );

  it.each<Record<string, string>>([
    { LC_ALL: "C" },
    { LANG: "POSIX" },
    { LC_CTYPE: "en_US.ISO-8859-1" },
    { TERM: "linux" },
  ])("writes nothing but ASCII with %j", async (env) => {
    const { text } = await inTerminal(
      `$B "350 f in c"; $B --demo "which batch was my best"; $B --demo "what's next"`,
      { LANG: "", NO_COLOR: "1", ...env },
    );
    expect(text).toContain("176.7 C = 350 F");
    expect(text).toContain("oven 146 C");
    expect(text).toMatch(/-{5,}/);
    expect(text).toMatch(/^[\r\n -~]*$/);
  });

  it("--json stays UTF-8 whatever the terminal", async () => {
    const { stdout } = await program.run(["--json", "350 f in c"], { env: { LC_ALL: "C" } });
    expect(JSON.parse(stdout).answers[0].figures[0].unit).toBe("°C");
  });

  it("reads lines where only its input is a terminal, and opens no chat", async () => {
    const { text, status } = await inTerminal("$B | cat", {}, `${question}\n\u0004`);
    expect(status).toBe(0);
    expect(text).toContain("6.9 to 11.5 g flavor");
    expect(text).not.toContain(esc);
  });

  it("ends at once where there is nothing to read", async () => {
    for (const input of ["< /dev/null", "<&-"]) {
      const { text, status } = await inTerminal(`$B ${input}`);
      expect([text, status]).toEqual(["", 0]);
    }
  });

  it("answers with all of standard input, output and error closed or nowhere", async () => {
    expect((await inTerminal(`$B "${question}" <&- 2>&- | head -1`)).text).toContain("6.9 to 11.5");
    expect((await inTerminal(`$B "${question}" > /dev/null 2>&1 < /dev/null`)).status).toBe(0);
    expect((await inTerminal(`setsid --wait $B "${question}" < /dev/null | cat`)).text).toContain(
      "6.9 to 11.5",
    );
  });

  it("says so and ends with 1 where the answer can't be written", async () => {
    const { text, status } = await inTerminal(`$B "${question}" > /dev/full`);
    expect(status).toBe(1);
    expect(text).toMatch(/^bowlside: .*no space/i);
    expect(text).not.toMatch(/ {4}at /);
  });

  describe("what takes a while", () => {
    it("is told of on the terminal: a record that somebody else writes to", async () => {
      const home = join(folder, "busy");
      await inTerminal(`$B "set a timer for 12 min"`, { BOWLSIDE_HOME: home });
      const held = underLock(nodeFiles, join(home, "record.json.lock"), 1000, async () => {
        const asked = inTerminal(`$B "set a timer for 3 min" > out`, { BOWLSIDE_HOME: home });
        await new Promise((resolve) => setTimeout(resolve, 1500));
        return { asked };
      });
      const { text, status } = await (await held).asked;
      expect(status).toBe(0);
      expect(text).toMatch(/^Still at it \.\.\.\r +\r$/);
    });

    it("is told of in the chat too, below the line that is written in", async () => {
      const home = join(folder, "busy-chat");
      await inTerminal(`$B "set a timer for 12 min"`, { BOWLSIDE_HOME: home });
      const screen = openScreen(program.file, 80, 24, { BOWLSIDE_HOME: home });
      try {
        await screen.sees('"bye" to leave');
        await underLock(nodeFiles, join(home, "record.json.lock"), 1000, async () => {
          screen.type("set a timer for 3 min\r");
          await screen.sees("Still at it ...");
        });
        await screen.sees(/3 min.*rings/);
        await screen.sees('"bye" to leave');
        expect(screen.lines().join("\n")).not.toContain("Still at it");
      } finally {
        screen.pty.kill("SIGKILL");
      }
    });

    it("is counted: many lines into a file", async () => {
      writeFileSync(join(folder, "many"), "60 macarons by friday 10 am, apricot ganache\n\n".repeat(1000));
      const { text, status } = await inTerminal("$B --json < many > out");
      expect(status).toBe(0);
      expect(text).toMatch(/^\d+ lines answered \.\.\.\r/);
      expect(text).toMatch(/\r +\r$/);
    });

    it("is not, where standard error is no terminal, or what is asked is quick", async () => {
      expect((await inTerminal(`$B "${question}" > out`)).text).toBe("");
      expect((await inTerminal("$B --json < many > out 2> err; cat err")).text).toBe("");
    });
  });
});
