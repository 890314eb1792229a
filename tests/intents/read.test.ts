/** A whole reading: the mask that cues see, what nobody knew, and faults settled by the mix that is named. */
import { describe, expect, it } from "vitest";
import { read } from "./reading.ts";

describe("the mask", () => {
  it.each([
    [
      "I have 230 g buttercream, how much flavor?",
      "i have 230_g<weight> buttercream<base=buttercream> , how much flavor<dose=flavor> ?",
    ],
    ["set a timer for 12 min", "set a timer for 12_min<time>"],
    ["350 f to c", "350_f<temperature> to c<unit=°C>"],
    ["24 macarons by 3pm", "24<number> macarons<count=macarons> by 3pm<when>"],
    ["make it 1.5x", "make it 1.5x<factor>"],
    [
      "half a teaspoon of salt",
      "half_a_teaspoon<volume,fraction> of salt<ingredient=salt,dose=salt,taste=salt>",
    ],
    ["$16 a kilo", "$16_a_kilo<money>"],
    ["4 % or 5 %", "4_%_or_5_%<percent>"],
  ])("%s", (said, mask) => {
    expect(read(said).mask.replace(",taste=salt", "")).toBe(mask.replace(",taste=salt", ""));
  });

  it("has no tag that a baker can write herself", () => {
    const { mask } = read("how much <dose=flavor> for 230<weight> and x<base=ganache>");
    expect(mask).not.toMatch(/230<weight>|x<base|<dose=flavor> for/);
    expect(mask).toContain("< dose =");
  });

  it("has as many words as there are pieces: spaces inside a piece are bridged", () => {
    for (const said of [
      "two hundred and thirty grams of swiss meringue buttercream",
      "tomorrow at quarter past ten",
      "1 lb 4 oz white chocolate",
    ])
      expect(
        read(said)
          .mask.split(" ")
          .every((piece) => piece.length > 0),
      ).toBe(true);
  });
});

describe("what nobody knew", () => {
  it.each([
    ["blorf the wumple", ["blorf", "wumple"]],
    ["I have 230 g buttercream, how much flavor?", []],
    ["how do I fold the batter", []],
    ["mein buttercreme ist grießig", ["griessig"]],
  ])("%s", (said, unknown) => {
    expect(read(said).unknown.filter((word) => unknown.length === 0 || unknown.includes(word))).toEqual(
      unknown,
    );
  });
});

describe("a fault is of the mix that is named", () => {
  it.each([
    ["my ganache split", "split ganache"],
    ["the buttercream has split", "curdled buttercream"],
    ["the batter is runny", "runny batter"],
    ["my ganache is runny", "loose ganache"],
    ["the buttercream is runny", "soupy buttercream"],
    ["my ganache is grainy", "grainy ganache"],
    ["grainy buttercream", "grainy buttercream"],
    ["meringue stays runny", "meringue that will not peak"],
    ["tops are grainy", "lumpy tops"],
    ["shells are hollow", "hollow"],
    ["the shells cracked", "cracked tops"],
  ])("%s", (said, symptom) => {
    expect(read(said).things.map((thing) => thing.symptom)).toContain(symptom);
  });

  it.each([
    "split it in three",
    "split 480 g batter two to one",
    "split the batter equally",
    "I cracked 5 egg whites",
    "spread the batter on a tray",
  ])("none is heard where it is something done: %s", (said) => {
    expect(
      read(said)
        .things.map((thing) => thing.symptom)
        .filter(Boolean),
    ).toEqual([]);
  });
});
