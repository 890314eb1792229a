/**
 * What is told ahead of a question, or between an amount and its thing, changes nothing in what is worked out. The
 * house batter is 460 of 100 whites : 130 : 130 : 100, a white is 33 g, a buttercream whites 1 : sugar 1.5 : butter 2.5,
 * a piping dark ganache 1.25 : 1.
 */
import { describe, expect, test } from "vitest";
import { baker, lastOf } from "../support/ask.ts";

/** The figure of that name in the only answer. */
async function figure(name: string, ...turns: string[]) {
  const said = await lastOf(...turns);
  expect(said.map((each) => each.status)).toEqual(["answered"]);
  return said[0]?.figures?.find((each) => each.name === name);
}

describe("a piece of butter weighs what it weighs: 160 + 120 + 20 = 300 g, of which 3-4 % are 9-12 g", () => {
  test.each([
    "160 g dark chocolate, 120 g cream and a 20 g knob of butter in my bowl, so how much orange flavouring is that?",
    "160 g dark chocolate, 120 g cream, a 20 g pat of butter. how much orange flavouring",
    "a 20 g lump of butter, 160 g dark chocolate, 120 g cream - how much orange flavouring",
    "melted a 20 g slice of butter into 160 g dark chocolate and 120 g cream, how much orange flavouring",
  ])("%s", async (say) => {
    const flavor = await figure("flavor", say);
    expect([flavor?.low, flavor?.high]).toEqual([9, 12]);
  });
});

describe("four whites are 132 g, wherever they are left over from: sugar 198, butter 330", () => {
  test.each([
    "four egg whites left over from lemon curd, what do i need to turn them into swiss meringue buttercream?",
    "4 whites going spare from the lemon curd, make them into swiss meringue buttercream",
    "i have 4 whites left from making custard, how do i turn them into buttercream",
    "four whites left over from a passionfruit curd, what do they need to become buttercream",
  ])("%s", async (say) => {
    expect((await figure("butter", say))?.value).toBeCloseTo(330, 6);
  });
});

describe("a dark ganache of 220 on 200 that runs out of the bag: 1.25 times 200 are 250, 30 more", () => {
  test.each([
    "bloody thing runs straight out the nozzle. dark ganache, 220 chocolate on 200 cream, what do i chuck in",
    "my dark ganache pours out of the piping tip, 220 g chocolate and 200 g cream, what do i add",
    "dark ganache 220 chocolate 200 cream, it is leaking from the piping bag, what now",
  ])("%s", async (say) => {
    expect((await figure("add chocolate", say))?.value).toBeCloseTo(30, 6);
  });
});

describe("370 g of white ganache set with butter by 20 : 12 : 5: 200, 120 and 50", () => {
  test.each([
    "white ganache set with butter for filling, 370 g in all. the three weights?",
    "white ganache with butter, 370 g. give me all three weights",
    "370 g white ganache firmed up with butter, three weights please",
    "white buttered ganache for piping, 370 g total, weights of all three",
  ])("%s", async (say) => {
    expect((await figure("butter, with butter", say))?.value).toBeCloseTo(50, 6);
  });
});

describe("575 g of batter by ingredient: 1.25 times the house's 460", () => {
  test.each([
    "order up: 575 g macaron batter. break it down by ingredient",
    "575 g batter. list the ingredients for me",
    "575 g batter broken down please",
    "575 g batter. all the parts please",
  ])("%s", async (say) => {
    expect((await figure("almond flour", say))?.value).toBeCloseTo(162.5, 6);
  });
});

describe("a timer for the time that was said ahead of it", () => {
  test.each([
    ["the ganache looks very loose tonight so give it two and a quarter hours, put a timer on", 135],
    ["give the ganache an hour and a half, pop a timer on", 90],
    ["shells still sticky so give them another 20 minutes, put the timer on", 20],
    ["ganache is soft tonight so ill give it 90 min, stick a timer on", 90],
  ])("%s", async (say, min) => {
    expect((await figure("left", say))?.value).toBe(min);
  });

  test("a question ahead of it is none of it", async () => {
    const said = await lastOf("is it ok to leave it 20 minutes, put a timer on");
    expect(said.length).toBeGreaterThan(1);
  });

  test.each(["ach, plus 5 after all", "+5 after all", "och, 5 more after all"])("%s", async (say) => {
    expect((await figure("left", "rest timer, 30 min", say))?.value).toBe(35);
  });
});

test("what is there, asked beside a shopping list: 2000 - 340", async () => {
  const left = await lastOf(
    "put 2 kg icing sugar in the pantry",
    "i used 340 g of the icing sugar",
    "i'm writing the next shopping list, how much icing sugar have i got left?",
  );
  expect(left[0]).toMatchObject({ tool: "shelf", figures: [{ value: 1660 }] });
});

describe("another warmth supposed: two hours up to 32 °C, one above", () => {
  test.each([
    "and had it been 20 c in the car?",
    "but if the car was only 20 c",
    "were it only 20 c in the van?",
    "had the car been at 20 c?",
  ])("%s", async (say) => {
    const limit = await figure("out of the fridge", "filled ones sat in my car 90 minutes at 35 c, ok?", say);
    expect([limit?.value, limit?.unit]).toEqual([2, "h"]);
  });
});

describe("egg that stays raw in a buttercream: pasteurised, or 71 °C", () => {
  test.each([
    "is unheeated egg white ok in my buttercreem, nobody at the care home may get ill",
    "unpasturised egg white in buttercream, fine for the nursery?",
    "do the egg whites in italian buttercream need cooking",
  ])("%s", async (say) => {
    expect(await lastOf(say)).toMatchObject([
      { tool: "keep", headline: expect.stringContaining("pasteurised") },
    ]);
  });
});

describe("a shell size kept", () => {
  test.each([
    "45 mm is my shell size, store that as the default",
    "my shells are 45 mm, save that as standard",
    "please store 45 mm as my shell size",
    "default shell size 45 mm",
    "45 mm is what i pipe, keep that as my default",
  ])("%s", async (say) => {
    const chat = baker();
    await chat.ask(say);
    expect(chat.record().bench).toEqual({ diameter_mm: 45 });
  });
});

describe("how a flavor was rated", () => {
  test.each([
    "how did raspberry score",
    "what did raspberry score",
    "what did i score the raspberry",
    "whats raspberry's score",
    "how'd my raspberry batch rate out of ten",
    "raspberry score?",
  ])("%s", async (say) => {
    expect((await figure("rating", "raspberry batch was 8/10, log it", say))?.value).toBe(8);
  });
});

test("eggs for a number of guests that is told first: 75 macarons take 9", async () => {
  const said = await figure(
    "whites",
    "whites for 40 macarons, how many eggs is that to crack",
    "my aunt says 75 are coming, so eggs for 75",
  );
  expect(said?.value).toBe(9);
});
