/** What is told beside a question changes nothing of it; what would change it stays. */
import { describe, expect, it } from "vitest";
import { steps } from "../support/ask.ts";

/** Calculator and inputs of each question, without what says how it was read. */
const asked = (sentence: string) =>
  steps(sentence).map((found) =>
    Array.isArray(found) ? found.map(({ tool, inputs }) => ({ tool: tool.name, inputs })) : "unread",
  );

const question = "how much lemon flavor for 240 g buttercream";
const order = "set a timer for 20 minutes";

describe("asides", () => {
  it.each([
    [`${question}, because my sister is coming`],
    [`${question}? she always brings two friends along.`],
    [`${question}, since everyone likes the green ones best`],
    [`${question}, the kitchen is a mess`],
    [`i never got on with the shop kind, so ${question}`],
  ])("%s", (told) => expect(asked(told)).toEqual(asked(question)));

  it.each([
    [`${order}, because the kitchen is damp today`],
    [`${order}, my oven is an old one`],
    [`${order}, half of them are on a diet`],
  ])("%s", (told) => expect(asked(told)).toEqual(asked(order)));

  it.each([
    // a weight, a fault, a taste and a manner are no talk
    ["how much cream for 200 g chocolate, because it is dark chocolate"],
    ["can i still sell them, because they were out 3 hours"],
  ])("%s keeps what it says", (told) =>
    expect(asked(told)).not.toEqual(asked(told.slice(0, told.indexOf(",")))),
  );

  it("an aside alone is still answered, as something nobody asked for", () =>
    expect(asked("the kitchen is a mess")).toEqual(["unread"]));
});
