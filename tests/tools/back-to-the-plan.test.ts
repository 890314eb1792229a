/** A plan that is come back to with a new hour or number, with its filling and its trays asked about between. */
import { describe, expect, it } from "vitest";
import { onlyOf, withFigures } from "../support/ask.ts";

// for 14:00 it starts at 9:40 of the day before; an hour later for 15:00
const plan = "sixty macarons for friday two pm, work it back for me would you";

describe("with other things asked since", () => {
  it.each([
    ["back to the plan, they now want them at 3", /Start Thu 19 Mar 10:40 for 60/],
    ["so the plan: they want them by 3", /Start Thu 19 Mar 10:40 for 60/],
    ["they now want them at 3", /Start Thu 19 Mar 10:40 for 60/],
    ["the client wants it at 3", /Start Thu 19 Mar 10:40 for 60/],
    ["returning to the plan, 72 now", /for 72 macarons/],
  ])("%s", async (said, headline) => {
    const answer = await onlyOf(plan, "how much filling is that", "and how many trays", said);
    expect([answer.tool, answer.headline]).toEqual(["day", expect.stringMatching(headline)]);
  });

  // 0.42 × 3.8² / 0.92 g of filling each
  it.each([
    ["now at 40", 40],
    ["and they need 72", 72],
  ])("%s is of the filling", async (said, macarons) => {
    const { tool, value } = await withFigures(plan, "how much filling is that", said);
    expect([tool, value("filling")]).toEqual(["fill", expect.closeTo((macarons * 0.42 * 14.44) / 0.92, 4)]);
  });
});

// 15 macarons less are 5 min less to fill, a tray less 15 min in the oven
describe("turns out its just 45", () => {
  it.each([
    "turns out its just 45",
    "it turned out to be 45",
    "found out its 45 only",
    "works out at 45 after all",
    "make it 45",
  ])("%s", async (said) => {
    const { headline } = await onlyOf(
      "client wants 60 macarons on tuesday, 7pm. work backwards for me",
      said,
    );
    expect(headline).toMatch(/Start Mon 16 Mar 15:00 for 45 macarons/);
  });
});
