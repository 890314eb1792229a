/**
 * What goes on from an order: more and fewer of it, without one of its kinds, in another size, shared out. By hand: a shell
 * takes 0.53 × d² g of batter (7.6532 g at 3.8 cm) of 96 % of it, 10 % spare shells, a macaron 0.42 × d² g of filling
 * (6.0648 g) of 92 % (from memory); flavor 3-5 % of buttercream and 3-4 % of ganache, a spirit 2-5 % (common practice, from
 * memory); an ounce 28.349523 g; two hours out of the fridge, one above 32 °C (USDA FSIS). The clock stands at 9:30.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

/** The last answer's calculator and a figure of it. */
async function behind(turns: string, name: string): Promise<[string | undefined, number | undefined]> {
  const { ask } = baker();
  let [answer] = await ask("hello");
  for (const turn of turns.split(" | ")) [answer] = await ask(turn);
  const figure = answer?.figures?.find((each) => each.name === name);
  return [answer?.tool, figure?.value ?? figure?.high];
}

type Row = readonly [turns: string, tool: string, figure: string, value: number];
const holds = async (turns: string, tool: string, name: string, value: number) => {
  const [by, found] = await behind(turns, name);
  expect(by).toBe(tool);
  expect(found).toBeCloseTo(value, 3);
};

describe("boxes are put to the order and taken off it, by what a box held", () => {
  it.each<Row>([
    // 36 macarons: 80 shells × 7.6532 / 0.96
    ["batter for 4 boxes of 6 | customer just rang, two more boxes, same size", "shells", "batter", 637.7667],
    ["batter for 4 boxes of 6 | two more boxes | how many trays then", "shells", "trays", 3],
    ["batter for 4 boxes of 6 | a couple more boxes", "shells", "macarons", 36],
    ["batter for 4 boxes of 6 | another box", "shells", "macarons", 30],
    ["batter for 4 boxes of 6 | an extra box of 4", "shells", "macarons", 28],
    ["batter for 4 boxes of 6 | forget one of the boxes", "shells", "macarons", 18],
    ["batter for 4 boxes of 6 | add 2 boxes | a box less", "shells", "macarons", 30],
    // 30 × 6.0648 / 0.92
    [
      "filling for 8 boxes of 6 | turns out three boxes less, one of the offices cancelled",
      "fill",
      "filling",
      197.7652,
    ],
    ["filling for 8 boxes of 6 | she cancelled 3 boxes", "fill", "filling", 197.7652],
    ["filling for 8 boxes of 6 | and what would it be for 3 boxes less", "fill", "filling", 197.7652],
    // 45 × 0.42 × 4² / 0.92, and 99 shells × 0.53 × 4² / 0.96
    ["macarons at 4 cm, seven boxes of 5, filling needed? | two more boxes", "fill", "filling", 328.6957],
    [
      "macarons at 4 cm, seven boxes of 5, filling needed? | two more boxes, batter too",
      "shells",
      "batter",
      874.5,
    ],
  ])("%s", holds);
  it.each<Row>([
    // as many boxes as are said, and a box's own size
    ["batter for 4 boxes of 6 | 6 boxes", "shells", "macarons", 36],
    ["batter for 4 boxes of 6 | how much batter for two more boxes", "shells", "macarons", 12],
    ["batter for 4 boxes of 6 | 3 boxes of 12", "shells", "macarons", 36],
  ])("a look-alike: %s", holds);
});

describe("pieces are put to it and taken off it", () => {
  it.each<Row>([
    // 48 macarons: 106 shells × 7.6532 / 0.96
    [
      "how much batter for three and a half dozen, and start the rest timer | an extra half dozen on that order, batter again",
      "shells",
      "batter",
      845.0408,
    ],
    [
      "batter for 3 dozen, and set a timer for 30 min | add half a dozen to that order",
      "shells",
      "macarons",
      42,
    ],
    ["batter for 48 macarons | the second one wants 12 fewer", "shells", "macarons", 36],
    ["batter for 24 macarons | another 12", "shells", "macarons", 36],
    ["shells for 15 macarons of each of 4 colours | 20 of each instead", "shells", "macarons", 80],
    [
      "the cafe takes half a dozen of each of five flavours every friday, total shells with the usual spares? | ten of each instead",
      "shells",
      "shells",
      110,
    ],
  ])("%s", holds);
});

describe("one kind is taken off it, or the spares come back", () => {
  it.each<Row>([
    [
      "batter for 36 pistachio and 24 lemon macarons | change of plan, they dropped the lemon",
      "shells",
      "macarons",
      36,
    ],
    [
      "batter for 24 pistachio, 18 rose and 12 coffee macarons | they don't want the rose any more",
      "shells",
      "macarons",
      36,
    ],
    // 18 × 6.0648 / 0.92
    ["filling for 18 rose, 12 lemon and 10 coffee macarons | leave out the coffee", "fill", "rose", 118.6591],
    [
      "filling for 18 rose, 12 lemon and 10 coffee macarons | leave out the coffee",
      "fill",
      "total",
      197.7652,
    ],
    [
      "order is 40 macs but skip the spares this time, shells and batter? | ok put the usual spares back in",
      "shells",
      "shells",
      88,
    ],
    [
      "how many shells for 40 macarons without spares | with the usual spares after all",
      "shells",
      "shells",
      88,
    ],
    ["batter for 144 macarons | egg whites to buy?", "shells", "macarons", 144],
  ])("%s", holds);
  it("leaves a note a note", async () => {
    const { ask } = baker();
    await ask("batter for 36 pistachio and 24 lemon macarons");
    const [answer] = await ask("note: dropped a lemon one on the floor");
    expect(answer?.tool).toBe("note");
  });
});

describe("a number with a point is a size", () => {
  it.each<Row>([
    // 90 × 0.53 × 3.5² / 0.96; 66 × 0.53 × 4.2² / 0.96
    [
      "I want exactly 90 shells, 4 cm wide, how many grams of batter | and if they were 3.5",
      "shells",
      "batter",
      608.6719,
    ],
    ["batter for 30 macarons | and if they were 4.2", "shells", "batter", 642.7575],
    // 24 × 0.42 × 4.2² / 0.92
    ["filling for 24 macarons | and if they were 4.2", "fill", "filling", 193.273],
    ["filling for 24 macarons | and if they were 30", "fill", "filling", 197.7652],
  ])("%s", holds);
});

describe("the bowl is shared out, and its parts are changed and flavored", () => {
  it.each<Row>([
    // 750 - 300 - 180; 900 - 400 - 250
    [
      "750 g of batter, 300 goes pink, 250 goes mint, the rest stays white | no the mint only wants 180",
      "split",
      "white",
      270,
    ],
    [
      "split 900 g batter: 400 blue, 300 green, the rest plain | the green should only get 250",
      "split",
      "plain",
      250,
    ],
    [
      "I need 920 g of batter, what do I weigh | the cream colour is two thirds of it and the other coral, grams each",
      "split",
      "cream",
      613.3333,
    ],
    [
      "make 650 g batter what do i weigh | a third of it is pink and the rest white",
      "split",
      "white",
      433.3333,
    ],
    // 99 shells × 7.6532 / 0.96 / 3; 1.5 % of it
    [
      "batter for 45 macarons, 15 pink, 15 green and 15 white | split that evenly by color",
      "split",
      "green",
      263.0788,
    ],
    [
      "batter for 45 macarons, 15 pink, 15 green and 15 white | split that evenly by color | gel for the pink bowl",
      "dose",
      "gel color",
      3.9462,
    ],
    // 480 × 3 / 6, and 5 % of it
    [
      "split 480 g smbc 3:2:1, rose gets the most then pistachio then lemon | and gel... no wait, flavor for the rose bowl",
      "dose",
      "flavor",
      12,
    ],
    ["split 480 g smbc 3:2:1, rose gets the least then pistachio then lemon", "split", "lemon", 240],
  ])("%s", holds);
});

describe("what goes into a ganache or a bowl that was weighed", () => {
  it.each<Row>([
    // 4 % of 400 + 120 + 40
    [
      "white ganache stiff as a brick, 400 g chocolate and 120 g cream, i want to pipe it | raspberry flavor for all 560 g then",
      "dose",
      "flavor",
      22.4,
    ],
    // 5 % of 200 + 160; of another bowl its own 5 %
    ["dark ganache from 200 g chocolate | and kirsch", "dose", "kirsch", 18],
    ["dark ganache from 200 g chocolate | mint flavor for 300 g buttercream", "dose", "flavor", 15],
    // 200 / 2
    ["dark ganache from 200 g chocolate | and milk", "ganache", "cream", 100],
    // 5 % of 8 × 28.349523
    [
      "put 9 g flavor in 240 g buttercream, ok? and whats 8 oz in g | thats the second bowl of buttercream, same flavour, how much",
      "dose",
      "flavor",
      11.3398,
    ],
  ])("%s", holds);
});

describe("a price by the piece", () => {
  it.each<Row>([
    // (15 + 3) / 0.4 / 24; 11.20 / 0.35 / 8
    [
      "$15 of ingredients and $3 of boxes for 24 macarons, 60% margin, what price | thats how much a macaron",
      "cost",
      "price per macaron",
      1.875,
    ],
    [
      "$15 of ingredients and $3 of boxes for 24 macarons, 60% margin, what price | each one then",
      "cost",
      "price per macaron",
      1.875,
    ],
    [
      "it costs me 11.20 euros to make a box of eight and i'd like 65 % margin, what do i charge | how much is that a piece",
      "cost",
      "price per macaron",
      4,
    ],
  ])("%s", holds);
});

describe("heat that was denied, and told afterwards", () => {
  const left = "the customer left the box on the back seat for an hour and 3/4, not hot out. fine?";
  it.each([
    [left, 2],
    ["macarons were in the van for 1.5 hours, it wasn't that hot. fine?", 2],
    ["macarons were in the car for 1.5 hours on a hot day. fine?", 1],
    [`${left} | and it was 34 c in the car`, 1],
    [`${left} | the car was 34 c inside`, 1],
    [`${left} | it was 22 c in the car`, 2],
  ])("%s", async (turns, hours) => holds(turns, "keep", "out of the fridge", hours));
});

describe("an even length is no timer's name", () => {
  it.each([
    ["two and a quarter hours for the buttercream, count it down | make that an even three hours", 180],
    ["timer for 1 h 40 | make it a round two hours", 120],
    ["even timer 10 minutes", 10],
  ])("%s", async (turns, minutes) => holds(turns, "timer", "left", minutes));
});
