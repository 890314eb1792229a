/** Words typed without their vowels, over the program's own words. */
import { describe, expect, it, test } from "vitest";
import { withoutVowels } from "../../data/words/without-vowels.ts";
import { bonesOf } from "../../src/intents/text/bones.ts";
import { understanding } from "../../src/intents/understanding.ts";
import { tools } from "../../src/tools/registry.ts";

const { mend } = understanding(tools).reader.mender;

describe("a word without its vowels", () => {
  test.each([
    ["lft", "left"],
    ["shlls", "shells"],
    ["lmn", "lemon"],
    ["prts", "parts"],
    ["mch", "much"],
    ["ths", "this"],
  ])("%s is %s", (typed, meant) => {
    expect(mend(typed)?.join(" ")).toBe(meant);
  });
  test.each(["zzz", "qwrt", "hjkl", "smbc", "tbsp", "pls"])("%s stays what it is", (typed) => {
    expect(mend(typed)).toBeUndefined();
  });
  it("may be any word that has its consonants: the ones beside it decide", () => {
    const bones = bonesOf({ targets: () => new Set(["butter", "batter", "cream", "left"]) });
    expect(["bttr", "crm", "lft", "cream"].map(bones)).toEqual([
      ["butter", "batter"],
      ["cream"],
      ["left"],
      [],
    ]);
    expect(mend("bttr", { before: "swiss", next: "#" })).not.toEqual(["batter"]);
    expect(mend("chclt", { before: "dark", next: "ganache" })).toEqual(["chocolate"]);
  });
  test.each(Object.entries(withoutVowels))("%s holds no vowel that %s lacks", (typed, meant) => {
    const letters = [...meant];
    for (const letter of typed) {
      const at = letters.indexOf(letter);
      expect(at, letter).toBeGreaterThanOrEqual(0);
      letters.splice(0, at + 1);
    }
  });
});
