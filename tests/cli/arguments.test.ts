/** The command line: options wherever they stand, and everything else is the question, quotes or not. */
import { describe, expect, it } from "vitest";
import { parseArguments } from "../../src/cli/arguments.ts";

const plain = { json: false, demo: false, help: false, version: false, question: "" };

describe("understood", () => {
  it.each([
    [[], {}],
    [["how much flavor"], { question: "how much flavor" }],
    [["how", "much", "flavor"], { question: "how much flavor" }],
    [["--json"], { json: true }],
    [["--json", "230 g buttercream"], { json: true, question: "230 g buttercream" }],
    [["230", "g", "buttercream", "--json"], { json: true, question: "230 g buttercream" }],
    [["--home", "some/place", "help"], { home: "some/place", question: "help" }],
    [["--home=some/place"], { home: "some/place" }],
    [["what", "timers", "--home", "some/place"], { home: "some/place", question: "what timers" }],
    [["--demo"], { demo: true }],
    [["what", "timers", "--demo"], { demo: true, question: "what timers" }],
    [["--completion", "fish"], { completion: "fish" }],
    [["--completion=zsh"], { completion: "zsh" }],
    [["--home", "some/place", "--", "-x"], { home: "some/place", question: "-x" }],
    [["flavor", "--", "more"], { question: "flavor -- more" }],
    [["--help"], { help: true }],
    [["-h"], { help: true }],
    [["--version"], { version: true }],
    [["-v"], { version: true }],
    [["-50", "g", "buttercream"], { question: "-50 g buttercream" }],
    [["flavor", "for", "-50", "g"], { question: "flavor for -50 g" }],
    [["--", "--json", "is", "a", "word"], { question: "--json is a word" }],
    [["--json", "--", "-x"], { json: true, question: "-x" }],
    [
      ["70 g cream + 110 g white chocolate - how much"],
      { question: "70 g cream + 110 g white chocolate - how much" },
    ],
    [["300 g", "-", "how", "much"], { question: "300 g - how much" }],
  ])("%j", (argv, more) => {
    expect(parseArguments(argv)).toEqual({ ok: true, value: { ...plain, ...more } });
  });
});

describe("refused, with a sentence that names it", () => {
  it.each([
    [["--nope"], /--nope/],
    [[""], /question is empty/],
    [["   ", ""], /question is empty/],
    [["--json", ""], /question is empty/],
    [["--jsn", "help"], /--jsn/],
    [["-x"], /-x/],
    [["--home"], /home/],
    [["--home", ""], /home/],
    [["--json=yes"], /json/],
    [["--completion"], /bash, zsh, fish/],
    [["--completion", "cat"], /bash, zsh, fish/],
    [["--demo", "--home", "some/place"], /--home/],
  ])("%j", (argv, message) => {
    const parsed = parseArguments(argv);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.message).toMatch(message);
  });
});
