/** One turn of phrase that is read as another. */
export interface Phrase {
  /** It is looked for only where one of these is in the text: compiling a pattern costs more than looking for letters. */
  marks: readonly string[];
  from: RegExp;
  to: string | ((...found: string[]) => string);
}
