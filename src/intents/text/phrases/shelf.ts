/**
 * All books of turns of phrase, each opened when a text holds a mark of one of its phrases: most texts hold none of most.
 * A phrase's place is its number, all books one behind the other.
 */
import { marksIn, marksTable } from "./marks.ts";
import { mayMatch } from "./may-match.ts";
import type { Book, Phrase } from "./phrase.ts";

export interface Shelf {
  /** The places of the phrases that may match, in their order. */
  heldIn(text: string): number[];
  /** @throws RangeError where there is no such place */
  phraseAt(place: number): Phrase;
  /** Where the marks are, written down for `prime`; opens all books. */
  table(): string;
  /** Hands over what `table` wrote for the same books. */
  prime(table: string): void;
}

/** @param books in the order in which their phrases are looked for */
export function shelved(books: readonly Book[]): Shelf {
  const opened: (readonly Phrase[])[] = [];
  const open = (at: number): readonly Phrase[] => {
    opened[at] ??= books[at]?.() ?? [];
    return opened[at];
  };
  const table = () => marksTable(books.map((_, at) => open(at)));
  let kept: string | undefined;
  let marks: ReturnType<typeof marksIn> | undefined;
  const looked = () => {
    marks ??= marksIn(kept ?? table());
    return marks;
  };
  return {
    // the space in front stands for the start of a word
    heldIn: (text) => {
      const { heldIn, patternAt } = looked();
      return heldIn(` ${text}`).filter((place) => {
        const pattern = patternAt(place);
        return pattern === undefined || mayMatch(pattern.at, text, pattern.asksMore);
      });
    },
    phraseAt: (place) => {
      const [book, within] = looked().bookOf(place);
      const phrase = open(book)[within];
      if (!phrase) throw new RangeError(`No phrase has the place ${place}.`);
      return phrase;
    },
    table,
    prime: (written) => {
      kept = written;
      marks = undefined;
    },
  };
}
