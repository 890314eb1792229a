/** One matter in many ways of saying it: notes, habits, keeping, faults told with feeling, orders wrapped up. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { near } from "../support/near.ts";

const answers = async (say: string) => {
  const { ask } = baker();
  let last: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of say.split("|")) last = await ask(turn.trim());
  return last;
};
const tools = async (say: string) => (await answers(say)).map(({ tool, status }) => `${tool} ${status}`);
const headline = async (say: string) => (await answers(say)).map((each) => each.headline).join(" / ");
const figure = (name: string, value: number) => expect.objectContaining({ name, ...near(value) });

describe("a note, however it is ordered, holds the batch alone", () => {
  it.each([
    "write this up: lavender today, 40 shells, one tray lopsided, 152 c for 14 min",
    "write that up for me: lavender today, 40 shells, 152 c for 14 min",
    "scribble this down: lavender today, 40 shells, 152 c for 14 min",
    "make a note of this: lavender today, 40 shells, 152 c for 14 min",
  ])("%s", async (say) =>
    expect(await headline(`${say} | my last lavender was when`)).toMatch(/^Today: lavender today, 40 shells/),
  );

  it.each([
    "any with wrinkeld tops in there?",
    "any in there with wrinkled tops",
    "anything in the log with wrinkled tops",
  ])("%s", async (say) =>
    expect(await headline(`log: cassis batch, tops wrinkled | log: fig batch, not one fault | ${say}`)).toBe(
      "Today: cassis batch, tops wrinkled",
    ),
  );

  it("not one fault is no flavor", async () =>
    expect(await headline("log: fig batch, not one fault")).toBe("Noted for today: fig"));
});

describe("what is hers for good is kept", () => {
  // 66 shells of 42 mm where the book has 38 mm: 526.16 × (42/38)² = 642.76 g
  it.each([
    "default diameter 42 mm for me please",
    "standard size for me is 42 mm",
    "let 42 mm be the default size",
    "go with 42 mm unless i say otherwise",
    "assume 42 mm shells for me",
    "i never pipe anything but 42 mm",
    "as default id like 42 mm",
    "save my diameter as 42 mm",
  ])("%s", async (say) =>
    expect((await answers(`${say} | ok so 30 macarons, batter?`))[0]?.figures).toContainEqual(
      figure("batter", 526.1575 * (42 / 38) ** 2),
    ),
  );

  it.each([
    ["my default rest is 45 min", "Rest 45 min, from now on."],
    ["i always dry them 50 min before the oven", "Rest 50 min, from now on."],
    ["default oven 150 c", "Oven at 150 °C, from now on."],
    ["my oven overheats by 10 c", "Oven runs 10 °C hot, from now on."],
    ["oven always 5 c too cold here", "Oven runs 5 °C cold, from now on."],
    ["usually i bake at 150 for 14 min", "Oven at 150 °C and bake 14 min, from now on."],
    ["default spare 15 percent for me please", "15 % spare shells, from now on."],
  ])("%s", async (say, kept) => expect(await headline(say)).toBe(kept));

  it("and what is asked behind it is answered", async () => {
    const said = await answers("use 42 mm from now on, batter for 30?");
    expect(said.map(({ tool, status }) => `${tool} ${status}`)).toEqual([
      "bench answered",
      "shells answered",
    ]);
    // 66 × 0.53 × 4.2² / 0.96
    expect(said[1]?.figures).toContainEqual(figure("batter", 642.7575));
  });

  it("but not what is asked, or of this batch alone", async () => {
    const { one, record } = baker();
    const { tool, figures } = await one("go with 42 mm for these, 30 macarons, batter?");
    expect([tool, record().bench]).toEqual(["shells", {}]);
    expect(figures).toContainEqual(figure("batter", 642.7575));
    expect(await tools("what do i usually bake at")).toEqual(["recall answered"]);
  });
});

describe("what one of a box costs and brings in", () => {
  // (24 − 9) / 24 = 62.5 %
  it.each([
    "a tin of 12 costs me $9, i let it go for $24, margin?",
    "tin of 12: cost $9, price $24, margin?",
    "a carton of 12 comes to $9, i get $24 for it, margin?",
    "box of 12 costs me 9 dollars, i flog it for 24, margin?",
    "a tub of 12 sets me back $9 and i sell it for $24, what's my margin",
  ])("%s", async (say) => expect((await answers(say))[0]?.figures).toContainEqual(figure("margin", 62.5)));
});

describe("keeping, by other names", () => {
  // the rules of data/rules/keeping: 7 days in the fridge, 2 months frozen, 2 h out of it
  it.each([
    ["freezer life of filled macarons?", "frozen", 2],
    ["shelf life of filled macarons?", "in the fridge", 7],
    ["keeping time of filled macarons?", "in the fridge", 7],
    ["how long can filled macarons stand in the display fridge", "in the fridge", 7],
    ["counter life of filled macarons?", "out of the fridge", 2],
    ["how long can a tray of filled ones stand on the buffet", "out of the fridge", 2],
    ["how long may filled macarons be on display", "out of the fridge", 2],
    ["how long can a tower of filled ones stand at the wedding", "out of the fridge", 2],
    ["how many hours on the dessert table for filled ones", "out of the fridge", 2],
  ])("%s", async (say, name, value) =>
    expect((await answers(say))[0]?.figures).toContainEqual(figure(name, value)),
  );

  it("3 hours on a buffet are too long, and no timer", async () =>
    expect(await headline("is 3 hours on a buffet ok for filled ones")).toMatch(/^No: 3 h is past the 2 h/));

  it("other food has none", async () =>
    expect(await tools("freezer life of beef stew?")).toEqual(["help declined"]));
});

describe("faults, told as they come", () => {
  it.each([
    ["cant get the meringue to peak its just foam", /^Meringue that will not peak/],
    ["egg whites just froth and never peak", /^Meringue that will not peak/],
    ["i cant get stiff peaks", /^Meringue that will not peak/],
    ["whites have been going 15 min and no peaks yet", /^Meringue that will not peak/],
    ["cant get the ganache to firm up", /^Loose ganache/],
    ["well theyve come out with no feet, not one of them has feet, im fuming", /^No feet/],
    ["not a foot in sight, im devastated", /^No feet/],
    ["my last batch had no feet, not any, and im raging about it", /^No feet/],
  ])("%s", async (say, fault) => expect(await headline(say)).toMatch(fault));

  it.each(["not one cracked, over the moon", "no cracks this time, so happy", "lovely feet, so happy"])(
    "%s: nothing went wrong",
    async (say) => expect(await headline(say)).toMatch(/^All right/),
  );

  it("how stiff is asked of no fault", async () =>
    expect(await tools("how long do i whip the meringue to get stiff peaks")).toEqual(["method answered"]));
});

describe("help and thanks", () => {
  it.each(["give me some examples of what i can ask", "example questions?", "list things i could ask you"])(
    "%s",
    async (say) => expect(await tools(say)).toEqual(["help answered"]),
  );
  it.each(["you're a treasure thank you", "what a treasure you are", "you are a gem"])("%s", async (say) =>
    expect(await headline(say)).toBe("You're welcome."),
  );
});

describe("timers told ahead of their order, and orders wrapped up", () => {
  it.each([
    ["i'll give the ganache an hour and ten to set, can you time that", 70],
    ["ganache chills 50 min, can you keep time", 50],
    ["i'll let the trays sit for half an hour, you time that", 30],
    // and how long one still has
    ["timer 70 min ganache | what did you say the ganache has still to go", 70],
    ["timer 70 min ganache | what does the ganache have to go still", 70],
  ])("%s", async (say, left) => {
    const [one, ...others] = await answers(say);
    expect([one?.tool, others.length]).toEqual(["timer", 0]);
    expect(one?.figures).toContainEqual(figure("left", left));
  });

  // dark for piping 1.25 : 1, so 140 × 1.25 = 175 g; a ganache sets in 45 min
  it.each([
    "and you could set off the ganache timer too",
    "and you might as well start the ganache timer",
    "feel free to set the ganache timer",
    "no harm in setting the ganache timer too",
    "would you mind starting the ganache timer too",
    "and youd be a star to start the ganache timer",
    "ganache timer too please",
  ])("%s", async (wrapped) => {
    const [mix, timer] = await answers(`dark ganache im piping, from 140 g cream, ${wrapped}`);
    expect(mix?.figures).toContainEqual(figure("chocolate", 175));
    expect(timer?.figures).toContainEqual(figure("left", 45));
  });

  it("nothing in front of it is lost", async () =>
    expect(await tools("batter for 40 macarons and kindly set off the rest timer")).toEqual([
      "shells answered",
      "timer answered",
    ]));
});

describe("a change of one of two goes to that one", () => {
  // powder 0.3 to 1 % of 390 g
  it.each([
    "timer 16 min bake. and gel color for 390 g batter | what about with powder color",
    "timer 16 min bake. and gel color for 390 g batter | how about powder instead",
    "gel color for 390 g batter. and timer 16 min bake | what about with powder color",
  ])("%s", async (say) => {
    const [one, ...others] = await answers(say);
    expect(others).toEqual([]);
    expect(one?.figures).toContainEqual(
      expect.objectContaining({ name: "powder color", low: 1.17, high: 3.9 }),
    );
  });
});

describe("stock is told with its place, and asked for", () => {
  it.each([
    [
      "2 kg icing sugar in the cupboard | used 300 g icing sugar | and the icing sugar, whats left of it",
      "powdered sugar",
      1700,
    ],
    ["2 kg icing sugar in the drawer | used 300 g icing sugar | icing sugar left?", "powdered sugar", 1700],
    ["1.5 kg butter in the fridge | took 250 g butter | whats left of the butter", "butter", 1250],
  ])("%s", async (say, name, value) =>
    expect((await answers(say))[0]?.figures).toContainEqual(figure(name, value)),
  );
});
