/** Above 32 °C (90 °F) an hour out of the fridge is the limit (FDA, "Are you storing food safely?"), however the heat is told. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const places = [
  "box of filled macarons was in the car 90 minutes",
  "they were on the counter 75 minutes",
  "filled macs in the boot for an hour and a half",
  "the filled ones were at the stall 80 min",
];
const heats = ["its 35 c outside", "it's 36 degrees out there", "it was 35 c in here", "34 c in the kitchen"];
const asks = ["chuck them?", "still ok to eat?", "are they safe"];

describe("more than an hour in the heat", () => {
  it.each(
    places.flatMap((place, at) =>
      heats.map((heat, of) => `${place} and ${heat}, ${asks[(at + of) % asks.length]}`),
    ),
  )("%s", async (say) => {
    const [answer] = await baker().ask(say);
    expect([answer?.tool, answer?.headline]).toEqual(["keep", expect.stringMatching(/^No\b/)]);
    expect(JSON.stringify(answer?.figures)).toContain('"value":1,');
  });

  it("told beside something else, the heat is no matter of it", async () => {
    const [answer] = await baker().ask("its 35 c outside, 230 g buttercream, how much pistachio flavor");
    expect(answer?.figures?.[0]).toMatchObject({ low: 6.9, high: 11.5, unit: "g" });
  });
});
