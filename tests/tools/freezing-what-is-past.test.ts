/** Freezing asked about with a day of filling: the seven days of the fridge count until they go in (Food Code 3-501.17). */
import { describe, expect, it } from "vitest";
import { onlyOf } from "../support/ask.ts";

// it is Saturday 14 March: day 7 of the 6th was the 12th, of the 10th it is the 16th
const talk = ["filled these on the 10th, are they still ok to eat", "could i freeze them instead"];

describe("those filled on another day", () => {
  it.each([
    "and the ones i filled on the 6th?",
    "and the ones from the 6th?",
    "and if i made them on the 6th",
  ])("%s", async (said) => {
    const { headline, figures } = await onlyOf(...talk, said);
    expect(headline).toMatch(/^No.*2026-03-12.*Throw them out/);
    expect(figures ?? []).toEqual([]);
  });

  it("are frozen while they are good", async () => {
    expect((await onlyOf(...talk)).headline).toMatch(/^Yes.*2026-03-16.*−18 °C.*2 months/);
    expect((await onlyOf(...talk, "and the ones i filled on the 9th?")).headline).toMatch(/^Yes.*2026-03-15/);
  });

  it("without a day it is the freezer alone", async () => {
    expect((await onlyOf("can i freeze filled macarons")).headline).toMatch(/^Yes: airtight/);
  });

  it("nothing is frozen before it was made", async () => {
    const { status, figures } = await onlyOf(...talk, "and if i froze them on the 6th of february");
    expect([status, figures ?? []]).toEqual(["impossible", []]);
  });
});

// how long the freezer keeps them is no matter of the day that was spoken of before
it.each(["and frozen ones, how long", "how long may i keep them if i freeze them?"])("%s", async (said) => {
  const { headline } = await onlyOf("filled on the 5th, still good?", said);
  expect(headline).toMatch(/−18 °C.*2 months/);
});
