/** Turns from the middle of a bake. Sums by hand; 33 g a white (USDA SR, NDB 01124). */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

describe("in the middle of a bake", () => {
  it("what has been said of a running time sets none", async () => {
    const { tool, items } = await talk("put the first tray in, 14 min", "its been 10 mins they look pale");
    expect([tool, items?.length]).toEqual(["timer", 1]);
  });
  it("nor how long it is runny", async () =>
    expect((await talk("ganache timer", "its still runny after 45 min")).items?.length).toBe(1));
  it("a bowl that is told is the batter of what comes behind: floor(0.96 × 230 / 7.6532) shells", async () => {
    const { of } = await talk(
      "batter is done its 540 g in the bowl, bowl weighs 310 empty",
      "so how many trays",
    );
    expect([of("shells")?.value, of("trays")?.value]).toEqual([28, 1]);
  });
  it("a bit of cracking is a fault, and no egg", async () =>
    expect((await talk("tops are cracking a bit")).tool).toBe("trouble"));
  it("a question is no answer to ours", async () =>
    expect((await talk("second tray timer", "how much buttercream do i have to make")).tool).not.toBe(
      "timer",
    ));
  it("when they can be eaten is when they are mature", async () => {
    const { tool, of } = await talk("when can i eat them");
    expect([tool, of("mature")?.low, of("mature")?.high]).toEqual(["method", 1440, 2880]);
  });
  it("a part of a mix is no bowl of it", async () =>
    expect((await talk("lemon curd in buttercream how much", "only got 90 g cream")).tool).not.toBe("dose"));
  it("two boxes at 1.20 each: 9.40 + 2.40, of which 40 %", async () => {
    const { of } = await talk("what do i charge, ingredients were 9.40, two boxes 1.20 each, 60 % margin");
    expect([of("cost")?.value, of("price")?.value].map((each) => Number(each?.toFixed(6)))).toEqual([
      11.8, 29.5,
    ]);
  });
  it("a label of a filling says that shells are missing", async () =>
    expect(
      (
        await talk("400 g butter for smbc, how much sugar and whites", "box of 6, what goes on the label")
      ).cautions?.join(" "),
    ).toContain("macaron shells bring almond and egg"));
});
