/** Phrases are found by their marks through a table: it has to find what looking for each mark in turn would. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { marksIn, marksTable } from "../../src/intents/text/phrases/marks.ts";
import type { Phrase } from "../../src/intents/text/phrases/phrase.ts";
import { shelved } from "../../src/intents/text/phrases/shelf.ts";

const phrase = (...marks: string[]): Phrase => ({ marks, from: /x/, to: "" });

/** Each mark of each phrase looked for, one after the other. */
const lookedFor = (books: readonly (readonly Phrase[])[], text: string): number[] =>
  books.flat().flatMap(({ marks }, place) => (marks.some((mark) => text.includes(mark)) ? [place] : []));

describe("the phrases of which a text holds a mark", () => {
  // few letters, so that marks begin alike and stand in texts
  const letters = fc.string({ unit: fc.constantFrom("a", "b", " ", "½", "€"), minLength: 1, maxLength: 5 });
  const books = fc.array(
    fc.array(
      fc.array(letters, { minLength: 1, maxLength: 3 }).map((marks) => phrase(...marks)),
      { maxLength: 4 },
    ),
    { minLength: 1, maxLength: 5 },
  );
  const text = fc.string({
    unit: fc.constantFrom("a", "b", " ", "½", "€", "c"),
    minLength: 1,
    maxLength: 30,
  });

  it("are those of looking for each, and where a letter can't be kept at most more", () => {
    fc.assert(
      fc.property(books, text, (each, said) => {
        const found = marksIn(marksTable(each)).heldIn(said);
        const wanted = lookedFor(each, said);
        const isExact = each.flat().every(({ marks }) => marks.every((mark) => !mark.includes("€")));
        if (isExact) expect(found).toEqual(wanted);
        else expect(found).toEqual(expect.arrayContaining(wanted));
      }),
      { numRuns: 500 },
    );
  });

  it("are told by their book and their place in it", () => {
    fc.assert(
      fc.property(books, (each) => {
        const { bookOf } = marksIn(marksTable(each));
        const places = each.flatMap((book, at) => book.map((_, within) => [at, within]));
        expect(places.map((_, place) => bookOf(place))).toEqual(places);
      }),
    );
  });

  it("say where their patterns are kept, if they are, and whether something else is asked first", () => {
    const kept = Object.assign(/x/, { at: 612_345 });
    const table = marksTable([
      [phrase("a"), { ...phrase("b"), from: kept }],
      [{ ...phrase("c"), from: kept, only: () => true }],
    ]);
    const { patternAt } = marksIn(table);
    expect([0, 1, 2].map(patternAt)).toEqual([
      undefined,
      { at: 612_345, asksMore: false },
      { at: 612_345, asksMore: true },
    ]);
  });
});

describe("a shelf of phrases", () => {
  const opened: string[] = [];
  const book =
    (name: string, ...marks: string[]) =>
    () => {
      opened.push(name);
      return marks.map((mark) => phrase(mark));
    };
  const books = [book("greetings", "hello ", "dear "), book("weights", " kilo")];

  it("opens a book when one of its phrases is needed, once its table is kept", () => {
    const { table } = shelved(books);
    const shelf = shelved(books);
    shelf.prime(table());
    opened.length = 0;
    expect(shelf.heldIn("half a kilo")).toEqual([2]);
    expect(opened).toEqual([]);
    expect(shelf.phraseAt(2).marks).toEqual([" kilo"]);
    shelf.phraseAt(2);
    expect(opened).toEqual(["weights"]);
  });

  it("finds the same with its table kept or made", () => {
    const kept = shelved(books);
    kept.prime(shelved(books).table());
    for (const text of ["hello there", "dear me, a kilo", "kilo", ""])
      expect(kept.heldIn(text)).toEqual(shelved(books).heldIn(text));
  });
});
