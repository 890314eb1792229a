/** Slips of the keyboard in whole sentences: what is typed and what is meant give the same answers, or it asks. */
import { describe, expect, it, test } from "vitest";
import { settled } from "../../src/cli/which-number.ts";
import { baker } from "../support/ask.ts";
import { understood } from "./reading.ts";

const { mend } = understood.reader.mender;

/** The last turn's answers, without the words that were typed. */
async function answered(turns: string) {
  const { ask } = baker();
  let last: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of turns.split("|")) last = await ask(turn);
  return last.map(({ tool, status, figures = [] }) => ({ tool, status, figures }));
}

describe("typed, and meant", () => {
  test.each([
    // short words
    ["hwo much lemon flavor for 230 g buttercream", "how much lemon flavor for 230 g buttercream"],
    [
      "230 g buttercream, lemon amd 300 g ganache, how much rum",
      "230 g buttercream, lemon and 300 g ganache, how much rum",
    ],
    ["batter fro 40 macarons", "batter for 40 macarons"],
    ["weights fo the shells of 40 macarons", "weights for the shells of 40 macarons"],
    ["and for rhe shells of 40 macarons", "and for the shells of 40 macarons"],
    // neighbouring keys, letters doubled, left out, swapped; two in a long word
    [
      "how much crean for 300 g drak chocolate ganache for pipnig",
      "how much cream for 300 g dark chocolate ganache for piping",
    ],
    ["how much choxolate for 120 g cream, milk, piping", "how much chocolate for 120 g cream, milk, piping"],
    ["split 600 g bater in threee", "split 600 g batter in three"],
    ["my shells are craked, why", "my shells are cracked, why"],
    ["stawbery flavuor for 200 g buttrecream", "strawberry flavor for 200 g buttercream"],
    // vowels dropped
    ["flvr fr 230 g bttrcrm", "flavor for 230 g buttercream"],
    ["drk chclt 340g, pipng. crm?", "dark chocolate 340g, piping. cream?"],
    // run together, torn apart
    ["howmuch filling for 40 macarons", "how much filling for 40 macarons"],
    ["225gof dark chocolate, cream for piping?", "225 g of dark chocolate, cream for piping?"],
    ["630 g but ter cream into 4 equal bowls", "630 g butter cream into 4 equal bowls"],
    ["195 g almonxflour, house recipe, rest of it?", "195 g almond flour, house recipe, rest of it?"],
    ["640gbatr makes hw mnay maca roons", "640 g batter makes how many macaroons"],
    ["recipfor 600 g maca ron batter", "recipe for 600 g macaron batter"],
    [
      "cracked fuor eggs and kept the whitse, almond flour = ?",
      "cracked four eggs and kept the whites, almond flour = ?",
    ],
    ["restting timer, go", "resting timer, go"],
    // units and numbers that can be nothing else
    ["1 cup powdered sugar in gtams", "1 cup powdered sugar in grams"],
    ["2 tablespoos honey in grams", "2 tablespoons honey in grams"],
    ["timer 20 minuttes", "timer 20 minutes"],
    ["split 450 g batter in thre", "split 450 g batter in three"],
    // behind another turn
    [
      "200 g dark choc ganache, coffee flavor?|hlaf of taht",
      "200 g dark choc ganache, coffee flavor?|half of that",
    ],
    [
      "230 g buttercream, lemon flavor?|and vanila insted",
      "230 g buttercream, lemon flavor?|and vanilla instead",
    ],
    ["timer 20 min|tke 4 off", "timer 20 min|take 4 off"],
    // a turn of phrase is looked for in right words
    [
      "price 6 for 18 € with 2 € boxes|and withotu the boxes",
      "price 6 for 18 € with 2 € boxes|and without the boxes",
    ],
  ])("%s = %s", async (typed, meant) => {
    expect(await answered(typed)).toEqual(await answered(meant));
  });
});

describe("what could be one number or another is asked for, and no figure is given", () => {
  test.each([
    ["how much filling for fofty five macarons", /forty or fifty/],
    ["batter for a hundred and fofty macs", /fifty or forty|forty or fifty/],
  ])("%s", async (said, which) => {
    const [answer] = await baker().ask(said);
    expect(answer).toMatchObject({ status: "asking" });
    expect(answer?.headline).toMatch(which);
    expect(answer?.figures).toBeUndefined();
  });
  test.each([
    ["how much filling for fofty five macs", "forty five", "how much filling for 45 macs"],
    ["how much filling for fofty five macs", "45", "how much filling for 45 macs"],
    ["how much filling for fofty five macs", "oh i meant fifty", "how much filling for 55 macs"],
    // another question leaves it open
    ["how much filling for fofty five macs", "timer 20 min", "timer 20 min"],
  ])("%s|%s = %s", async (said, reply, meant) => {
    expect(await answered(`${said}|${reply}`)).toEqual(await answered(meant));
  });
  it("to one number alone, yes is an answer; to several it is none, and a sentence of its own is none", () => {
    const doubt = { line: "trays for ffty macs", said: "ffty", either: ["fifty"] };
    expect(settled(doubt, "yes please")).toBe("trays for fifty macs");
    expect(settled(doubt, "no")).toBeUndefined();
    expect(settled({ ...doubt, either: ["fifty", "forty"] }, "yes")).toBeUndefined();
    expect(settled({ ...doubt, either: ["fifty", "forty"] }, "forty or fifty")).toBeUndefined();
    expect(settled(doubt, "set a timer for fifty minutes and show my notes")).toBeUndefined();
  });
  it("in a note it is kept as it was typed", async () => {
    const [answer] = await baker().ask("note: lemon, fofty five shells, smooth");
    expect(answer?.status).toBe("answered");
  });
});

describe("a slip that a figure hangs on is said with the answer", () => {
  test.each([
    ["timer 20 minuttes", "minutes"],
    ["2 tablespoos honey in grams", "tablespoons"],
    ["timer 20 min|how long is hat", "that"],
  ])("%s", async (turns, read) => {
    const { ask } = baker();
    let assumed: readonly string[] = [];
    for (const turn of turns.split("|")) assumed = (await ask(turn))[0]?.assumed ?? [];
    expect(assumed.join("; ")).toContain(`read as "${read}"`);
  });
  it("and any other when she asks how it was read", async () => {
    const { ask } = baker();
    await ask("hwo much vanila for 230 g buttercream");
    const [told] = await ask("how did you read that");
    expect(JSON.stringify(told)).toMatch(/hwo.*how/);
    expect(JSON.stringify(told)).toMatch(/vanila.*vanilla/);
  });
});

describe("stands as it was typed", () => {
  it("a name of somebody, wherever it stands", () => {
    for (const name of ["anna", "tims", "lisas", "lisa", "tom", "hilda", "ben", "rosa"])
      for (const before of ["for", "note", "with", "^"])
        expect(mend(name, { before, next: "$" }), `${before} ${name}`).toBeUndefined();
  });
  it("rarer English beside the trade's words", () => {
    for (const word of [
      "kill",
      "paddle",
      "brittle",
      "pudding",
      "mauve",
      "cutter",
      "topping",
      "million",
      "lent",
    ])
      expect(mend(word, { before: "the", next: "$" }), word).toBeUndefined();
  });
  test.each([
    ["save recipe stoep cream: 200 g mascarpone, 60 g icing sugar|which recipes have i saved", "stoep cream"],
    ["save recipe stoep cream: 200 g mascarpone, 60 g icing sugar|show stoep cream", "stoep cream"],
    [
      "keep this as my dusk shells recipe: 90 g whites, 115 g almond flour|read me dusk shells",
      "dusk shells",
    ],
    ["timer 20 min, call it brekkie tray|timers", "brekkie tray"],
    ["note: cranachin, 40 macarons|my notes", "cranachin"],
  ])("a name that she gives: %s", async (turns, name) => {
    const { ask } = baker();
    let last: Awaited<ReturnType<typeof ask>> = [];
    for (const turn of turns.split("|")) last = await ask(turn);
    expect(JSON.stringify(last)).toContain(name);
  });
  it("and a slip in a name that she gave is mended toward it", async () => {
    const { ask } = baker();
    await ask("save recipe stoep cream: 200 g mascarpone, 60 g icing sugar");
    const [answer] = await ask("scale steop cream by 2");
    expect(answer?.figures).toContainEqual({ name: "mascarpone", value: 400, unit: "g" });
  });
  it("a day of the week for another, though more is said of that one", () => {
    for (const day of ["mondays", "tuesdays", "wednesdays", "thursdays", "fridays", "tuesday"])
      expect(mend(day, { before: "log", next: "batch" }), day).toBeUndefined();
  });
  it("the letter of a currency before its number, and a word with a mark in it", async () => {
    expect(
      (await baker().ask("R96 ingredients plus R24 for boxes, what must i charge for a 50% margin"))[0]
        ?.headline,
    ).toContain("240");
    expect(await answered("260g b'cream, lemon flavor")).toEqual(
      await answered("260g buttercream, lemon flavor"),
    );
  });
});
