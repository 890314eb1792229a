/**
 * Timers by color, tray, batch or taste that are set, changed, asked for and stopped while something else is asked in
 * between; lengths taken from an answer or a note; a size told behind a sizing; a count gone back to with a new hour;
 * recipes scaled again and again. By hand: filling 0.42 d² and batter 0.53 d² g at d in cm over 0.92 and 0.96, a tenth
 * more shells than macarons; a recipe with no other stands 100 : 130 : 130 : 100; own recipes by whites now over whites
 * then; a flavor 1.5 to 4 % by its row.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

interface Wanted {
  tool?: string;
  status?: string;
  /** Figures by their names. */
  has?: Readonly<Record<string, number>>;
  /** What runs behind the turn: "pink 35, blue 40", a word of each name and the minutes left. */
  runs?: string;
  says?: RegExp;
  /** The answer of a chat that says it plainly, in one turn. */
  as?: string;
}
type Chat = readonly (readonly [say: string, wanted?: Wanted])[];

async function hold(chat: Chat): Promise<void> {
  const { ask, record } = baker({ now: "2026-03-14T10:00:00" });
  const now_ms = new Date("2026-03-14T10:00:00").getTime();
  for (const [say, wanted] of chat) {
    const answers = await ask(say);
    const answer = answers[0];
    if (!wanted) continue;
    const told = `${say}: ${answers.map((each) => `${each.tool}/${each.status}: ${each.headline}`).join(" || ")}`;
    expect(answers.length, told).toBe(1);
    if (wanted.tool) expect(answer?.tool, told).toBe(wanted.tool);
    expect(answer?.status, told).toBe(wanted.status ?? "answered");
    if (wanted.says) expect(answer?.headline, told).toMatch(wanted.says);
    for (const [name, value] of Object.entries(wanted.has ?? {})) {
      const own = answer?.figures?.find((each) => each.name === name);
      expect(own?.value, `${told}, ${name}`).toBeCloseTo(value, 2);
    }
    if (wanted.runs !== undefined) {
      const running = record().timers.filter(({ state }) => state === "running");
      const each = wanted.runs.split(", ").filter(Boolean);
      const list = running.map((one) => `${one.label} ${(one.due_ms - now_ms) / 60_000}`);
      expect(list.length, `${told}; runs ${list}`).toBe(each.length);
      for (const one of each) {
        const words = one.split(" ");
        expect(
          list.some((own) => words.every((word) => own.split(" ").includes(word))),
          `${told}; ${one} in ${list}`,
        ).toBe(true);
      }
    }
    if (wanted.as !== undefined) {
      const plain = await baker({ now: "2026-03-14T10:00:00" }).ask(wanted.as);
      expect(answer?.headline, told).toBe(plain[0]?.headline);
    }
  }
}

const chats = (list: readonly Chat[]) =>
  it.each(list.map((chat) => [chat.map(([say]) => say).join("|"), chat] as const))("%s", (_, chat) =>
    hold(chat),
  );

describe("timers by color, tray, batch and taste", () => {
  chats([
    [
      ["timer 25 min for the green shells", { runs: "green 25" }],
      ["and another 20 minutes for the yellow ones", { runs: "green 25, yellow 20" }],
      ["knock 5 off the green", { runs: "green 20, yellow 20" }],
      ["10 more for the yellow", { runs: "green 20, yellow 30" }],
      ["how long on the yellow ones", { tool: "timer", has: { left: 30 } }],
    ],
    [
      ["start a timer 12 min top tray", { runs: "top 12" }],
      ["another 14 min for the bottom one", { runs: "top 12, bottom 14" }],
      ["take 2 off the bottom one", { runs: "top 12, bottom 12" }],
      ["which ones are on", { tool: "timer", says: /top.*bottom|bottom.*top/ }],
    ],
    [
      ["batch one 18 min timer", { runs: "1 18" }],
      ["another 16 min for batch two", { runs: "1 18, 2 16" }],
      ["add 2 to batch one", { runs: "1 20, 2 16" }],
      ["how long has batch two got", { tool: "timer", has: { left: 16 } }],
      ["stop batch one", { runs: "2 16" }],
    ],
    [
      ["timer 30 min vanilla shells", { runs: "vanilla 30" }],
      ["another 25 min on the coffee ones please", { runs: "vanilla 30, coffee 25" }],
      ["5 more on the coffee", { runs: "vanilla 30, coffee 30" }],
      ["whats still on", { tool: "timer", says: /vanilla.*coffee|coffee.*vanilla/ }],
    ],
    [
      ["red shells 35 min", { runs: "red 35" }],
      ["another 30 min for white ones", { runs: "red 35, white 30" }],
      ["give the white 5 more", { runs: "red 35, white 35" }],
      ["stop the red ones", { runs: "white 35" }],
      ["what timers are still on", { tool: "timer", has: { left: 35 }, says: /white/ }],
    ],
    [
      ["timer 20 min for the mint ganache", { runs: "mint 20" }],
      ["a second one of 30 min for the rose ganache", { runs: "mint 20, rose 30" }],
      ["5 off the rose", { runs: "mint 20, rose 25" }],
      ["how long for the mint one", { tool: "timer", has: { left: 20 } }],
    ],
    [
      ["40 min timer for the purple shells", { runs: "purple 40" }],
      ["how much ganache for 30 macarons"],
      ["another half hour for the orange ones", { runs: "purple 40, orange 30" }],
      ["are any timers on", { tool: "timer", says: /orange.*purple/ }],
      ["stop them both", { runs: "" }],
    ],
    [
      ["timer 40 min pink shells", { runs: "pink 40" }],
      ["stop that one", { runs: "" }],
      ["which timers are on", { tool: "timer", says: /No timers/ }],
    ],
    [
      ["timer 15 min lemon", { runs: "lemon 15" }],
      ["timer 18 min lime", { runs: "lemon 15, lime 18" }],
      ["stop the lime", { runs: "lemon 15" }],
      ["whats on now", { tool: "timer", has: { left: 15 }, says: /lemon/ }],
    ],
    [
      ["timer 40 min pink shells", { runs: "pink 40" }],
      ["how long on the green ones", { tool: "timer", says: /No timer is called green/ }],
      ["another 10 on the pink", { runs: "pink 50" }],
      ["another 5 min for the pink ones", { runs: "pink 55" }],
    ],
    [
      ["timer 16 min tray a", { runs: "a 16" }],
      ["one more of 14 min for tray b", { runs: "a 16, b 14" }],
      ["2 more on tray a", { runs: "a 18, b 14" }],
      ["1 less on tray b", { runs: "a 18, b 13" }],
      ["how long on a", { tool: "timer", has: { left: 18 } }],
    ],
  ]);
});

describe("more or less for a timer behind other questions", () => {
  chats([
    [
      ["start the bake timer", { runs: "bake 15" }],
      ["how much flavor for 190 g ganache", { tool: "dose" }],
      ["bake needs 3 more", { runs: "bake 18" }],
    ],
    [
      ["timer 12 min for the pink tray", { runs: "pink 12" }],
      ["how much vanilla extract for 200 g buttercream", { tool: "dose" }],
      ["give the pink 4 more", { runs: "pink 16" }],
      ["2 off the pink", { runs: "pink 14" }],
    ],
    [
      ["rest timer 30 min", { runs: "rest 30" }],
      ["how many macarons from 500 g batter", { tool: "shells" }],
      ["give the rest another 10", { runs: "rest 40" }],
      ["5 extra for the rest", { runs: "rest 45" }],
    ],
    [
      ["bake timer 14 min"],
      ["cooling timer 20 min", { runs: "bake 14, cool 20" }],
      ["how much coffee flavor for 150 g ganache", { tool: "dose" }],
      ["let the bake have 2 more", { runs: "bake 16, cool 20" }],
      ["and the cooling 5 less", { runs: "bake 16, cool 15" }],
    ],
    [
      ["timer 20 min oven", { runs: "oven 20" }],
      ["2 percent of 300 g buttercream", { tool: "dose" }],
      ["give the oven 5 more", { runs: "oven 25" }],
    ],
    [
      ["timer 15 min lemon tray", { runs: "lemon 15" }],
      ["how much lemon flavor for 200 g buttercream", { tool: "dose" }],
      ["give the lemon tray 3 more", { runs: "lemon 18" }],
    ],
  ]);
});

describe("beside one that was given no name", () => {
  chats([
    [
      ["timer 25 min", { runs: "25" }],
      ["and one of 50 min for the curd", { runs: "25, curd 50" }],
      ["take 5 min off the curd", { runs: "25, curd 45" }],
      ["add 2 min to the curd timer", { runs: "25, curd 47" }],
    ],
    [
      ["timer 40 min", { runs: "40" }],
      ["bake timer 15 min", { runs: "40, bake 15" }],
      ["filling for 30", { tool: "fill" }],
      ["give the bake 3 more", { runs: "40, bake 18" }],
    ],
  ]);
});

describe("not of a timer, or not surely", () => {
  chats([
    // the bowl is spoken of last
    [
      ["timer 30 min for lilac", { runs: "lilac 30" }],
      ["split 600 g batter into lilac and green", { tool: "split" }],
      ["10 more for the lilac", { tool: "split", runs: "lilac 30" }],
    ],
    [
      ["timer 20 min pink"],
      ["how much more vanilla for 300 g buttercream", { tool: "dose", runs: "pink 20" }],
    ],
    [
      ["timer 20 min lemon"],
      ["lemon flavor for 200 g buttercream", { tool: "dose" }],
      ["5 more for the lemon", { status: "asking", runs: "lemon 20" }],
    ],
    [["timer 20 min pink"], ["give the blue another 15 min", { status: "asking", runs: "pink 20" }]],
    [
      ["bake timer 15 min"],
      ["how long do i bake them", { tool: "method" }],
      ["give it 3 more", { runs: "bake 18" }],
    ],
  ]);
});

describe("trays by their side, and more of them", () => {
  chats([
    [
      ["timer 14 min left tray", { runs: "left 14" }],
      ["and 16 for the right tray", { runs: "left 14, right 16" }],
      ["how many macs from 300 g batter", { tool: "shells" }],
      ["right tray needs 2 more", { runs: "left 14, right 18" }],
      ["how long on the left", { tool: "timer", has: { left: 14 } }],
      ["left one 1 less", { runs: "left 13, right 18" }],
    ],
    [
      ["timer 20 min for the top rack", { runs: "top 20" }],
      ["45 macarons, how much filling", { tool: "fill" }],
      ["10 more for the top rack please", { tool: "timer", runs: "top 30" }],
    ],
    [
      ["timer 18 min for batch a", { runs: "a 18" }],
      ["another 20 min for batch b", { runs: "a 18, b 20" }],
      ["how many macs from 300 g batter", { tool: "shells" }],
      ["b needs 2 more", { runs: "a 18, b 22" }],
    ],
    [
      ["timer 22 min caramel shells", { runs: "caramel 22" }],
      ["a further 20 min for the hazelnut ones", { runs: "caramel 22, hazelnut 20" }],
      ["dose of vanilla for 250 g ganache", { tool: "dose" }],
      ["hazelnut another 5", { runs: "caramel 22, hazelnut 25" }],
      ["stop the caramel ones", { runs: "hazelnut 25" }],
    ],
  ]);
});

describe("lengths taken from what was said", () => {
  const baked = ["baked 14 min", "baked 16 min", "baked 18 min"].map(
    (how) => [`log cherry batch, ${how}`] as const,
  );
  chats([
    [
      ...baked,
      ["how long do i usually bake cherry"],
      ["timer for that long, call it cherry", { runs: "cherry 16" }],
    ],
    [
      ...baked,
      ["how long do i bake cherry usually"],
      ["set a timer for that, call it top tray", { runs: "top 16" }],
    ],
    [
      ...baked,
      ["how long do i usually bake cherry"],
      ["start one for that long for the cherry tray", { runs: "cherry 16" }],
    ],
    [...baked, ["how long do i usually bake cherry"], ["timer of that length please", { runs: "16" }]],
    [...baked, ["how long do i usually bake cherry"], ["set it for that long", { runs: "16" }]],
    [
      ...baked,
      ["how long do i usually bake cherry"],
      ["cherry timer for as long as that", { runs: "cherry 16" }],
    ],
    [["note lime batch, baked 17 min at 150"], ["timer that long, name it lime", { runs: "lime 17" }]],
    [["how long do shells rest"], ["timer for that long, call it pink", { runs: "pink 30" }]],
    [
      ["2.5 hours in minutes", { tool: "convert" }],
      ["set a timer for that long", { runs: "150" }],
    ],
  ]);
});

describe("a timer with nothing said of it", () => {
  chats([
    [
      ["cream for a piping ganache, 200 g milk chocolate", { tool: "ganache" }],
      ["i need a timer", { tool: "timer", status: "asking" }],
      ["25 minutes", { runs: "25" }],
      ["and the same ganache from 260 g chocolate", { tool: "ganache", has: { cream: 130 } }],
    ],
    [
      ["ganache from 200 g dark chocolate to pipe", { tool: "ganache" }],
      ["can i have a timer", { tool: "timer", status: "asking" }],
      ["half an hour", { runs: "30" }],
    ],
    [
      ["how much cream for 150 g white chocolate, for piping", { tool: "ganache" }],
      ["i want a timer please", { tool: "timer", status: "asking" }],
      ["20", { runs: "20" }],
    ],
    [
      ["how much cream for 150 g white chocolate, for piping", { tool: "ganache" }],
      ["set a timer for it", { runs: "ganache 45" }],
    ],
  ]);
});

describe("a size told for good behind a sizing", () => {
  const at = (d: number, count: number) => (0.42 * d * d * count) / 0.92;
  chats([
    [
      ["i always pipe 3.5 cm from now on", { tool: "bench" }],
      ["filling for 40", { tool: "fill", has: { filling: at(3.5, 40) } }],
      ["no, they are 4 cm, change it for good", { tool: "bench" }],
      ["filling for 40 then", { tool: "fill", has: { filling: at(4, 40) } }],
    ],
    [
      ["filling for 30", { tool: "fill", has: { filling: at(3.8, 30) } }],
      ["mine are 4.5 cm, keep that for good", { tool: "bench" }],
      ["filling for 30 macarons", { tool: "fill", has: { filling: at(4.5, 30) } }],
    ],
    [
      ["batter for 50 macarons", { tool: "shells" }],
      ["they are 4 cm from now on", { tool: "bench" }],
      ["filling for 50", { tool: "fill", has: { filling: at(4, 50) } }],
    ],
    [
      ["how much filling for 24", { tool: "fill" }],
      ["i pipe them 3 cm, save that", { tool: "bench" }],
      ["how much filling for 24", { tool: "fill", has: { filling: at(3, 24) } }],
    ],
    [
      ["how much filling for 24", { tool: "fill" }],
      ["actually they are 3.6 cm, remember that", { tool: "bench" }],
    ],
    [["filling for 40"], ["no 4 cm, permanently", { tool: "bench" }]],
    [["filling for 25"], ["mine come out 42 mm, save that please", { tool: "bench" }]],
    [["batter for 25"], ["it's 36 mm for me, permanently", { tool: "bench" }]],
    [["filling for 40"], ["make it 4 cm for good", { tool: "bench" }]],
    [["filling for 40"], ["sorry, 4.2 cm, and change that for next time too", { tool: "bench" }]],
    // the time of a step as well: 30 min was the rule's
    [
      ["how long do shells rest", { tool: "method" }],
      ["no, mine rest 45 min, keep that for good", { tool: "bench", has: { rest: 45 } }],
      ["start the rest timer", { runs: "rest 45" }],
    ],
    [
      ["how long do i bake them", { tool: "method" }],
      ["13 min, remember that", { tool: "bench", has: { bake: 13 } }],
    ],
    [
      ["filling for 40"],
      // for this once: no word of keeping
      ["no, they are 4 cm", { tool: "fill", has: { filling: at(4, 40) } }],
    ],
  ]);
});

describe("a count gone back to with another hour", () => {
  chats([
    [
      ["36 macarons for tomorrow 5 pm, when do i start", { says: /13:18/ }],
      ["only 24 macarons after all", { says: /13:37/ }],
      ["how much filling for them", { tool: "fill" }],
      ["and back to 36 for 6 pm tomorrow, when do i start", { says: /14:18/ }],
    ],
    [
      ["when do i start for 24 macarons tomorrow at 5 pm", { says: /13:37/ }],
      ["make it 36", { says: /13:18/ }],
      ["no back to 24, but for 6 pm", { says: /14:37/ }],
    ],
    [
      ["36 macarons tomorrow 5 pm, when do i start", { says: /13:18/ }],
      ["24 of them only", { says: /13:37/ }],
      ["bake timer 12 min", { tool: "timer" }],
      ["go back to 36 for 4 pm", { says: /12:18/ }],
    ],
    [
      ["36 macarons tomorrow 5 pm, when do i start", { says: /13:18/ }],
      ["batter for them", { tool: "shells" }],
      ["now 24, for 6 pm, when do i start", { says: /14:37/ }],
    ],
    [
      ["36 macarons for tomorrow 5 pm, when do i start", { says: /13:18/ }],
      ["24 instead", { says: /13:37/ }],
      ["back to 36 then, and at 6 pm", { says: /14:18/ }],
    ],
    [
      ["36 macarons for tomorrow 5 pm, when do i start", { says: /13:18/ }],
      ["how much filling for them", { tool: "fill" }],
      ["24 again for 5 pm tomorrow, start when", { says: /13:37/ }],
    ],
  ]);
});

describe("recipes scaled again and again", () => {
  const own = (whites: number) => ({
    whites,
    "almond flour": (140 * whites) / 110,
    "powdered sugar": (130 * whites) / 110,
    sugar: (90 * whites) / 110,
  });
  const house = (whites: number) => ({
    whites,
    "almond flour": 1.3 * whites,
    "powdered sugar": 1.3 * whites,
    "granulated sugar": whites,
  });
  const mine = "my recipe is 110 whites 140 almond 130 powdered 90 sugar, but ive 165 g whites";
  chats([
    [
      [mine, { tool: "scale", has: own(165) }],
      ["sorry its 132 g whites", { tool: "scale", has: own(132) }],
      ["bake timer 16 min", { tool: "timer" }],
      ["and with 99 g whites", { tool: "scale", has: own(99) }],
    ],
    [
      [mine, { tool: "scale", has: own(165) }],
      ["how long do shells rest", { tool: "method" }],
      ["and what if i have 88 g whites", { tool: "scale", has: own(88) }],
      ["with 121 g whites then", { tool: "scale", has: own(121) }],
    ],
    [
      [mine, { tool: "scale", has: own(165) }],
      ["set a timer 30 min rest", { tool: "timer" }],
      ["now for 143 g whites", { tool: "scale", has: own(143) }],
      ["how much filling for 40", { tool: "fill" }],
      ["and 77 g whites", { tool: "scale", has: own(77) }],
    ],
    [
      [mine, { tool: "scale", has: own(165) }],
      ["stop, whites are 154 g", { tool: "scale", has: own(154) }],
      ["how much vanilla extract for 200 g buttercream", { tool: "dose" }],
      ["only 66 g whites", { tool: "scale", has: own(66) }],
    ],
    [
      [mine, { tool: "scale", has: own(165) }],
      ["split 400 g batter in two", { tool: "split" }],
      ["and with 55 g egg whites?", { tool: "scale", has: own(55) }],
    ],
    // whites of the buttercream that was spoken of last
    [
      [mine, { tool: "scale", has: own(165) }],
      ["smbc from 80 g whites", { tool: "buttercream" }],
      ["and with 75 g whites", { tool: "buttercream" }],
    ],
    [
      ["i need 600 g shell batter", { tool: "scale", has: house(600 / 4.6) }],
      ["only have 120 g whites", { tool: "scale", has: house(120) }],
      ["how many macs does that make", { tool: "shells", has: { macarons: 34 } }],
    ],
    [
      ["i want to make 460 g of batter", { tool: "scale", has: house(100) }],
      ["ive only got 90 g whites", { tool: "scale", has: house(90) }],
    ],
    [
      ["need 552 g macaron batter please", { tool: "scale", has: house(120) }],
      ["timer 15 min bake", { tool: "timer" }],
      ["i have 80 g whites only", { tool: "scale", has: house(80) }],
    ],
    [["i need 690 g of shell batter", { tool: "scale", has: house(150) }]],
    [["i need about 460 g of macaron batter today", { tool: "scale", has: house(100) }]],
    [["make me 230 g batter", { tool: "scale", has: house(50) }]],
    [["we need 920 g batter for shells", { tool: "scale", has: house(200) }]],
    // how many it gives is asked, or it stands there already
    [["i need 600 g batter, how many macarons is that", { tool: "shells", has: { macarons: 37 } }]],
    [["i have 600 g shell batter", { tool: "shells", has: { macarons: 37 } }]],
    [["600 g batter, how many shells", { tool: "shells" }]],
  ]);
});
