/** Completion as the shells themselves carry it out, each where the machine has it. */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { completion } from "../../src/cli/completion.ts";
import { options, type Shell, shells } from "../../src/cli/options.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "completion-"));
  for (const shell of shells) writeFileSync(join(folder, shell), completion(shell));
  mkdirSync(join(folder, "two words"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const has = (shell: Shell) => spawnSync(shell, ["-c", "true"]).status === 0;
const run = (shell: Shell, script: string, args: string[] = []) => {
  const ran = spawnSync(shell, [...args, "-c", script], { cwd: folder, encoding: "utf8" });
  expect(ran.stderr).toBe("");
  return ran.stdout.split("\n").filter(Boolean);
};
const dashed = options.flatMap((each) => [`--${each.name}`, ...("short" in each ? [`-${each.short}`] : [])]);

it.each(shells)("%s: every option stands in it", (shell) => {
  for (const { name } of options) expect(completion(shell)).toMatch(new RegExp(`\\b${name}\\b`));
});

describe.runIf(has("bash"))("bash", () => {
  const offered = (...words: string[]) =>
    run(
      "bash",
      `source ./bash; COMP_WORDS=(bowlside ${words.map((word) => `'${word}'`).join(" ")}); COMP_CWORD=${words.length}
      _bowlside; printf '%s\\n' "\${COMPREPLY[@]}"`,
      ["--norc"],
    );

  it("offers the options behind a dash, and what goes on from one begun", () => {
    expect(offered("-").sort()).toEqual([...dashed].sort());
    expect(offered("--ho")).toEqual(["--home"]);
  });
  it("offers the shells", () => expect(offered("--completion", "")).toEqual([...shells]));
  it("offers folders, one with a space as one", () =>
    expect(offered("--home", "two")).toEqual(["two words"]));
  it("leaves a question alone", () => expect(offered("how")).toEqual([]));
  it("is tied to the command", () =>
    expect(run("bash", "source ./bash; complete -p bowlside", ["--norc"])[0]).toContain("_bowlside"));
});

describe.runIf(has("zsh"))("zsh", () => {
  it("is good zsh, tied to the command, with a specification for each option", () => {
    const [tied, ...specs] = run(
      "zsh",
      `autoload -Uz compinit; compinit -u -d ./dump; source ./zsh; print -r -- "$_comps[bowlside]"
      _arguments() { print -rl -- "$@" }; _bowlside`,
      ["-f"],
    );
    expect(tied).toBe("_bowlside");
    for (const name of dashed)
      expect(specs.filter((spec) => new RegExp(`^(?:\\([^)]*\\))?${name}\\[`).test(spec))).toHaveLength(1);
    expect(specs).toContain("*:question:");
  });
});

describe.runIf(has("fish"))("fish", () => {
  const offered = (line: string) =>
    run("fish", `source ./fish; complete -C '${line}'`, ["--no-config"]).map((each) => each.split("\t")[0]);

  it("offers the options, the shells and folders, and no files for a question", () => {
    expect(offered("bowlside --").sort()).toEqual(options.map(({ name }) => `--${name}`).sort());
    expect(offered("bowlside --completion ").sort()).toEqual([...shells].sort());
    expect(offered("bowlside --home two")).toEqual(["two words/"]);
    expect(offered("bowlside ba")).toEqual([]);
  });
});
