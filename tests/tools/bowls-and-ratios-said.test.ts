/**
 * Bowls that were dosed and ganaches that were built, told of again: what brings one down, a part of it, a weight put
 * right, the flavor before, both ends; the kind, the use and the weights of a ganache changed. Worked by hand.
 * Doses in percent of the mix: flavor 3 to 5 in buttercream, 3 to 4 in ganache (common practice); gel color 0.5 to 1.5,
 * powder color 0.3 to 1, extract 1 to 2, freeze-dried fruit 3 to 8 in buttercream and 2 to 5 in ganache, purée 5 to 10
 * in ganache, tea powder 1.5 to 3, salt 0.2 to 0.5, spirit 2 to 5, nut paste 10 to 20 (from memory). Plain mix to add:
 * flavor over the top of the range less the bowl, to flavor over its middle less the bowl (arithmetic). Chocolate to
 * cream by weight: dark 1, 1.25 and 2 to pour, pipe and cut; milk 1.5, 2 and 2.5; white 2, 2.5 and 3.5 (common
 * practice). An ounce is 28.349523125 g.
 */
import { describe, expect, it } from "vitest";
import { baker, lastOf } from "../support/ask.ts";
import { expectIn, type Wanted } from "../support/figures.ts";

type Figures = Readonly<Record<string, Wanted>>;

/** The last turn's answers: each with the figures that are wanted of it. */
async function holds(turns: string, ...wanted: Figures[]) {
  const answers = await lastOf(turns);
  for (const [at, figures] of wanted.entries()) expectIn(answers[at], figures, 4, turns);
}

const each = (cases: readonly [string, ...Figures[]][]) => it.each(cases)("%s", holds);

describe("plain mix for a bowl that holds too much", () => {
  const strong = "9 g peach flavor in 150 g buttercream, too strong?";
  // 9 / 5 % - 150 = 30, 9 / 4 % - 150 = 75
  const toAdd: Figures = { "add base": [30, 75] };
  each([
    [`${strong}|plain buttercream needed to tame it?`, toAdd],
    [`${strong}|how much plain then`, toAdd],
    [`${strong}|plain needed?`, toAdd],
    [`${strong}|what would calm it down`, toAdd],
    [`${strong}|buttercream required to mellow it?`, toAdd],
    [`${strong}|to get it back into range i need what`, toAdd],
    [`${strong}|grams of plain please`, toAdd],
    [`${strong}|whats the fix`, toAdd],
    // in one breath: 15 / 5 % - 250 = 50, 15 / 4 % - 250 = 125
    ["15 g melon flavour landed in 250 g buttercream, how much plain tames that", { "add base": [50, 125] }],
    // another weight and the mend at once: 11 g go to 220 and 275, 12 g to 240 and 300
    [
      `${strong}|hm the scale was drifting, more like 11 g went in. how much plain then`,
      { "add base": [70, 125] },
    ],
    [`${strong}|wrong, 12 g slipped in. extra buttercream?`, { "add base": [90, 150] }],
    [`${strong}|id say 12 to be honest, what now`, { "add base": [90, 150] }],
    // 9 g in 150 + 75 g
    [`${strong}|is there enough if i add 75 plain`, { share: 4 }],
  ]);
  it("buttercream that macarons need is none to add", async () => {
    const { ask } = baker();
    await ask(strong);
    const [answer] = await ask("buttercream needed for 30 macarons");
    expect(answer?.tool).toBe("fill");
  });
});

describe("the percentage that a bowl stands at", () => {
  const mended = "12 g strawberry flavoring in the 220 g buttercream. what do i add to tone it down";
  // 12 / 220
  const stands: Figures = { share: 5.454545 };
  each([
    [`${mended}|whats the percentage as it stands`, stands],
    [`${mended}|what percent am i sitting at`, stands],
    [`${mended}|as a percentage that is?`, stands],
    [`${mended}|what does that work out to in percent`, stands],
    [`${mended}|how strong is it now`, stands],
  ]);
  it("the fat of a ganache is none of it", async () => {
    const { ask } = baker();
    await ask("14 g coconut flavor in 240 g ganache, ok?");
    const [answer] = await ask("how many percent fat has the ganache");
    expect(answer?.figures ?? []).toEqual([]);
  });
});

describe("a part of the bowl", () => {
  const bowl = "260 g buttercream, how much rose flavor";
  // 3 and 5 % of 180
  const part: Figures = { flavor: [5.4, 9] };
  each([
    [`${bowl}|hm, actually im only gonna flavor one eighty of it`, part],
    [`${bowl}|im flavouring 180 of it only`, part],
    [`${bowl}|lets flavor just 180 g of the buttercream`, part],
    [`${bowl}|i changed my mind, im only going to flavor 180 g of that`, part],
    // what is held back: 260 - 80
    [`${bowl}|im holding back 80 g`, part],
    [`${bowl}|im keeping 80 of it plain`, part],
    // of 520: a half, a third, 200, 520 - 200
    [
      "gel color for 520 g batter|powder color?|im only tinting half the batter",
      { "powder color": [0.78, 2.6] },
    ],
    ["gel color for 520 g batter|im just colouring a third of the batter", { "gel color": [0.866667, 2.6] }],
    ["gel color for 520 g batter|only dyeing 200 g of it", { "gel color": [1, 3] }],
    ["gel color for 520 g batter|keep 200 of it white", { "gel color": [1.6, 4.8] }],
    // in the form that it had: 1 and 2 % of 150
    ["lemon extract for 300 g buttercream|only half the bowl gets lemon", { "lemon extract": [1.5, 3] }],
  ]);
});

describe("a weight put right by the number that it isn't", () => {
  each([
    // 8 / 4 %, 8 / 3 %
    [
      "11 g hazelnut flavour, how much ganache does that do|just weighed the bottle properly and its 8 not 11",
      { base: [200, 266.666667] },
    ],
    [
      "11 g hazelnut flavour, how much ganache does that do|reweighed it and theres only 8",
      { base: [200, 266.666667] },
    ],
    ["15 g melon flavour in 250 g buttercream, ok?|its 300 not 250", { share: 5 }],
    ["15 g melon flavour in 250 g buttercream, ok?|not 15 but 13", { share: 5.2 }],
    // 13 / 5 % - 250, 13 / 4 % - 250
    [
      "15 g melon flavour in 250 g buttercream, how do i fix it|no longer 15, its 13",
      { "add base": [10, 75] },
    ],
    ["melon flavour for 250 g buttercream|not 250, 300", { flavor: [9, 15] }],
  ]);
  it("an oven that was looked at weighs nothing", async () => {
    const { ask } = baker();
    await ask("12 g orange flavor in 200 g buttercream, ok?");
    const [answer] = await ask("i checked the oven and it shows 160");
    expect(answer?.figures ?? []).toEqual([]);
  });
});

describe("both ends, one end, and the other way round", () => {
  const back = "8 g hazelnut flavour, how much ganache does that do";
  each([
    [
      "8g hazelnut flavour is all that the bottle gave up. whats the least and most ganache it stretches to",
      { base: [200, 266.666667] },
    ],
    [`${back}|and the minimum and the maximum?`, { base: [200, 266.666667] }],
    // the most mix takes the least percentage
    [`${back}|just the most it does`, { base: 266.666667 }],
    ["8 g hazelnut flavour, whats the least ganache i can put it in", { base: 200 }],
    // how strong it is, said as such: 4 %
    [`${back}|at the top of the range`, { base: 200 }],
    // 3 and 4 % of 250
    [`${back}|other way round now, theres 250 g of ganache, what does it want`, { flavor: [7.5, 10] }],
    [`${back}|ok the reverse, for 250 g`, { flavor: [7.5, 10] }],
    [`${back}|and if i have 250 g of ganache, how much do i need`, { flavor: [7.5, 10] }],
    [`${back}|is it ok in 250 g`, { share: 3.2 }],
  ]);
});

describe("another flavor, the one before it, and several at once", () => {
  const swapped =
    "240 g white choc ganache with freeze dried raspberry powder|passion fruit puree instead of the powder";
  each([
    [`${swapped}`, { "passion fruit purée": [12, 24] }],
    // 3 and 8 % of 240
    [
      `${swapped}|hm no, powder after all. but in buttercream, same weight`,
      { "raspberry freeze-dried powder": [7.2, 19.2] },
    ],
    [`${swapped}|id rather stick with the powder`, { "raspberry freeze-dried powder": [4.8, 12] }],
    [
      "240 g buttercream, hazelnut paste how much|and hazelnut flavor instead|nah the paste",
      { "hazelnut paste": [24, 48] },
    ],
    [
      "gel colour for 520 g of shell batter|i found also a colour in powder, how much from that one",
      { "powder color": [1.56, 5.2] },
    ],
    [
      "powder colour for 520 g of shell batter|i have colour as a gel, how much from this",
      { "gel color": [2.6, 7.8] },
    ],
    // 1.5 to 3 % and 0.2 to 0.5 % of 200
    [
      "matcha into a 320g mascarpone filling|and salt for it|matcha and salt again please but for 200 g",
      { "matcha powder": [3, 6] },
      { salt: [0.4, 1] },
    ],
    [
      "matcha into a 320g mascarpone filling|and salt for it|once more matcha plus salt with 200 g",
      { "matcha powder": [3, 6] },
      { salt: [0.4, 1] },
    ],
    // 200 sugar are 666.67 of the mix, half of it 333.33; 280 × 0.05 + 350 × 0.05 of a ganache of 630
    [
      "200 g sugar in a meringue buttercream, whites and butter?|half of that|caramel flavour for the batch",
      { flavor: [10, 16.666667] },
    ],
    ["350 g dark chocolate, how much cream for piping|rum for the batch", { rum: [12.6, 31.5] }],
  ]);
  it("the batter of an order is no flavor's", async () => {
    const { ask } = baker();
    await ask("filling for 40 macarons in milk chocolate ganache");
    await ask("instant coffee for that whole lot?");
    const [answer] = await ask("and back to the shells, batter for those 40");
    expect(answer?.tool).toBe("shells");
    // 88 shells of 0.53 × 3.8² g, 4 % of the batter stay behind
    expect(answer?.figures?.find(({ name }) => name === "batter")?.value).toBeCloseTo(
      (88 * 0.53 * 3.8 ** 2) / 0.96,
      4,
    );
  });
});

describe("a ganache built by its whole weight", () => {
  const whole = "630 g milk ganache all in, for filling. weights?";
  each([
    // 700 / 2.25, 500 / 2.25, 400 / 3.5
    [`${whole}|700 of dark`, { chocolate: 388.888889, cream: 311.111111, total: 700 }],
    [`${whole}|dark instead, 500`, { cream: 222.222222, total: 500 }],
    [`${whole}|and 400 white`, { chocolate: 285.714286, cream: 114.285714, total: 400 }],
    [`${whole}|and if i make the 350 in dark`, { chocolate: 194.444444, cream: 155.555556 }],
    [`${whole}|380 milk then, for rolling`, { chocolate: 271.428571, cream: 108.571429 }],
    // what there is of chocolate is chocolate
    [`${whole}|i have 300 dark`, { cream: 240, chocolate: 300 }],
    [`${whole}|300 g dark chocolate, how much cream`, { cream: 240, chocolate: 300 }],
    // for another use: 630 / 3.5
    [`${whole}|set hard enough to cut i mean`, { chocolate: 450, cream: 180 }],
    [`${whole}|stiff enough for rolling`, { chocolate: 450, cream: 180 }],
    [`${whole}|to roll, sorry`, { chocolate: 450, cream: 180 }],
    [
      "so i would need white chocolate ganache for between the shells, 420 g in total, what is in it of each",
      { chocolate: 300, cream: 120, "chocolate, with butter": 227.027027, "butter, with butter": 56.756757 },
    ],
    ["white chocolate ganache|370 altogether", { chocolate: 264.285714, cream: 105.714286 }],
    // of one that drips: the cream stays
    [
      "i want white chocolate ganache that drips down the side, i have 100g cream. howmuch chocolate|and one that is firm that i can cut in little squares",
      { chocolate: 350 },
    ],
  ]);
});

describe("a ganache of another kind, and cream that is poured to make it", () => {
  const dark = "300 g dark chocolate, cream for piping";
  each([
    [
      "350 g dark chocolate, how much cream for piping|what would it be if it was milk chocolate?",
      { cream: 175 },
    ],
    [`${dark}|wait its not dark, its milk`, { cream: 150 }],
    [`${dark}|i was wrong, it isnt dark but white`, { cream: 120 }],
    ["how much cream do i pour over 300 g dark chocolate", { cream: 240 }],
    ["300 g milk chocolate, how much cream to pour over a cake", { cream: 200 }],
    // 210 / 1.5 - 120
    [
      "the dark one set like a brick, 210 g chocolate in it and 120 g cream, cant pipe it|oops it wasnt dark, it was milk, for pouring",
      { "add cream": 20 },
    ],
    // 12 oz of what was weighed: 340.194278 / 2, × 1.25
    ["12 oz in grams|its milk chocolate - cream to make it pipeable?", { cream: 170.097139 }],
    ["12 oz in grams|thats how much white chocolate i have. cream to make it firm?", { cream: 97.198365 }],
    ["12 oz in grams|its cream, how much dark chocolate for piping", { chocolate: 425.242847 }],
  ]);
});

describe("a ganache gone wrong, and its two weights", () => {
  const runny = "dark ganache too runny, 150 g chocolate and 150 g cream, for piping";
  each([
    // 1.25 × 220 - 250; 400 / 2 - 150; 2.5 × 150 - 250
    ["Dark ganache too slack to pipe. 250 choc 220 cream.", { "add chocolate": 25 }],
    [
      "Dark ganache too slack to pipe. 250 choc 220 cream.|Another bowl, milk, too stiff to pipe: 400g choc, 150g cream",
      { "add cream": 50 },
    ],
    ["another bowl, white, too runny to pipe: 250 g choc, 150 g cream", { "add chocolate": 125 }],
    ["too hard for piping: 320 g milk choc, 120 g cream", { "add cream": 40 }],
    // not enough of what it should be is the other fault: 1.25 × 200 - 200, 300 / 1.25 - 150
    ["dark ganache isnt stiff enough to pipe, 200 g chocolate 200 g cream", { "add chocolate": 50 }],
    ["dark ganache: 300 g chocolate 150 g cream, not soft enough to pipe", { "add cream": 90 }],
    [`${runny}|what if it was 200 g of each`, { "add chocolate": 50 }],
    [`${runny}|if both were 200`, { "add chocolate": 50 }],
    [`${runny}|suppose id used 100 g apiece`, { "add chocolate": 25 }],
    // 2.5 × 150 - 240
    [
      "240 g milk choc with 120 g cream, what sort of ganache is this|how much more chocolate to make it firm|and if the cream had been 150?",
      { "add chocolate": 135 },
    ],
    [`${runny}|with the cream at 130`, { "add chocolate": 12.5 }],
    [`${runny}|had the chocolate been 160 instead`, { "add chocolate": 27.5 }],
    ["200 g of each, dark and cream, what is that good for", { ratio: 1, total: 400 }],
  ]);
  it("a bare number may be of either: it asks", async () => {
    const { ask } = baker();
    await ask(runny);
    const [asked] = await ask("what if id only put 120 in");
    expect(asked?.status).toBe("asking");
    const [answer] = await ask("the chocolate");
    // 1.25 × 150 - 120
    expect(answer?.figures?.find(({ name }) => name === "add chocolate")?.value).toBeCloseTo(67.5, 4);
  });
});
