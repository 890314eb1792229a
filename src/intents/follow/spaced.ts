/** A text with its signs as words of their own, as they stand in a mask: patterns of openers are made for that. Pure. */
export const spaced = (text: string): string =>
  text
    .replace(/([,.?!;:])(?= |$)/g, " $1")
    .replace(/ +/g, " ")
    .trim();
