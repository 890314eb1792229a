/** Notes told and kept, notes asked for, timers in a row and stopped, stock taken back out, habits from now on. */
import { describe, expect, it } from "vitest";
import { fitted } from "../../src/tools/note/fitted.ts";
import { baker } from "../support/ask.ts";

/** The last answer of some turns. */
async function last(...turns: string[]) {
  const { ask, record } = baker();
  let answers = await ask(turns[0] ?? "");
  for (const turn of turns.slice(1)) answers = await ask(turn);
  return { answers, answer: answers[0], record: record() };
}

/** Minutes and names of the timers that run after some turns. */
async function running(...turns: string[]): Promise<string[]> {
  const { record } = await last(...turns);
  return record.timers
    .filter(({ state }) => state === "running")
    .map(({ set_ms, due_ms, label }) => `${(due_ms - set_ms) / 60_000} ${label}`.trim());
}

describe("a batch told and kept by the order at its end", () => {
  // The numbers are the ones that stand in the sentence; Saturday 14 March is today.
  it.each([
    [
      "so this morning i did two trays of brown butter macarons they were full and shiny eight out of ten save that please",
      { flavors: ["brown butter"], trays: 2, rating: 8, date: "2026-03-14" },
    ],
    [
      "real quick before i forget - made lavender honey today, 60 of them, sides bulged a little, id give it 7 out of 10, write it up",
      { flavors: ["lavender honey"], macarons: 60, rating: 7 },
    ],
    [
      "yesterday i made 40 raspberry ones and they all came out hollow remember that",
      { flavors: ["raspberry"], macarons: 40, problems: ["hollow"], date: "2026-03-13" },
    ],
    [
      "made fig macarons sunday 7 out of 10 log it for me",
      { flavors: ["fig"], rating: 7, date: "2026-03-08" },
    ],
    [
      "before i forget: did 30 vanilla today, a couple cracked, 8/10",
      { flavors: ["vanilla"], macarons: 30, problems: ["cracked tops"], rating: 8 },
    ],
    ["quick one before i forget, pistachio batch came out hollow", { flavors: ["pistachio"] }],
    ["todays batch was cherry, 5 out of 10, get it written down", { flavors: ["cherry"], rating: 5 }],
    ["did a batch of lemon yesterday, feet were lovely, keep that for later", { flavors: ["lemon"] }],
    [
      "today we did three trays of mint, tops cracked on one, file that away",
      { flavors: ["mint"], trays: 3, problems: ["cracked tops"] },
    ],
  ])("%s", async (said, note) => {
    const { record } = await last(said);
    expect(record.notes).toHaveLength(1);
    expect(record.notes[0]).toMatchObject(note);
  });

  it.each([
    "what did i do with the lemon, save that",
    "made 24 macarons today, they cost 9.60 all in, save that",
    "before i forget, set a timer for 10 min",
    "before i forget how much vanilla for 200 g buttercream",
    "i used 4 % vanilla last time and did 300 g buttercream, save that",
  ])("is no note: %s", async (said) => expect((await last(said)).record.notes).toHaveLength(0));
});

describe("what needs logging, with its day before a colon", () => {
  it.each([
    ["need to log yesterday: lemon poppyseed, edges browned, pulled em late", "2026-03-13", "browned"],
    ["gotta log yesterday: rose, tops wrinkled", "2026-03-13", "wrinkled tops"],
    ["i still need to log friday: fig, cracked", "2026-03-13", "cracked tops"],
    ["have to record sunday: plum batch, edges browned", "2026-03-08", "browned"],
    ["time to log yesterdays lot: kiwi, hollow", "2026-03-13", "hollow"],
    ["can i log yesterday: kiwi, hollow", "2026-03-13", "hollow"],
  ])("%s", async (said, date, problem) => {
    const { record } = await last(said);
    expect(record.notes[0]).toMatchObject({ date, problems: [problem] });
  });

  it("is found by its flavor, and its day is asked behind it", async () => {
    const turns = ["need to log yesterday: lemon poppyseed, edges browned"];
    const found = await last(...turns, "what happened with the lemon poppyseed ones");
    expect(found.answer).toMatchObject({ tool: "recall", headline: expect.stringContaining("browned") });
    for (const asked of ["and what day was that", "when was that", "which date was it", "whens that from"]) {
      const day = await last(...turns, "look up lemon", asked);
      expect(day.answer).toMatchObject({ tool: "recall", headline: expect.stringMatching(/^Yesterday/) });
    }
  });
});

describe("more for the note on the table, behind a colon", () => {
  it.each([
    "tack this onto it: rested a full hour",
    "add this to the note: rested an hour",
    "stick this on the cherry one - rested an hour",
    "throw this in there too: rested 60 min",
    "scribble this on it: rested an hour",
    "append the following to it: rested an hour",
    "pop this on the end of it: rested an hour",
    "add one more thing to that note: rested an hour",
  ])("%s", async (said) => {
    const { record } = await last("new note, cherry batch, piped them kinda small", said);
    expect(record.timers).toHaveLength(0);
    expect(record.notes).toHaveLength(1);
    expect(record.notes[0]).toMatchObject({ flavors: ["cherry"], rest_min: 60 });
    expect(record.notes[0]?.text).toMatch(/rested (?:a full hour|an hour|60 min)$/);
  });
});

describe("a note's words stand as typed", () => {
  // turns of phrase that are read plainly take words out of the mask, and none out of the note
  it.each(["lol rested a full hour and no cracks", "rested a full hour haha and it was fine, 8 out of 10"])(
    "note: %s",
    async (said) => expect((await last(`note: ${said}`)).record.notes[0]?.text).toBe(said),
  );

  it("where a row of words fits best", () => {
    const row = "note lol a b c d and set e".split(" ");
    // "lol" is lost in the middle: note to d
    expect(fitted(["note", "a", "b", "c", "d"], row)).toEqual({ from: 0, to: 6 });
    expect(fitted(["set", "e"], row)).toEqual({ from: 7, to: 9 });
    // one word mended: at its place
    expect(fitted(["a", "x", "c"], row)).toEqual({ from: 2, to: 5 });
  });
});

describe("whether something stands in the notes", () => {
  it.each([
    "Have I got anything written down about rose?",
    "is there a note about rose",
    "whats on file for rose",
    "did i write anything about rose",
    "do i have a record of rose",
    "have i noted rose before",
    "rose - have i got anything on that",
    "is anything logged for rose",
    "can you pull rose up for me",
  ])("%s", async (said) =>
    expect((await last("note: rose, hollow", said)).answer).toMatchObject({
      tool: "recall",
      headline: "Today: rose, hollow",
    }),
  );

  it("is no such question: what the oven is put on", async () =>
    expect(
      (await last("recipe says 320 fahrenheit for a normal oven, mine is fan, how much i put on mine"))
        .answer,
    ).toMatchObject({ tool: "convert" }));
});

describe("timers", () => {
  it.each([
    ["three timers - 8 min oven preheat, 35 min rest, 50 min ganache", ["8 oven", "35 rest", "50 ganache"]],
    ["timers please - bake 14, rest 30, ganache 45", ["14 bake", "30 rest", "45 ganache"]],
    ["set timers: oven - 10 min, rest - 35 min", ["10 oven", "35 rest"]],
    ["oven - 10 min, rest - 35 min, ganache - 50 min", ["10 oven", "35 rest", "50 ganache"]],
  ])("%s", async (said, all) => expect(await running(said)).toEqual(all));

  it("a dash before one length still takes it off", async () =>
    expect(await running("timer for rest 40 min", "rest - 5 min")).toEqual(["35 rest"]));

  it.each([
    "k stop purple trays",
    "k cancel it",
    "kk kill it",
    "okie cancel purple trays",
    "k never mind the purple trays",
    "alright drop the purple trays one",
    "yeah no ditch that one",
    "call off purple trays",
    "im done with purple trays",
    "dont need it anymore",
  ])("%s", async (said) => expect(await running("timer 20 min for the purple trays", said)).toEqual([]));

  it("what names no timer stops none", async () =>
    expect(await running("timer 20 min for the purple trays", "forget the purple icing")).toEqual([
      "20 purple trays",
    ]));

  // 24 h is the book's time to mature
  it.each([
    "how long till theyre done maturing",
    "how many hours till theyre matured",
    "when is the maturing over",
    "are they done maturing yet",
  ])("%s", async (said) =>
    expect((await last("start the mature timer", said)).answer).toMatchObject({
      tool: "timer",
      figures: [{ name: "left", value: 1440, unit: "min" }],
    }),
  );

  it("of a step that no timer runs for it is the rule that is asked", async () =>
    expect((await last("set a 14 min bake timer", "when are they done maturing")).answer?.tool).not.toBe(
      "timer",
    ));

  it.each([
    "my tops cracked agian :( also set a 25 min rest timer for the next tray",
    "tops cracked again, timer 25 min for the next tray",
    "shells cracked :( start a 25 min rest timer",
    "shells stuck to the mat. 25 min cooling timer please",
  ])("a fault told beside it is answered too: %s", async (said) => {
    const { answers } = await last(said);
    expect(answers.map(({ tool }) => tool)).toEqual(["trouble", "timer"]);
    expect(answers[1]?.figures).toMatchObject([{ name: "left", value: 25, unit: "min" }]);
  });
});

describe("stock that goes out again", () => {
  // 3 lb = 1360.77711 g, less 12 oz = 340.1942775 g
  it("12 oz of 3 lb", async () => {
    const { answer } = await last(
      "put 3 lb powdered sugar in the pantry",
      "took 12 oz of powdered sugar back out, used it for shells",
      "how much powdered sugar do i have left",
    );
    expect(answer?.figures?.[0]?.value).toBeCloseTo(1020.5828325, 6);
  });
  it.each([
    "grabbed 100 g butter off the shelf",
    "got 100 g butter out again",
    "i took 100 g of butter back out",
    "100 g of butter left the pantry",
    "fetched 100 g of butter",
  ])("%s", async (said) => {
    const { answer } = await last("pantry: 1 kg butter", said, "how much butter is left");
    expect(answer?.figures).toMatchObject([{ value: 900, unit: "g" }]);
  });
});

describe("a habit from now on", () => {
  it.each([
    "going forward i pipe 4.5 cm shells",
    "moving forward, i pipe 4.5 cm",
    "as of today i pipe 45 mm",
    "from here on out my shells are 45 mm",
    "these days i pipe 45 mm",
    "i pipe 4.5 cm these days",
    "for now on i pipe 4.5 cm",
    "in the future i'll pipe 4.5 cm shells",
    "henceforth my shells are 45 mm",
    "all my shells are 4.5 cm going forward",
  ])("%s, and undone", async (said) => {
    expect((await last(said)).record.bench.diameter_mm).toBe(45);
    expect((await last(said, "oops undo")).record.bench.diameter_mm).toBeUndefined();
  });

  it.each([
    ["from today i bake 14 min", "bake_min", 14],
    ["starting today i rest my shells 40 min", "rest_min", 40],
    ["my oven runs 10 c hot", "oven_offset_c", 10],
  ] as const)("%s", async (said, key, value) => {
    const { record } = await last(said);
    expect(record.bench[key]).toBe(value);
    expect(record.timers).toHaveLength(0);
  });

  it("a timer stays one", async () =>
    expect(await running("starting now, 40 min timer")).toEqual(["40 timer"]));
});
