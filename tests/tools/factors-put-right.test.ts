/**
 * "no, triple it" behind "double it" is three times what there was before, not six; "no, 350" behind a doubled ganache is
 * another weight of chocolate. Sums by hand: house formula 100 : 130 : 130 : 100 and dark ganache for piping 5 : 4
 * (common practice), flavor 3-5 % of buttercream.
 */
import { test } from "vitest";
import { type Case, expectFigures } from "../support/figures.ts";

const said: Case[] = [
  ["90 g whites, whats the rest|double it|no wait, triple", "scale", { whites: 270, "almond flour": 351 }],
  ["90 g whites, whats the rest|double it|sorry, half it", "scale", { whites: 45, "almond flour": 58.5 }],
  ["90 g whites, whats the rest|times 1.5|no, times 2", "scale", { whites: 180, "almond flour": 234 }],
  ["house recipe|double it|no, triple it", "scale", { whites: 300, "almond flour": 390 }],
  // said without taking anything back: on top
  ["90 g whites, whats the rest|double it|and triple it", "scale", { whites: 540 }],
  ["230 g buttercream, lemon flavor?|double it|no, triple it", "dose", { flavor: [20.7, 34.5] }],
  ["230 g buttercream, lemon flavor?|double it|actually triple it", "dose", { flavor: [20.7, 34.5] }],
  ["230 g buttercream, lemon flavor?|dubble it|no, triple it", "dose", { flavor: [20.7, 34.5] }],
  ["200 g dark choc, cream for piping|double it|no, triple it", "scale", { cream: 480 }],
  ["200 g dark choc, cream for piping|double it|no, 350 g chocolate", "ganache", { cream: 280 }],
  ["200 g dark choc, cream for piping|double it|no, 350", "ganache", { cream: 280 }],
  // 2-5 % rum of 150 + 120, then of that and 30 g of butter
  [
    "150 g dark chocolate melted into 120 g cream, how much rum can i add|there's 30 g butter in it as well, i forgot to say",
    "dose",
    { rum: [6, 15] },
  ],
  [
    "140 g whites, what goes with them for the shells|how many macarons does that make?|weigh it all out again but for 126 g whites",
    "scale",
    { whites: 126, "almond flour": 163.8 },
  ],
  ["timer 16 min|oops now knock ten mins of it", "timer", { left: 6 }],
  // 200, 160 and 100 g at three fifths
  [
    "200 g butter, 160 g sugar, 100 g cream, i want twice this|theres only 120 g butter, what does the rest come to",
    "scale",
    { sugar: 96, cream: 60 },
  ],
  ["share 390 g of buttercream out, two parts to one", "split", { "part 1": 260, "part 2": 130 }],
  ["shell batter, total should be 460 g, list the amounts", "scale", { whites: 100, "almond flour": 130 }],
  [
    "swiss buttercream with 110 g whites|what temperature do the whites and sugar go to|and if I just want 300 g altogether",
    "buttercream",
    { whites: 60, sugar: 90, butter: 150 },
  ],
];
test.each(said)("%s", expectFigures);
