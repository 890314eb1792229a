/**
 * Questions from the side of the bench, worked by hand: raw whites (FoodSafety.gov, Cold Food Storage Chart: 2-4 days
 * in the fridge, 12 months frozen), heats (°F = °C × 9/5 + 32; shells at 150 °C, common practice), ganache by weight
 * (dark 1.25 : 1 to pipe, common practice), shares of one bowl (arithmetic), timers one after another.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

describe("raw whites", () => {
  it.each(["how long do egg whites keep in the fridge", "can i freeze egg whites"])("%s", async (said) => {
    const { of, cautions } = await talk(said);
    expect([of("raw whites")?.low, of("raw whites")?.high]).toEqual([2, 4]);
    expect(of("raw whites frozen")?.value).toBe(12);
    expect(cautions?.join(" ")).toMatch(/71 °C.*local food authority/s);
  });
  it.each([
    ["aged whites 3 days still ok?", /^Yes/],
    ["whites 5 days old ok?", /^No.*Throw them out/],
  ])("%s", async (said, headline) => expect((await talk(said)).headline).toMatch(headline));
  it("what is made with them is judged as before", async () =>
    expect((await talk("i'm not heating the whites for my buttercream, is that safe")).headline).toContain(
      "71 °C",
    ));
});

describe("heats", () => {
  it.each([
    ["350 is that too hot for shells", /^27 °C hotter/],
    ["is 140 c ok for macarons", /^10 °C cooler/],
    ["is 150 c ok for macarons", /what shells are baked at/],
    ["is 160 too hot to bake them, fan oven", /^30 °C hotter.*130 °C/],
  ])("%s", async (said, headline) => expect((await talk(said)).headline).toMatch(headline));
  it("an oven thermometer tells how hot the oven runs, and the dial follows", async () => {
    const { of } = await talk("oven thermometer says 165 dial says 150", "so what do i set");
    expect(of("oven")?.value).toBe(135);
  });
});

describe("ganache in short", () => {
  it.each([
    // 200 / 1.25 is short of 250 cream: 250 × 1.25 - 200
    ["i added 50 g extra cream to a 200/200 dark ganache", "add chocolate", 112.5],
    ["my 240/160 milk ganache is too soft", "add chocolate", 80],
    ["ganache didnt set overnight 200 g milk 140 cream", "add chocolate", 80],
    ["200/160 dark what is it good for", "ratio", 1.25],
    ["the white chocolate packet is 180 g, how much cream for ganache filling", "cream", 72],
    ["milk chocolate ganache for the filling, i got a 200 g bar, how much cream", "cream", 100],
  ])("%s", async (said, name, value) => expect((await talk(said)).of(name)?.value).toBeCloseTo(value, 9));
  it("two chocolates in one bowl have no ratio", async () =>
    expect(await talk("300 g ganache half dark half milk how much cream")).toMatchObject({
      status: "declined",
    }));
});

describe("one bowl for several flavors", () => {
  const doses = async (said: string) => (await baker().ask(said)).map((each) => each.figures?.[0]);
  it.each([
    ["half the buttercream lemon half raspberry, 360 g total, flavor each", [180, 180]],
    ["i need 2 flavors from 400 g smbc: coffee 1/4 rest vanilla, how much of each flavor", [100, 300]],
    ["390 g buttercream, a third lemon a third rose a third mint, how much flavor for each", [130, 130, 130]],
  ])("%s", async (said, bowls) => {
    const found = await doses(said);
    expect(found.map((each) => each?.low)).toEqual(bowls.map((grams) => expect.closeTo(grams * 0.03, 9)));
    expect(found.map((each) => each?.high)).toEqual(bowls.map((grams) => expect.closeTo(grams * 0.05, 9)));
  });
  it("what is put in on top is judged with what is in it: 5 + 3 in 200", async () =>
    expect((await talk("i put in 5 g, can i add 3 more to 200 g buttercream")).of("share")?.value).toBe(4));
});

describe("timers", () => {
  it("one after another rings when both times are over", async () => {
    const answers = await baker().ask("set timer tray 1 14 min and tray 2 14 min after that");
    expect(answers.map((each) => each.figures?.[0]?.value)).toEqual([14, 28]);
  });
  it("the one whose tray is spoken of is stopped", async () => {
    const { one } = baker();
    await one("put 16 mins on for tray one");
    await one("and 18 min for tray two");
    await one("tray one looks done already, stop it");
    expect((await one("whats running")).figures?.map((each) => each.value)).toEqual([18]);
  });
});

describe("what asks sets nothing", () => {
  it.each(["can i bake two trays at once", "should i rest them longer", "can i use granulated instead"])(
    "%s",
    async (said) => {
      const { ask, record } = baker();
      await ask(said);
      expect(record().bench).toEqual({});
      expect(record().changes).toEqual([]);
    },
  );
  it("a ganache that has to be cold is no ganache left out", async () => {
    const { headline } = await talk("do i need to refrigerate the ganache overnight");
    expect(headline).toContain("5 °C");
    expect(headline).not.toContain("Throw");
  });
  it("another flavor's macarons still have their shells", async () => {
    const { headline } = await talk(
      "which allergens for macarons with hazelnut filling",
      "and for pistachio with white chocolate?",
    );
    for (const each of ["almond", "egg", "milk", "pistachio"]) expect(headline).toContain(each);
  });
});
