/**
 * The steps of a day as a bar chart over time: the hour at the left, a bar in its place, what is done behind it. One
 * block a day, all at one scale; hands and waiting are different signs. Pure.
 */
import type { DayStep } from "../../tools/contract/index.ts";
import { dayOf, timeOf } from "./moments.ts";
import type { Signs } from "./signs.ts";
import { padded, printable, width } from "./text.ts";
import { wrapped } from "./wrap.ts";

const indent = "  ";
/** Below this many columns a bar says nothing; the steps are a plain list. */
const leastChart = 34;
/** From here on the end of a step has room beside its start. */
const roomForEnds = 56;
/** What a step's name is given before the bars get more. */
const usualName = 25;
const bars = { least: 10, most: 60 };
const hour = 60;

/** A step in minutes of wall-clock time, by when it really begins. */
interface Row {
  step: DayStep;
  from: number;
  to: number;
}

const minutesOf = (iso: string) => Date.parse(`${iso.slice(0, 19)}Z`) / 60_000;
const dayIn = (iso: string) => iso.slice(0, 10);
const beginning = (step: DayStep) => step.from ?? step.start;

/**
 * The lines of a chart; none without steps.
 * @param asList no bars, for screen readers
 */
export function stepLines(
  steps: readonly DayStep[],
  columns: number,
  signs: Signs,
  asList = false,
): string[] {
  const rows = steps
    .map((step): Row => ({ step, from: minutesOf(beginning(step)), to: minutesOf(step.end) }))
    .sort((a, b) => a.from - b.from);
  const days = [...new Set(rows.map(({ step }) => dayIn(beginning(step))))];
  const blocks = days.map((day) => rows.filter(({ step }) => dayIn(beginning(step)) === day));
  if (asList || columns < leastChart)
    return blocks.flatMap((block) => [headOf(block), ...listed(block, columns)]);
  const layout = layoutOf(columns, Math.max(0, ...blocks.map((block) => spanOf(block).length)));
  const lines = blocks.flatMap((block) => charted(block, layout, columns, signs));
  return lines.length ? [...lines, legend(signs)] : [];
}

const headOf = ([first]: readonly Row[]) => (first ? `${indent}${dayOf(beginning(first.step))}` : indent);

const legend = ({ hands, waits }: Signs) => `${indent}${hands} your hands  ${waits} goes by itself`;

function listed(block: readonly Row[], columns: number): string[] {
  return block.flatMap(({ step }) => {
    const first = `${indent}${timeOf(beginning(step))} ${step.hands ? "hands" : "waits"} `;
    return wrapped(nameOf(step), columns, { first, rest: " ".repeat(width(first)) });
  });
}

interface Layout {
  ends: boolean;
  /** Cells of the times, of a bar, between the columns. */
  times: number;
  bar: number;
  gap: string;
  /** Minutes in a cell. */
  per: number;
}

function layoutOf(columns: number, longest: number): Layout {
  const ends = columns >= roomForEnds;
  const times = ends ? 11 : 5;
  const gap = ends ? "  " : " ";
  const left = columns - indent.length - times - 2 * gap.length - usualName;
  const bar = Math.min(bars.most, Math.max(bars.least, left));
  return { ends, times, bar, gap, per: Math.max(1, longest / bar) };
}

/** From the full hour before the first step to the end of the last; what runs on into another day ends at the edge. */
function spanOf(block: readonly Row[]): { from: number; length: number } {
  const from = Math.floor(Math.min(...block.map((row) => row.from)) / hour) * hour;
  const to = Math.max(from + hour, ...block.map((row) => (runsOn(row.step) ? row.from : row.to)));
  return { from, length: to - from };
}

/** It ends on another day than it begins. */
const runsOn = (step: DayStep) => dayIn(beginning(step)) !== dayIn(step.end);

const nameOf = (step: DayStep) =>
  printable(runsOn(step) ? `${step.name}, to ${dayOf(step.end)} ${timeOf(step.end)}` : step.name);

function charted(block: readonly Row[], layout: Layout, columns: number, signs: Signs): string[] {
  const { from, length } = spanOf(block);
  const { times, gap, per, bar } = layout;
  const cells = Math.min(bar, Math.ceil(length / per));
  const axis = axisOf(from, cells, per);
  const head = headOf(block);
  const beside = `${padded(head, indent.length + times)}${gap}${axis}`;
  const fits = width(head) <= indent.length + times;
  const over = `${" ".repeat(indent.length + times)}${gap}${axis}`;
  return [
    ...(fits ? [beside.trimEnd()] : [head, over.trimEnd()]),
    ...block.flatMap((row) => {
      const first = `${indent}${padded(timesOf(row.step, layout), times)}${gap}${barOf(row, from, layout, signs)}${gap}`;
      return wrapped(nameOf(row.step), columns, { first, rest: " ".repeat(width(first)) });
    }),
  ];
}

const timesOf = (step: DayStep, { ends }: Layout) =>
  ends ? `${timeOf(beginning(step))}-${runsOn(step) ? "" : timeOf(step.end)}` : timeOf(beginning(step));

/** The hours above the bars, as many as don't run into each other. */
function axisOf(from: number, cells: number, per: number): string {
  const every = [1, 2, 3, 6, 12].find((hours) => (hours * hour) / per >= 4) ?? 24;
  let axis = "";
  for (let at = 0; Math.round(at / per) + 2 <= cells; at += every * hour)
    axis = padded(axis, Math.round(at / per)) + String(((from + at) / hour) % 24).padStart(2, "0");
  return axis;
}

/** A step takes a cell at least; neighbours share none where they can help it. */
function barOf({ step, from, to }: Row, origin: number, { bar, per }: Layout, signs: Signs): string {
  const sign = step.hands ? signs.hands : signs.waits;
  const start = Math.min(bar - 1, Math.round((from - origin) / per));
  if (runsOn(step)) return " ".repeat(start) + sign.repeat(bar - start - 1) + signs.onward;
  const end = Math.min(bar, Math.max(start + 1, Math.round((to - origin) / per)));
  return padded(" ".repeat(start) + sign.repeat(end - start), bar);
}
