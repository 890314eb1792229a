/** "it should be 20 min", "20 not 30", "no, 12": another length for a timer that was set before. */
import { opening, takingBack } from "../../../data/words/openers.ts";
import type { Memory } from "../contract/index.ts";
import { isSign, type Piece, textOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { timeOf } from "./set.ts";

const ought =
  /(?:^| )(?:should|shouldve|shoulda|ought to|(?:was|is|were|its|thats) (?:supposed|meant) to|needs? to|has to|must)(?: only)? (?:be|have been|been|say|read|run|last)(?: |$)/;
const opens = new RegExp(`^${opening}(?:${takingBack}|i said|i wanted|wanted|wrong)(?: |$)`);
const ends = /(?: |^)(?:i mean|i meant|instead|sorry|actually|rather)(?: please| pls)?$/;
/** A word of the order itself: then the sentence is no correction. */
const anew =
  /(?:^| )(?:another|a timer|new|start|how|what|whats|when|which|why|cancel|stop|add|remind|ping|note)(?: |$)|^(?:is|are) /;

const isTime = (piece: Piece | undefined) =>
  piece?.amount !== undefined && (piece.amount.dim === "time" || piece.amount.dim === "number");

/** The pieces without the length that was wrong: "20 not 30", "not 30, 20", "instead of 30". */
function withoutWrong(some: readonly Piece[]): { kept: Piece[]; wrong: boolean } {
  const isWrong = (at: number) =>
    isTime(some[at]) &&
    (some[at - 1]?.text === "not" || (some[at - 1]?.text === "of" && some[at - 2]?.text === "instead"));
  const gone = new Set(
    some.flatMap((_, at) =>
      isWrong(at) ? (some[at - 2]?.text === "instead" ? [at - 2, at - 1, at] : [at - 1, at]) : [],
    ),
  );
  return { kept: some.filter((_, at) => !gone.has(at)), wrong: gone.size > 0 };
}

/** A running timer that the sentence calls by its name, or by its place: "the first should be 12". */
export function named(some: readonly Piece[], { names }: Memory): string | undefined {
  const text = ` ${textOf(some)} `.replace(/ trays? one /g, " tray 1 ");
  const all = names.timers.filter((label) => text.includes(` ${label.toLowerCase()} `));
  // "the bake timer", where one without a name runs as well
  const hits = all.length > 1 ? all.filter((label) => label !== "timer") : all;
  const longest = hits.toSorted((a, b) => b.length - a.length)[0];
  if (longest !== undefined) return longest;
  return / (first|second|third|fourth|fifth|last)(?: one| timer)? /.exec(text)?.[1];
}

/** @param pointer the timer that other words point at */
export function putRight(
  some: readonly Piece[],
  said: string,
  memory: Memory,
  pointer: Draft,
): Draft | undefined {
  const text = textOf(some);
  const { kept, wrong: hasWrong } = withoutWrong(some);
  // "20 not 30": the one that was wrong may be left out before it comes here
  const wrong = hasWrong || (/\bnot (?:for )?\d/i.test(said) && !/^(?:set|start|timer|put) /.test(text));
  const says = ought.test(text);
  if (!says && !wrong && anew.test(text)) return undefined;
  const name = named(kept, memory);
  const behind = memory.last?.tool === "timer";
  const isOne = says || wrong || opens.test(text) || ends.test(text);
  // past another question only a timer that is called by its name
  if (!isOne || (!behind && !(name && (says || wrong)))) return undefined;
  const which = name === undefined ? { ...pointer, ...recent(memory) } : { name };
  const time = timeOf(afterName(kept, name), true);
  if (!time || (time.when && !says)) return undefined;
  const before = behind ? (memory.last?.inputs as Draft) : {};
  const more = before.do === "add" && !says && name === undefined ? before.more_min : undefined;
  // "give it 5 more" "no, 3": so many more, not so many in all
  if (more !== undefined && time.for_min !== undefined && time.for_min <= 3 * Math.abs(more))
    return { do: "add", more_min: Math.sign(more) * time.for_min - more, ...which };
  return { do: "move", ...time, ...which };
}

const recent = (memory: Memory): Draft => (memory.table.timer ? { recent: memory.table.timer } : {});

/** "tray 2 should be 18": the number of the name is no length. */
function afterName(some: readonly Piece[], name: string | undefined): Piece[] {
  const last = name?.split(" ").at(-1);
  const at = last && /^\d/.test(last) ? some.findIndex((each) => each.text === last) : -1;
  return some.filter((each, i) => i !== at && !isSign(each));
}
