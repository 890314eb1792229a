/** Notes out of the record and in again: nothing lost, nothing twice, what can't be read named, one undo for all. */
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvRows, csvText } from "../../src/cli/csv/csv.ts";
import type { Note } from "../../src/tools/contract/index.ts";
import { noteColumns } from "../../src/tools/exchange/columns.ts";
import { dayIn, orderOf } from "../../src/tools/exchange/dates.ts";
import { baker } from "../support/ask.ts";

/** Words as the record holds them: no control characters, no blanks at the ends. */
const words = fc
  .oneof(
    fc.string({ unit: "grapheme-composite", maxLength: 20 }),
    fc.string({
      unit: fc.constantFrom(";", "\\", '"', ",", "=", "'", "-", "+", "@", "a", "é", " "),
      maxLength: 10,
    }),
  )
  .map((text) => text.replace(/[\p{C}\p{Z}]+/gu, " ").trim());
const some = words.filter((text) => text !== "");
const several = fc.array(some, { maxLength: 3 });
const amount = fc.oneof(
  fc.integer({ min: 0, max: 5000 }),
  fc.double({ min: 0, max: 5000, noNaN: true }).map((n) => n + 0),
);
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const named = words.filter((text) => text !== "");

const note: fc.Arbitrary<Omit<Note, "id">> = fc
  .record({
    date: fc
      .date({ min: new Date("2000-01-01"), max: new Date("2099-12-31"), noInvalidDate: true })
      .map((day) => day.toISOString().slice(0, 10)),
    noted_ms: fc.integer({ min: 0, max: 4_000_000_000_000 }),
    text: some,
    flavors: several,
    problems: several,
    praise: maybe(fc.array(some, { minLength: 1, maxLength: 2 })),
    rating: maybe(fc.double({ min: 0, max: 10, noNaN: true }).map((n) => n + 0)),
    rating_said: maybe(some),
    macarons: maybe(amount),
    shells: maybe(amount),
    trays: maybe(amount),
    diameter_mm: maybe(amount),
    oven_c: maybe(amount),
    bake_min: maybe(amount),
    rest_min: maybe(amount),
    mature_h: maybe(amount),
    batter_g: maybe(amount),
    filling_g: maybe(amount),
    batter_left_g: maybe(amount),
    filling_left_g: maybe(amount),
    weights: maybe(fc.array(fc.record({ name: named, grams: amount }), { minLength: 1, maxLength: 3 })),
    doses: maybe(fc.array(fc.record({ flavor: named, percent: amount }), { minLength: 1, maxLength: 2 })),
    ignored: maybe(fc.boolean()),
    planned: maybe(fc.array(some, { minLength: 1, maxLength: 2 })),
  })
  .map(
    (all) =>
      Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Omit<Note, "id">,
  );

const numbered = (notes: readonly Omit<Note, "id">[]): Note[] =>
  notes.map((each, n) => ({ ...each, id: n + 1 }));
const record = (notes: Note[]) => ({
  notes,
  last_ids: { timers: 0, notes: notes.length, bottles: 0, stock: 0, formulas: 0, plans: 0 },
});

/** Exports by words, then imports the file by words into another record. */
async function through(notes: Note[], as: "csv" | "json", into: Note[] = []) {
  const from = baker({ record: record(notes) });
  const answer = await from.one(`export my notes as ${as}`);
  const text = from.files[0]?.text ?? "";
  const to = baker({ record: record(into), texts: { [`notes.${as}`]: text } });
  const taken = await to.one(`import notes from notes.${as}`);
  return { answer, text, to, taken };
}

describe("there and back", () => {
  it.each(["csv", "json"] as const)("by %s into an empty record gives the same notes", async (as) => {
    await fc.assert(
      fc.asyncProperty(fc.array(note, { minLength: 1, maxLength: 4 }), async (list) => {
        const notes = numbered(list);
        const { to, taken } = await through(notes, as);
        expect(taken.status, taken.headline).toBe("answered");
        expect(to.record().notes).toEqual(notes);
      }),
      { numRuns: 120 },
    );
  });

  it.each(["csv", "json"] as const)(
    "by %s a second time adds nothing, and one undo takes all of it back",
    async (as) => {
      await fc.assert(
        fc.asyncProperty(fc.array(note, { minLength: 1, maxLength: 4 }), async (list) => {
          const notes = numbered(list);
          const { to } = await through(notes, as);
          const again = await to.one(`import notes from notes.${as}`);
          expect(again.headline).toContain("Nothing new");
          expect(to.record().notes).toEqual(notes);
          await to.one("undo");
          expect(to.record().notes).toEqual([]);
        }),
        { numRuns: 40 },
      );
    },
  );

  it("two notes that are alike stay two", async () => {
    const one = { date: "2026-03-01", noted_ms: 1, text: "lemon", flavors: ["lemon"], problems: [] };
    const notes = numbered([one, one, { ...one, noted_ms: 2 }]);
    const { to } = await through(notes, "csv");
    expect(to.record().notes).toEqual(notes);
    const { to: half } = await through(notes, "csv", numbered([one]));
    expect(half.record().notes).toHaveLength(3);
  });

  it("another parser finds every field of the notes in the table", async () => {
    const { text } = await through(
      numbered([
        {
          date: "2026-03-01",
          noted_ms: Date.UTC(2026, 2, 1, 9),
          text: '=cmd|"x", crème\u00a0brûlée',
          flavors: ["crème brûlée", "salt; sea"],
          problems: ["hollow"],
          oven_c: 148.5,
          weights: [{ name: "whites", grams: 105 }],
        },
      ]),
      "csv",
    );
    const [row] = parse(text, { bom: true, columns: true }) as Record<string, string>[];
    expect(row).toMatchObject({
      date: "2026-03-01",
      text: '\'=cmd|"x", crème\u00a0brûlée',
      flavors: "crème brûlée; salt\\; sea",
      problems: "hollow",
      oven_c: "148.5",
      weights: "105 g whites",
      noted: "2026-03-01T09:00:00.000Z",
      rating: "",
    });
  });

  it("every field of a note has a column", () => {
    const keys = noteColumns.map(({ key }) => key);
    fc.assert(
      fc.property(note, (each) => {
        expect(Object.keys(each).filter((key) => !keys.includes(key as never))).toEqual([]);
      }),
    );
    expect(new Set(noteColumns.flatMap(({ names }) => names)).size).toBe(
      noteColumns.flatMap(({ names }) => names).length,
    );
  });
});

describe("what is exported", () => {
  it.each([
    "note: got it all in a spreadsheet now",
    "note: printed labels for the notes box",
    "take a note: export everything to csv tomorrow",
    "log: copied my notes into a spreadsheet",
  ])("a note that speaks of it is a note: %s", async (say) => {
    const one = baker();
    await one.one("note: lemon");
    expect((await one.one(say)).headline).toMatch(/^Noted/);
    expect(one.files).toEqual([]);
    expect(one.record().notes).toHaveLength(2);
  });

  it.each([
    ["export my notes as csv", "csv"],
    ["can you put my notes in a csv file", "csv"],
    ["save my batches as a spreadsheet", "csv"],
    ["can i get my batches in a spreadsheet", "csv"],
    ["csv of my notes", "csv"],
    ["download my notes", "csv"],
    ["my notes as json please", "json"],
    ["export all as json", "json"],
    ["json backup of everything", "json"],
    ["exprot my notes as csv", "csv"],
  ])("%s", async (say, end) => {
    const one = baker();
    await one.one("note: lemon");
    expect((await one.one(say)).status).toBe("answered");
    expect(one.files.map(({ name }) => name.split(".").at(-1))).toEqual([end]);
  });

  it("isn't on paper: it says what there is", async () => {
    const one = baker();
    await one.one("note: lemon");
    for (const say of ["print my notes", "pdf of my notes"]) {
      const answer = await one.one(say);
      expect([answer.tool, answer.status]).toEqual(["note", "declined"]);
      expect(answer.headline).toContain("export my notes as csv");
    }
    expect(one.files).toEqual([]);
  });

  it("everything holds every list and the bench, without ids", async () => {
    const one = baker();
    for (const line of [
      "note: lemon, 24 macarons",
      "my oven runs 10 hot",
      "pantry: 1 kg almond flour",
      "start the rest timer",
    ])
      await one.ask(line);
    const answer = await one.one("export everything as json");
    const held = JSON.parse(one.files[0]?.text ?? "");
    expect(Object.keys(held)).toEqual([
      "bowlside",
      "notes",
      "timers",
      "bottles",
      "stock",
      "formulas",
      "plans",
      "bench",
    ]);
    expect(held.notes[0].text).toBe("lemon, 24 macarons");
    expect(held.bench.oven_offset_c).toBe(10);
    expect(held.stock).toHaveLength(1);
    expect(held.timers).toHaveLength(1);
    expect(JSON.stringify(held)).not.toContain('"id"');
    expect(answer.headline).toContain("1 note, 1 timer, 1 cupboard item and 1 setting");
    // and its notes can be taken in
    const other = baker({ texts: { "all.json": one.files[0]?.text ?? "" } });
    const taken = await other.one("import my notes from all.json");
    expect(taken.headline).toContain("1 note added");
    // and what else it holds isn't passed over without a word
    expect(taken.cautions?.join()).toContain("the timers beside the notes, the stock beside the notes");
  });

  it("nothing, where there is nothing", async () => {
    const one = baker();
    expect((await one.one("export my notes as csv")).status).toBe("impossible");
    expect((await one.one("export everything as json")).status).toBe("impossible");
    expect(one.files).toEqual([]);
  });
});

describe("what is taken in", () => {
  const take = async (text: string, name = "batches.csv", notes: Note[] = []) => {
    const one = baker({ texts: { [name]: text }, record: record(notes) });
    return { answer: await one.one(`import notes from ${name}`), one };
  };

  it("a table written by hand: its words are read as a note's are", async () => {
    const { answer, one } = await take(
      'Date,Notes,Mood\n2026-03-01,"pistachio, 36 macarons, two hollow, 148 c 16 min, 9 out of 10",happy\n',
    );
    expect(answer.headline).toContain("1 note added");
    expect(answer.cautions?.join()).toContain("Mood");
    expect(one.record().notes[0]).toMatchObject({ date: "2026-03-01" });
  });

  it("its facts, where there are no columns for them", async () => {
    const { one } = await take(
      'date,notes\n2026-03-01,"pistachio, 36 macarons, two hollow, 148 c 16 min, 9 out of 10"\n',
    );
    expect(one.record().notes[0]).toMatchObject({
      flavors: ["pistachio"],
      problems: ["hollow"],
      macarons: 36,
      oven_c: 148,
      bake_min: 16,
      rating: 9,
    });
    expect((await one.one("how long do i usually bake the pistachio ones")).figures?.[0]?.value).toBe(16);
  });

  it("names each row that it can't read, and takes the others", async () => {
    const { answer, one } = await take(
      [
        "date,text,macarons,oven_c,weights,ignored",
        "2026-03-01,good,36,150,105 g whites; 130 g almond flour,no",
        "2026-02-30,no such day,,,,",
        "someday,no day,,,,",
        ",no date,,,,",
        "2026-03-02,no number,many,,,",
        '2026-03-03,comma,"1,5",,,',
        "2026-03-04,negative,-4,,,",
        "2026-03-05,list,,,a bit of sugar,",
        "2026-03-06,flag,,,,perhaps",
        "2026-03-07,too many cells,1,2,,,extra",
        '2026-03-08,"open quote,1,2,,',
      ].join("\n"),
    );
    expect(answer.headline).toContain("1 note added from batches.csv");
    expect(one.record().notes).toHaveLength(1);
    expect(one.record().notes[0]?.weights).toEqual([
      { name: "whites", grams: 105 },
      { name: "almond flour", grams: 130 },
    ]);
    const named = (answer.items ?? []).map(({ unread }) => /^line (\d+): /.exec(String(unread))?.[1]);
    expect(named).toEqual(["3", "4", "5", "6", "7", "8", "9", "10", "11", "12"]);
    expect(answer.figures?.find(({ name }) => name === "not read")?.value).toBe(10);
  });

  it("JSON: a field of the wrong kind, a note that is none, and fields that nothing is known of", async () => {
    const good = { date: "2026-03-01", text: "lemon", flavors: ["lemon"], problems: [], mood: "happy" };
    const { answer, one } = await take(
      JSON.stringify([
        good,
        { ...good, oven_c: "hot" },
        "lemon",
        { ...good, date: "2026-13-01" },
        { text: "no day" },
      ]),
      "notes.json",
    );
    expect(one.record().notes).toHaveLength(1);
    expect(answer.items).toHaveLength(4);
    expect(answer.cautions?.join()).toContain("mood");
    expect((await take("{", "notes.json")).answer.headline).toContain("no JSON");
    expect((await take('{"a":1}', "notes.json")).answer.status).toBe("impossible");
    expect((await take('{"__proto__":{"notes":[]},"notes":5}', "notes.json")).answer.status).toBe(
      "impossible",
    );
  });

  it("a note that was corrected since isn't added again in its old words", async () => {
    const one = baker();
    await one.one("note: lemon, baked 15 min");
    await one.one("export my notes as csv");
    await one.one("correct the last note: it was 17 min");
    const [note] = one.record().notes;
    const other = baker({
      record: record(note ? [note] : []),
      texts: { "old.csv": one.files[0]?.text ?? "" },
    });
    const answer = await other.one("import notes from old.csv");
    expect(answer.headline).toContain("Nothing new");
    expect(other.record().notes).toEqual([note]);
  });

  it("rids what it stores of control characters and escapes", async () => {
    const { one } = await take('date,text,flavors\n2026-03-01,"lem\u001b[31mon\nnew line","a\u0007b"\n');
    expect(JSON.stringify(one.record().notes)).not.toMatch(/\\u00|\\n/);
  });

  it("isn't taken in where there are too many rows, no dates, a column twice, or no file", async () => {
    const many = `date,text\n${"2026-03-01,x\n".repeat(5001)}`;
    expect((await take(many)).answer.headline).toContain("more than 5000");
    expect((await take("when,text\n2026-03-01,x\n")).answer.headline).toContain('"date"');
    expect((await take("date,text,text\n2026-03-01,x,y\n")).answer.headline).toContain("twice");
    expect((await take("date,text\n")).answer.headline).toContain("no note");
    expect((await take("")).answer.status).toBe("impossible");
    const one = baker();
    expect((await one.one("import notes from nowhere.csv")).headline).toContain("nowhere.csv");
    expect((await one.one("import my notes")).status).toBe("asking");
  });

  it("asks for the file, and takes its name alone", async () => {
    const one = baker({ texts: { "batches.csv": "date,text\n2026-03-01,lemon\n" } });
    expect((await one.one("import my notes")).question).toContain("file");
    expect((await one.one("batches.csv")).headline).toContain("1 note added");
  });
});

describe("days of a table that went through a spreadsheet", () => {
  it.each([
    [
      ["3/14/2026", "3/4/2026"],
      ["2026-03-14", "2026-03-04"],
    ],
    [
      ["14/3/2026", "3/4/2026"],
      ["2026-03-14", "2026-04-03"],
    ],
    [
      ["14.3.2026", "3.4.2026"],
      ["2026-03-14", "2026-04-03"],
    ],
    [["4/4/2026"], ["2026-04-04"]],
    [["2026-3-4"], ["2026-03-04"]],
  ])("%j", (cells, days) => {
    const order = orderOf(cells);
    expect(cells.map((cell) => dayIn(cell, order))).toEqual(days.map((day) => ({ ok: true, day })));
  });

  it.each([[["3/4/2026"]], [["14/3/2026", "3/14/2026", "3/4/2026"]]])("%j tell no order", (cells) => {
    expect(dayIn("3/4/2026", orderOf(cells)).ok).toBe(false);
  });

  it.each(["29/2/2026", "31/31/2026", "0/1/2026", "14/3/26", "yesterday", ""])("%s is no day", (cell) => {
    expect(dayIn(cell, "day first").ok).toBe(false);
  });
});

it("a table of any cells at all breaks nothing", async () => {
  const cell = fc.oneof(
    fc.string(),
    fc.constantFrom("2026-03-01", "1e999", "NaN", "Infinity", "__proto__", "=1", "-1", "yes"),
  );
  const names = fc.constantFrom(
    "date",
    "text",
    "flavors",
    "rating",
    "weights",
    "doses",
    "ignored",
    "noted",
    "constructor",
    "",
  );
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(names, { minLength: 1, maxLength: 6 }),
      fc.array(fc.array(cell, { maxLength: 7 }), { maxLength: 5 }),
      async (columns, rows) => {
        const one = baker({ texts: { "any.csv": csvText({ columns, rows }) } });
        const answer = await one.one("import notes from any.csv");
        expect(["answered", "impossible"]).toContain(answer.status);
        for (const each of one.record().notes) expect(each.date).toMatch(/^\d{4}-\d\d-\d\d$/);
      },
    ),
    { numRuns: 200 },
  );
  expect(csvRows("").rows).toEqual([]);
});
