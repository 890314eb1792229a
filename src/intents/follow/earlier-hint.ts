/** Whether a sentence may come back to an earlier question at all: looked at before any pattern of it is made. */
const words =
  /\b(?:full|whole|entire|complete|all of|single|\w*doubl\w+|\w*halv\w+|normal|usual|regular|once|as it was|like it was|how it was|what it was|previous|former|one before|first|original|initial|earlier|starting|second|2nd|third|3rd|half)\b/;

export const mayBeEarlier = (text: string): boolean => words.test(text);
