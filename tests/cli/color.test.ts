/** Color: in a terminal, unless NO_COLOR says otherwise. */
import { spawn } from "@lydell/node-pty";
import { afterAll, beforeAll, expect, it } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

/** All that one question writes in a terminal of 80 columns. */
const inTerminal = (env: Record<string, string>) =>
  new Promise<string>((resolve) => {
    let written = "";
    const pty = spawn(process.execPath, [program.file, "I have 230 g buttercream, how much flavor?"], {
      cols: 80,
      rows: 24,
      env: { PATH: process.env.PATH ?? "", TERM: "xterm-256color", BOWLSIDE_HOME: program.home, ...env },
    });
    pty.onData((text) => {
      written += text;
    });
    pty.onExit(() => resolve(written));
  });

it("shows the number bold in a terminal", async () => {
  expect(await inTerminal({})).toContain("\u001b[1m6.9 to 11.5 g flavor\u001b[22m");
});

it("writes no escape at all with NO_COLOR", async () => {
  const plain = await inTerminal({ NO_COLOR: "1" });
  expect(plain).toContain("6.9 to 11.5 g flavor");
  expect(plain).not.toContain("\u001b");
});

it("takes an empty NO_COLOR for none, as the convention has it", async () => {
  expect(await inTerminal({ NO_COLOR: "" })).toContain("\u001b[1m");
});
