/** One way in which a number is told beside a question. */
import type { Words } from "../../../../data/words/told-beside.ts";
import type { matters } from "./matters.ts";

export interface ToldBeside {
  /** What such a number is: "an age". */
  is: string;
  /** It is looked for only where one of these is in the text: compiling a pattern costs more than looking for letters. */
  marks: readonly string[];
  /** And only where one of these words is. */
  words?: Words;
  /** And only where one of these stands in front of a number in digits. */
  numbered?: ReadonlySet<string>;
  said: RegExp;
  /** It is looked for before slips are mended, too: "yr" and "bb" would be taken for slips. */
  asTyped?: true;
  /** What is left of the words; nothing where it isn't said. */
  leaves?: string;
  /** The number may be what is asked, and stays, where the rest of the turn speaks of one of these. */
  unless?: readonly (keyof typeof matters)[];
  /** It stays where the rest of the turn doesn't hold this. */
  beside?: RegExp;
}
