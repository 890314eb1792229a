/** One turn of phrase that is read as another. */
export interface Phrase {
  /** It is looked for only where one of these is in the text: compiling a pattern costs more than looking for letters. */
  marks: readonly string[];
  /** What else the whole text must be, where its pattern is long and its marks are in most texts. */
  only?: (text: string) => boolean;
  from: RegExp;
  to: string | ((...found: string[]) => string);
}

/** Turns of phrase of a kind: made when one of them is first looked for. */
export type Book = () => readonly Phrase[];
