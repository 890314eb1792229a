/**
 * Where one question of a turn ends and the next begins, and what of a turn is no question at all. Grams by the dose
 * table's 3-5 % and the ratios of data/rules (common practice), worked by hand beside each.
 */
import { describe, expect, test } from "vitest";
import { lastOf } from "../support/ask.ts";

const tools = async (...turns: string[]) => (await lastOf(...turns)).map(({ tool }) => tool);

describe("what was heard and what is asked", () => {
  test.each([
    ["great. timer 16 minutes", "timer"],
    ["ok great, now set a timer for 16 min", "timer"],
    ["lovely! how much flavor for 300 g buttercream", "dose"],
    ["right. 250 g in oz", "convert"],
    ["perfect, and how many trays for 24 macarons", "shells"],
  ])("%s: one answer", async (turn, tool) => {
    expect(await tools(turn)).toEqual([tool]);
  });

  test("a nod in the middle leaves the conversation where it was", async () => {
    // 5 % of 300 g
    const [answer] = await lastOf("230 g buttercream, how much flavor", "lovely, and 300?");
    expect(answer?.figures?.[0]?.high).toBeCloseTo(15, 9);
  });

  test.each(["ok", "ok good", "right then", "good to know", "i see", "nice"])(
    "%s: nothing asked, nothing declined",
    async (nod) => {
      const answers = await lastOf("230 g buttercream, how much flavor", nod, "and 300?");
      expect(answers[0]?.figures?.[0]?.high).toBeCloseTo(15, 9);
      const [heard] = await lastOf("230 g buttercream, how much flavor", nod);
      expect(heard).toMatchObject({ tool: "help", status: "answered" });
    },
  );

  test.each(["anyway how much has that timer left", "anyhow, how long is left"])(
    "%s: of the timer, and no timer called anyway",
    async (turn) => {
      const [answer] = await lastOf("set a timer for 22 min", turn);
      expect(answer).toMatchObject({ tool: "timer", figures: [{ name: "left", value: 22, unit: "min" }] });
    },
  );

  test("second thoughts are no timer called second", async () => {
    const [answer] = await lastOf("timer 16 min", "on second thoughts two minutes more");
    expect(answer?.figures?.[0]?.value).toBe(18);
  });
});

describe("a condition is no question of its own", () => {
  test.each(["when i make 50 macarons, how many trays is this", "when we bake 50 macarons how many trays"])(
    "%s",
    async (turn) => {
      // 100 shells and 10 more, 30 a tray
      const answers = await lastOf(turn);
      expect(answers.map(({ tool }) => tool)).toEqual(["shells"]);
      expect(answers[0]?.figures?.[0]).toMatchObject({ name: "trays", value: 4 });
    },
  );
  test("an hour is still asked for by when", async () => {
    expect(await tools("when do i start for 12 macarons tomorrow 5 pm")).toEqual(["day"]);
  });
});

describe("what is told first, and what is asked of it", () => {
  test.each([
    "my smbc curdled when i added the butter. what do i do",
    "the shells cracked when i baked them. what now?",
  ])("%s: about the fault, and nothing beside it", async (turn) => {
    expect(await tools(turn)).toEqual(["trouble"]);
  });

  test.each([
    "i have 150 g of cream and i want to make a milk chocolate ganache i can pipe, and then start the resting timer too",
    "150 g cream and i need to make milk ganache for piping with it, and start the resting timer",
  ])("%s", async (turn) => {
    // milk for piping 2 : 1, of 150 g cream
    const answers = await lastOf(turn);
    expect(answers.map(({ tool }) => tool)).toEqual(["ganache", "timer"]);
    expect(answers[0]?.figures?.find(({ name }) => name === "chocolate")?.value).toBeCloseTo(300, 9);
    expect(answers[1]?.figures?.[0]).toMatchObject({ value: 30, unit: "min" });
  });

  test.each([
    "i put 18 g toffee flavour in 310 g buttercream, how much more buttercream do i need to bring it back",
    "18 g toffee flavour went into 310 g buttercream. how much plain do i beat in to fix it",
    "oh no!! 18 g toffee flavour landed in 310 g buttercream!! what extra buttercream saves it",
  ])("%s: one answer", async (turn) => {
    // 18 g / 5 % - 310 g = 50 g, 18 g / 4 % - 310 g = 140 g
    const answers = await lastOf(turn);
    expect(answers).toHaveLength(1);
    expect(answers[0]?.figures?.[0]).toMatchObject({ name: "add base", unit: "g" });
    expect(answers[0]?.figures?.[0]?.low).toBeCloseTo(50, 9);
  });
});

test("a bowl of several gets a question of its own", async () => {
  // 420 g / 4 = 105 g, and 1.5 to 3 % of it
  const answers = await lastOf(
    "420 g buttercream, split it in 4 equal bowls. in one bowl comes matcha, howmuch?",
  );
  expect(answers.map(({ tool }) => tool)).toEqual(["split", "dose"]);
  expect(answers[1]?.figures?.[0]?.low).toBeCloseTo(1.575, 9);
});

describe("an amount that is taken back in the same breath", () => {
  const amounts = async (turn: string) => (await lastOf(turn)).flatMap(({ figures }) => figures ?? []);
  test.each([
    ["ten minutes timer, no make it 13", "left", 13],
    ["timer 10 min, no wait, 12 min for the shells", "left", 12],
    // 3 % of 280 g
    ["buttercream weighs 300, no hang on, 280 g. how much lavender flavour pls", "flavor", 8.4],
    ["240 g of lemon buttercream, sorry 260, how much flavor", "flavor", 7.8],
    // 33 g a white
    ["5 no 6 whites worth of house recipe", "whites", 198],
    ["whites 88 g, i got that wrong, 71 g", "whites", 71],
    ["timer 10 min, my mistake, 12", "left", 12],
    // 1 oz = 28.349523125 g
    ["convert 3 oz, i mean 4 oz, to grams", "result", 113.3980925],
  ])("%s: %s %d", async (turn, name, value) => {
    const found = (await amounts(turn)).find((each) => each.name === name);
    expect(found?.low ?? found?.value).toBeCloseTo(value, 6);
  });
  test.each([
    ["set a timer for 8 min and another, no two, of 5 min", 8],
    ["150 g buttercream, no vanilla, 200 g ganache: how much lemon flavor for each", 4.5],
  ])("%s: both stand", async (turn, first) => {
    const found = await amounts(turn);
    expect(found[0]?.low ?? found[0]?.value).toBeCloseTo(first, 6);
  });
});

describe("what was said first holds for the questions behind it", () => {
  test.each([
    "60 macarons for next saturday 11am, how much batter, how much filling and when do I start?",
    "24 macarons for tomorrow 5 pm: how much batter, how much filling, when do i start",
  ])("%s", async (turn) => {
    const answers = await lastOf(turn);
    expect(answers.map(({ tool, status }) => `${tool} ${status}`)).toEqual([
      "shells answered",
      "fill answered",
      "day answered",
    ]);
  });
  test("a number put right, and a question of its own behind it", async () => {
    // 3-5 % of 300 g
    const answers = await lastOf(
      "230 g buttercream, how much flavor",
      "no wait, 300. and how many trays for 24 macarons",
    );
    expect(answers.map(({ tool }) => tool)).toEqual(["dose", "shells"]);
    expect(answers[0]?.figures?.[0]?.high).toBeCloseTo(15, 9);
  });
});

describe("questions without a question word", () => {
  test.each([
    ["45 macarons: batter weight, and the filling weight to make", ["shells", "fill"]],
    [
      "cracked 4 egg whites for shells, the other weights? and number of macarons from that",
      ["scale", "shells"],
    ],
    [
      "six whites, house shells. what else? also 300 f in c? and start the rest timer",
      ["scale", "convert", "timer"],
    ],
    ["help!! 20 g of violet flavour went into 250 g buttercream. how much plain stuff do i add", ["dose"]],
  ])("%s", async (turn, wanted) => {
    expect(await tools(turn)).toEqual(wanted);
  });
  test("what the scale says is no recipe to be scaled", async () => {
    const [answer] = await lastOf("scale says 9.5 oz, grams?");
    expect(answer?.figures?.[0]?.value).toBeCloseTo(269.3204696875, 6);
  });
});

describe("what one question says is no answer to another", () => {
  test("a fragrance that is no food is asked about beside a dose", async () => {
    const answers = await lastOf("lemon flavor for 200 g buttercream? where do i keep candle fragrance oil");
    expect(answers[0]).toMatchObject({ tool: "dose", status: "answered" });
    expect(answers[0]?.figures?.[0]?.low).toBeCloseTo(6, 9);
    expect(answers[1]?.status).toBe("declined");
  });
  test("strength said of one flavor", async () => {
    const answers = await lastOf(
      "how much lemon flavor for 200 g buttercream? how much of my mint flavor for 100 g ganache, its twice as strong",
    );
    expect(answers[0]?.figures?.[0]?.low).toBeCloseTo(6, 9);
  });
});

describe("where the calculator before has no answer, another that has one gives it", () => {
  test.each(["cream for 200 g dark chocolate", "right, cream for 200 g dark chocolate"])(
    "%s, behind a dose",
    async (turn) => {
      // dark for piping 1.25 : 1
      const [answer] = await lastOf("230 g buttercream, how much flavor", turn);
      expect(answer?.tool).toBe("ganache");
      expect(answer?.figures?.find(({ name }) => name === "cream")?.value).toBeCloseTo(160, 9);
    },
  );
  test("what nobody has a rule for stays declined", async () => {
    const [answer] = await lastOf(
      "230 g buttercream, how much flavor",
      "how much cabbage goes into 200 g buttercream",
    );
    expect(answer?.status).not.toBe("answered");
  });
});
