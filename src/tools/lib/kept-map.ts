/**
 * A map that is written down as a text, and looked up in it: the build keeps it, and a start that needs a few of thousands
 * of keys takes none of the others apart.
 *
 *   numbers, three letters each: how many rows there are room for, how long the rows are; then where each row begins
 *   then the rows, a line each: keys that come to the same number, each followed by its value
 */

/** Between a key, its value and the next key. Neither holds one of these, nor the end of a line. */
const between = "\u0001";
/** A number is written as three letters, none of which ends a line or parts a field. */
const width = 3;
const base = 200;
const first = 48;

/** @param number a whole one, from 0 to 7,999,999 */
export const writtenNumber = (number: number): string =>
  String.fromCharCode(
    first + Math.floor(number / (base * base)),
    first + (Math.floor(number / base) % base),
    first + (number % base),
  );
/** @param at where the number begins */
export const numberAt = (text: string, at: number): number =>
  ((text.charCodeAt(at) - first) * base + text.charCodeAt(at + 1) - first) * base +
  text.charCodeAt(at + 2) -
  first;
/** So many letters a number is long. */
export const numberWidth = width;

/** A key's number goes on from that of its beginning. */
const begun = 7;
const goneOn = (sum: number, letter: number): number => (sum * 61 + letter) % 65_521;

/** @param entries keys and values of letters that are kept as one byte each */
export function keptMap(entries: ReadonlyMap<string, string>): string {
  let room = 16;
  while (room < entries.size) room *= 2;
  const rows: string[][] = Array.from({ length: room }, () => []);
  for (const [key, value] of entries) {
    let sum = begun;
    for (let at = 0; at < key.length; at++) sum = goneOn(sum, key.charCodeAt(at));
    rows[sum % room]?.push(key, value);
  }
  let lines = "";
  const starts = rows.map((row) => {
    if (row.length === 0) return 0;
    const start = lines.length + 1;
    lines += `${row.join(between)}\n`;
    return start;
  });
  return [room, lines.length, ...starts].map(writtenNumber).join("") + lines;
}

export interface KeptMap {
  /** The values of those keys that the text has from there on, the shortest key first. */
  startingAt(text: string, from: number, longest: number): string[];
  /** Where the text goes on behind the map. */
  end: number;
}

/** @param from where the map begins in the text that holds it */
export function readMap(text: string, from = 0): KeptMap {
  const [room, length] = [numberAt(text, from), numberAt(text, from + width)];
  const starts = from + 2 * width;
  const lines = starts + room * width;
  const rows: (string[] | undefined)[] = [];
  const rowAt = (start: number): string[] => {
    const at = lines + start - 1;
    rows[start] ??= text.slice(at, text.indexOf("\n", at)).split(between);
    return rows[start];
  };
  const add = (said: string, at: number, size: number, sum: number, to: string[]): void => {
    const start = numberAt(text, starts + (sum % room) * width);
    if (start === 0) return;
    const row = rowAt(start);
    for (let key = 0; key < row.length; key += 2) {
      const value = row[key + 1];
      if (row[key]?.length === size && said.startsWith(row[key] ?? "", at) && value !== undefined)
        to.push(value);
    }
  };
  return {
    startingAt(said, at, longest) {
      const found: string[] = [];
      let sum = begun;
      add(said, at, 0, sum, found);
      for (let size = 1; size <= longest && at + size <= said.length; size++) {
        sum = goneOn(sum, said.charCodeAt(at + size - 1));
        add(said, at, size, sum, found);
      }
      return found;
    },
    end: lines + length,
  };
}
