/** Said in a roundabout way. Expected values are worked by hand, the rule beside each. */
import { describe, expect, it } from "vitest";
import { lastOf } from "../support/ask.ts";

const figure = async (name: string, ...turns: string[]) => {
  const answers = await lastOf(...turns);
  return answers.at(-1)?.figures?.find((each) => each.name === name);
};

/** A flavor is 3-5 % of a buttercream or a butter filling, 3-4 % of a ganache (common practice). */
describe("flavor for what was mixed", () => {
  // 160 + 90 + 110 = 360 g; 3 % is 10.8, 5 % is 18
  it.each([
    "violet flavor, 160 g butter and 90 g cream cheese and 110 g icing sugar all whipped together - grams?",
    "160 g butter, 90 g cream cheese and 110 g icing sugar beaten together, how much violet flavor",
    "i whipped 160 g butter with 90 g cream cheese and 110 g icing sugar. violet flavor, how much?",
  ])("%s", async (said) =>
    expect(await figure("flavor", said)).toMatchObject({
      low: expect.closeTo(10.8, 6),
      high: expect.closeTo(18, 6),
    }),
  );

  it("4 percent of it", async () =>
    // 4 % of 360
    expect(
      await figure(
        "flavor",
        "violet flavor, 160 g butter and 90 g cream cheese and 110 g icing sugar all whipped together - grams?",
        "4 percent exactly then",
      ),
    ).toMatchObject({ value: expect.closeTo(14.4, 6) }));

  // 3 % and 5 % of 340; 3 % and 4 % of the ganache
  const bowl =
    "There is a bowl of plain buttercream on my counter which came to 340 g. Might I ask how much raspberry flavouring it would take?";
  it("a bowl that came to so much", async () =>
    expect(await figure("flavor", bowl)).toMatchObject({
      low: expect.closeTo(10.2, 6),
      high: expect.closeTo(17, 6),
    }));
  it.each([
    "My colleague says she would sooner have it in a ganache. What would the same weight of that want?",
    "he'd rather have ganache. what would the same weight of that need?",
    "my mum would prefer it in a ganache. how much would that take?",
  ])("%s", async (said) =>
    expect(await figure("flavor", bowl, said)).toMatchObject({
      low: expect.closeTo(10.2, 6),
      high: expect.closeTo(13.6, 6),
    }),
  );

  // 8.5 g are 5 % of 170 g and 3 % of 283.3 g
  it.each([
    "Remaining stock 8.5 g rhubarb concentrate. What quantity of buttercream will that flavor?",
    "im down to my last 8.5 g rhubarb concentrate. how much buttercream will it do?",
    "stock left 8.5 g rhubarb concentrate, what weight of buttercream can it flavour",
  ])("%s", async (said) =>
    expect(await figure("base", said)).toMatchObject({
      low: expect.closeTo(170, 6),
      high: expect.closeTo(283.3333, 3),
    }),
  );

  it("a bowl a tenth lighter", async () =>
    // 315 g; 3 % is 9.45
    expect(
      await figure("flavor", "rose flavor for 280 g buttercream", "350 g less 10 percent"),
    ).toMatchObject({ low: expect.closeTo(9.45, 6) }));
});

describe("notes", () => {
  it.each([
    ["into the log: fig batch, every top cracked", "fig, cracked tops"],
    ["for the log: fig batch, every top cracked", "fig, cracked tops"],
    ["log entry: fig batch, every top cracked", "fig, cracked tops"],
    ["straight into the notes, fig batch, every top cracked", "fig, cracked tops"],
    ["And one last note: coffee batch, baked for 19 minutes.", "coffee, baked 19 min"],
    ["another entry please: coffee batch, baked 19 min", "coffee, baked 19 min"],
    ["this goes in the log, coffee batch, baked 19 min", "coffee, baked 19 min"],
  ])("%s", async (said, noted) => {
    const [answer, ...others] = await lastOf(said);
    expect(others).toEqual([]);
    expect(answer).toMatchObject({ tool: "note", status: "answered" });
    expect(answer?.headline).toContain(noted);
  });

  it("where it stands is no order", async () => {
    const [answer] = await lastOf("in the book, 300 f is the oven. what is it in c");
    expect(answer?.tool).toBe("convert");
  });
});

describe("a mat with circles", () => {
  // 33 macarons are 66 shells and 7 spare ones (10 %): 4 mats of 24
  it.each([
    "new mat, its got 24 circles",
    "I've treated myself to a silicone mat, and it has 24 circles on it. Could you bear that in mind?",
    "ive bought a new mat with 24 circles",
    "bigger mat now, 24 circles",
    "i was given a printed mat with 24 rings",
  ])("%s", async (said) => {
    expect((await lastOf(said))[0]?.tool).toBe("bench");
    expect(await figure("trays", said, "trays for 33 macarons?")).toMatchObject({ value: 4 });
  });
});

describe("timers", () => {
  it.each([
    "set tray a for 12 min, tray b for 14 min, then tell me 300 f in c",
    "set tray a for 12 min, tray b for 14 min and then tell me what 300 f is in c",
  ])("%s", async (said) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => each.tool)).toEqual(["timer", "timer", "convert"]);
    // (300 - 32) / 1.8
    expect(answers[2]?.figures?.[0]?.value).toBeCloseTo(148.8889, 4);
  });

  it.each([
    "I think I would rather call the pink tray rose shells, if that can be done.",
    "would you mind calling the pink tray rose shells?",
    "let's call the pink tray rose shells from now on",
    "i'd like to name the pink tray rose shells instead",
  ])("%s", async (said) => {
    const [answer] = await lastOf("set 20 min for the pink tray", said);
    expect(answer?.headline).toContain("pink tray is now called rose shells");
  });

  it("a call is no timer's name", async () =>
    expect((await lastOf("can you call my sister for me"))[0]?.status).toBe("declined"));

  // 75 + 45 and 75 - 30
  it.each([
    ["My sister says that is not nearly enough. Please add another 45 minutes to it.", 120],
    ["that will never do. please add 45 minutes", 120],
    ["my aunt reckons it's far too long. take 30 minutes off", 45],
  ])("%s", async (said, left) =>
    expect(await figure("left", "75 min timer for the ganache", said)).toMatchObject({ value: left }),
  );
});

// 2000 - 350
it.each([
  "How much icing sugar does that leave me with?",
  "so how much icing sugar does that leave?",
  "what does that leave me in the way of icing sugar?",
])("%s", async (said) =>
  expect(
    (await lastOf("add 2 kg icing sugar to the pantry", "i used 350 g of the icing sugar", said))[0]
      ?.figures?.[0]?.value,
  ).toBe(1650),
);

/** Arithmetic. */
describe("sums", () => {
  it.each([
    ["take 15 percent off 340", 289],
    ["340 minus 15 percent", 289],
    ["what is 340 less 15 percent?", 289],
    ["knock 20% off 850", 680],
    ["200 plus 10 percent", 220],
    ["could you remind me what two fifths of 350 comes to?", 140],
    ["i can't remember what half of 375 is", 187.5],
  ])("%s", async (said, value) =>
    expect(await figure("result", said)).toMatchObject({ value: expect.closeTo(value, 6) }),
  );

  it.each([
    "The book gives the oven as 375 F, which means nothing to me. What would it be in Celsius?",
    "my book has the oven at 375 f, and that is all greek to me. in celsius?",
  ])("%s", async (said) =>
    // (375 - 32) / 1.8
    expect(await figure("result", said)).toMatchObject({ value: expect.closeTo(190.5556, 4) }),
  );

  it("told, then asked", async () => {
    const answers = await lastOf(
      "My grandmother's card speaks of 12 oz, which is the buttercream, I believe. What is 12 oz in grams, please?",
    );
    expect(answers.map((each) => each.tool)).toEqual(["convert"]);
    // 12 x 28.349523125
    expect(answers[0]?.figures?.[0]?.value).toBeCloseTo(340.1943, 4);
  });

  // halves
  it.each([
    "This makes far too much: 260 g cream cheese, 90 g icing sugar and 50 g butter. Could I ask you to cut it in half?",
    "260 g cream cheese, 90 g icing sugar and 50 g butter. can you halve that for me?",
  ])("%s", async (said) =>
    expect(await figure("cream cheese", said)).toMatchObject({ value: expect.closeTo(130, 6) }),
  );

  // 6 whites make 257.4 g almond flour (33 g a white, 1.3 times that); 5 make 214.5 g
  it.each(["one rolled off the counter. five", "i dropped one, so five", "one had yolk in it. five now"])(
    "%s",
    async (said) =>
      expect(await figure("almond flour", "how much almond flour for 6 egg whites", said)).toMatchObject({
        value: expect.closeTo(214.5, 6),
      }),
  );

  // as much as "shell weights for 30 macarons" asked plainly
  it.each([
    "The reading group meets on Monday and I promised them 30 macarons. Could I have the weights for the shells?",
    "i said id bring 30 macarons on friday. what are the quantities for the shells?",
  ])("%s", async (said) =>
    expect(await figure("whites", said)).toEqual(await figure("whites", "shell weights for 30 macarons")),
  );

  // 12 + 3 + 1.5 x 14 = 36; 36 / 0.75 = 48
  it.each([
    "I spent £12 on ingredients and £3 on packaging, and put in an hour and a half of work at £14 an hour. What price would leave me a 25 per cent margin?",
    "£12 on ingredients, £3 on boxes and 1.5 hours of my time at £14 an hour, what price for 25 percent margin",
  ])("%s", async (said) =>
    expect(await figure("price", said)).toMatchObject({ value: expect.closeTo(48, 6) }),
  );
});

it.each([
  "How do you come to say so?",
  "what makes you say that?",
  "what grounds have you for saying so",
  "how do you know",
])("%s", async (said) =>
  expect((await lastOf("rose flavor for 280 g buttercream", said))[0]?.tool).toBe("explain"),
);

it.each(["Many thanks to you.", "Much obliged.", "that's very good of you", "i really appreciate it"])(
  "%s",
  async (said) => expect((await lastOf("rose flavor for 280 g buttercream", said))[0]?.tool).toBe("help"),
);
