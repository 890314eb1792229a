/** Back to an earlier question by what it was about, the one asked first, two bowls in one. By hand: 3-5 % flavor. */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

const range = async (...turns: string[]) => {
  const { of } = await talk(...turns);
  return [of("flavor")?.low, of("flavor")?.high].map((each) => each && Number(each.toFixed(6)));
};

describe("going back", () => {
  it("to the taste that was spoken of, past another question", async () =>
    expect(
      await range(
        "200 g buttercream, how much lemon flavor",
        "and a cup of granulated sugar in grams",
        "anyway, back to the lemon one, it's 260 g",
      ),
    ).toEqual([7.8, 13]));

  it("to the form that it had: espresso powder 1-2 % of 350", async () => {
    const { of } = await talk(
      "espresso powder for 320 g ganache",
      "vanilla extract in 150 g buttercream",
      "back to the espresso one, it's 350 g of ganache",
    );
    expect([of("espresso powder")?.low, of("espresso powder")?.high]).toEqual([3.5, 7]);
  });

  it("to the larger of two bowls: 6 g in 250", async () => {
    const { of } = await talk(
      "250 grams of buttercream, how much raspberry flavor goes in?",
      "now the same again but for the small bowl, thats only 90 g",
      "anyway back to the big bowl, I put in 6 g of it, is that enough",
    );
    expect(of("share")?.value).toBeCloseTo(2.4, 9);
  });

  it("to what was asked first", async () => {
    const { tool, of } = await talk(
      "how much filling for 24 macarons",
      "12 x 3",
      "now what i asked first, the filling, but 36 of them",
    );
    expect(tool).toBe("fill");
    expect(of("filling")?.value).toBeCloseTo((36 * 0.42 * 3.8 ** 2) / 0.92, 9);
  });

  it("both bowls together are 260 and half of it", async () =>
    expect(
      await range(
        "how much raspberry flavor for 260 g of buttercream",
        "and for half of that",
        "and what would it be if we tipped both bowls together?",
      ),
    ).toEqual([11.7, 19.5]));
});
