const words = /^\W*(?:quit|exit|bye)\W*$/i;

/** Whether a line is a word for leaving, and nothing else. */
export function isLeaving(line: string): boolean {
  return words.test(line);
}
