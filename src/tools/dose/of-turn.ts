/**
 * What the text of a whole turn says. Its questions are all read from that one text, so a turn of a hundred questions
 * would look through it a hundred times over: each thing is looked for once, and kept until another text comes.
 */

/**
 * @param look works it out from the text; pure
 * @returns the same, remembering the text that was looked through last
 */
export function ofTurn<Found>(look: (text: string) => Found): (text: string) => Found {
  let last: { text: string; found: Found } | undefined;
  return (text) => {
    if (last?.text !== text) last = { text, found: look(text) };
    return last.found;
  };
}

/** True where the turn holds the pattern anywhere. */
export const inTurn = (pattern: RegExp): ((text: string) => boolean) => ofTurn((text) => pattern.test(text));
