/** How far a typed word is from the one that was meant, in slips of fingers on a keyboard. */

const rows = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];

/** Letters whose keys touch, by letter. */
const neighbours = () =>
  new Map<string, string>(
    rows.flatMap((row, at) =>
      [...row].map((letter, column): [string, string] => {
        const [above, below] = [rows[at - 1] ?? "", rows[at + 1] ?? ""];
        const keys = [
          row[column - 1],
          row[column + 1],
          above[column],
          above[column + 1],
          below[column],
          below[column - 1],
        ];
        return [letter, keys.join("")];
      }),
    ),
  );
/** Made when a word isn't known. */
let touching: ReadonlyMap<string, string> | undefined;

function touch(a: string | undefined, b: string | undefined): boolean {
  touching ??= neighbours();
  return a !== undefined && b !== undefined && (touching.get(a)?.includes(b) ?? false);
}

const isVowel = (letter: string) => "aeiouy".includes(letter);

/** A letter more at a word's beginning, where people look. */
const atStart = 0.3;

const other = (typed: string, meant: string, isFirst: boolean) =>
  (touch(typed, meant) ? 0.9 : isVowel(typed) && isVowel(meant) ? 1 : 1.5) + (isFirst ? 0.4 : 0);

const missing = (meant: string, at: number) =>
  (meant[at] === meant[at - 1] ? 0.4 : "aeiou".includes(meant[at] ?? "") ? 0.7 : 0.85) +
  (at === 0 ? atStart : 0);

const added = (typed: string, at: number) =>
  typed[at] === typed[at - 1]
    ? 0.4
    : touch(typed[at], typed[at - 1]) || touch(typed[at], typed[at + 1])
      ? 0.9
      : 1.1;

const swapped = 0.75;

/**
 * The least slips that make one word of the other: letters swapped, missing, doubled, added or another, each weighed by
 * how easily a finger does it (the restricted edit distance of Damerau, with costs from memory). Undefined past `most`.
 */
export function slipsBetween(typed: string, meant: string, most: number): number | undefined {
  let [two, one]: [number[], number[]] = [[], [0]];
  for (let j = 1; j <= meant.length; j++) one[j] = (one[j - 1] ?? 0) + missing(meant, j - 1);
  for (let i = 1; i <= typed.length; i++) {
    const x = typed[i - 1] ?? "";
    const now = [(one[0] ?? 0) + added(typed, i - 1) + (i === 1 ? atStart : 0)];
    for (let j = 1; j <= meant.length; j++) {
      const y = meant[j - 1] ?? "";
      const kept = (one[j - 1] ?? 0) + (x === y ? 0 : other(x, y, i === 1 && j === 1));
      const without = (now[j - 1] ?? 0) + missing(meant, j - 1);
      const more = (one[j] ?? 0) + added(typed, i - 1);
      const turned =
        i > 1 && j > 1 && x !== y && x === meant[j - 2] && typed[i - 2] === y
          ? (two[j - 2] ?? 0) + swapped
          : Number.POSITIVE_INFINITY;
      now[j] = Math.min(kept, without, more, turned);
    }
    if (Math.min(...now) > most) return undefined;
    [two, one] = [one, now];
  }
  const slips = one[meant.length] ?? 0;
  return slips > most ? undefined : slips;
}
