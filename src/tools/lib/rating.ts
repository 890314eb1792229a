/** Ratings as said: "9 out of 10", "4/5", "nine out of ten", "4 stars", "rated 8". */
import type { Piece } from "./pieces.ts";

export interface Rating {
  /** Out of 10, at most 10. */
  rating: number;
  /** The words, kept as they were said: "4 out of 5". */
  said: string;
  /** The pieces that it stands in: from, and the first behind it. */
  at: readonly [number, number];
}

/** What a rating can be out of; "2 out of 3 trays" is none. */
const scales = new Set([5, 10, 20, 100]);
const stars = new Set(["star", "stars"]);
const marks = new Set([
  "rated",
  "rate",
  "rating",
  "score",
  "scored",
  "scores",
  "solid",
  "marks",
  "gave",
  "give",
]);
const fillers = new Set([
  "it",
  "them",
  "these",
  "a",
  "an",
  "at",
  "of",
  "as",
  "was",
  "is",
  "should",
  "be",
  "really",
  ":",
]);

/** The first rating in some pieces, or the one that is said instead of it: "9 out of 10, no sorry, 8 out of 10". */
export function ratingIn(some: readonly Piece[]): Rating | undefined {
  const first = ratingFrom(some, 0);
  const next = first && ratingFrom(some, first.at[1]);
  const between = next ? some.slice(first.at[1], next.at[0]).map((each) => each.text) : [];
  const isPutRight =
    between.length > 0 &&
    between.every((each) => puttingRight.has(each)) &&
    between.some((each) => each !== "," && each !== "it" && each !== "its" && each !== "was");
  return isPutRight ? next : first;
}

const puttingRight = new Set(
  ", - . no nope sorry wait actually rather i mean meant make it that hang hold on oops its was say lets".split(
    " ",
  ),
);

function ratingFrom(some: readonly Piece[], from: number): Rating | undefined {
  for (let at = from; at < some.length; at++) {
    const found = outOf(some, at) ?? starred(some, at) ?? rated(some, at);
    if (found) return found;
  }
  return undefined;
}

const bare = (piece: Piece | undefined) =>
  piece?.amount?.dim === "number" && piece.amount.unit === "" ? piece.amount : undefined;

/** "9 out of 10", "4.5 / 5", "9/10". Shells and trays behind it make it a share, not a rating. */
function outOf(some: readonly Piece[], at: number): Rating | undefined {
  const up = bare(some[at]);
  if (!up) return undefined;
  const words = some.slice(at + 1, at + 4).map((each) => each.text);
  if (up.fraction && /^\d+\/\d+$/.test(some[at]?.text ?? ""))
    return make(up.fraction[0], up.fraction[1], some, at, at + 1);
  // "4 of 5": one of the two scales that bakers mark on; what was cracked of five is told apart below
  const top = words[0] === "of" ? bare(some[at + 2])?.value : undefined;
  const ofTen = (top === 10 || top === 5) && up.value <= top;
  const joint = words[0] === "out" && words[1] === "of" ? 3 : words[0] === "/" || ofTen ? 2 : 0;
  const down = joint ? bare(some[at + joint]) : undefined;
  return down && !up.fraction ? make(up.value, down.value, some, at, at + joint + 1) : undefined;
}

/** "4 stars", "a five star batch". */
function starred(some: readonly Piece[], at: number): Rating | undefined {
  const count = bare(some[at]);
  return count && !count.fraction && stars.has(some[at + 1]?.text ?? "")
    ? make(count.value, 5, some, at, at + 2)
    : undefined;
}

/** "rated 8", "gave it an 8": out of ten. */
function rated(some: readonly Piece[], at: number): Rating | undefined {
  const mark = bare(some[at]);
  if (!mark || mark.of || mark.fraction || mark.value > 10) return undefined;
  let back = at - 1;
  while (fillers.has(some[back]?.text ?? "")) back -= 1;
  const verb = some[back]?.text ?? "";
  const isGift = verb === "gave" || verb === "give";
  const counts = marks.has(verb) && (!isGift || ["a", "an"].includes(some[at - 1]?.text ?? ""));
  return counts ? make(mark.value, 10, some, at, at + 1) : undefined;
}

function make(
  up: number,
  down: number,
  some: readonly Piece[],
  from: number,
  next: number,
): Rating | undefined {
  const near = some.slice(next, next + 3);
  // "6 out of 10 and hollow ones": what is told next is another matter
  const joint = near.findIndex((each) => each.text === "and" || /^[;.]$/.test(each.text));
  const behind = joint < 0 || near[joint + 1]?.thing?.count ? near : near.slice(0, joint);
  // "7/10 bit hollow": what it was like, behind its mark
  const isLike = /^(?:bit|slightly|some|few|a|tops|feet|but|though|quite|very|nice|good)$/.test(
    behind[0]?.text ?? "",
  );
  // "7/10 sticky": so written it is a mark, and a fault behind it is what it was marked for; "7/10 were sticky" isn't
  const isMark = next === from + 1 && (down === 10 || down === 5);
  const isShare =
    !isLike &&
    behind.some(
      (each) =>
        (each.thing?.symptom !== undefined && !isMark) ||
        (each.thing?.count !== undefined && each.thing.count !== "batches") ||
        ["were", "had"].includes(each.text) ||
        (each.text === "cracked" && !isMark),
    );
  // "7/10 shells cracked": so many of them
  const isOfThem =
    /^(?:shell|tray|mac)/.test(behind[0]?.text ?? "") && behind.some((each) => each.thing?.symptom);
  if (
    isOfThem ||
    !scales.has(down) ||
    up < 0 ||
    (isShare && some[from]?.amount?.of === undefined && behind[0]?.text !== ",")
  )
    return undefined;
  const withStars = stars.has(some[next]?.text ?? "") ? next + 1 : next;
  const said = some
    .slice(from, withStars)
    .map((each) => each.text)
    .join(" ");
  return { rating: Math.min(10, (up / down) * 10), said, at: [from, withStars] };
}
