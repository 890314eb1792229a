/** What a calculator answers with: plain data, no layout. Numbers stay unrounded; rounding is for showing. */
import type { Paper, Sheet } from "./paper.ts";

export type Basis = "published" | "common practice" | "from memory" | "arithmetic" | "your bench";

/** The rule behind an answer, with its numbers in the text. `source` is named where the basis is published. */
export interface Rule {
  text: string;
  basis: Basis;
  source?: string;
}

/** One number of an answer: `value`, or `low` and `high`, or a default with its range. */
export interface Figure {
  name: string;
  value?: number;
  low?: number;
  high?: number;
  unit: string;
}

export type Status = "answered" | "asking" | "impossible" | "declined";

export type Item = Record<string, string | number | boolean | string[] | undefined>;

export interface DayStep {
  name: string;
  start: string;
  end: string;
  hands: boolean;
  /** For what goes by itself: when it really begins, where that is before `start`, the latest that would do. */
  from?: string;
}

/** One answer as it is shown, and as `--json` prints it. */
export interface Answer {
  tool: string;
  status: Status;
  headline: string;
  figures?: Figure[];
  rule?: Rule;
  assumed?: string[];
  cautions?: string[];
  question?: string;
  items?: Item[];
  steps?: DayStep[];
  /** The sum written out, a line a step; the chat shows it when she asks why. */
  working?: string[];
}

/** A weight that lies on the table after an answer, so that "it" and "all of that" mean something. */
export interface Mass {
  grams: number;
  /** An ingredient or filling id ("buttercream", "batter", "granulated sugar"), or "" when nothing was named. */
  thing: string;
}

/** What an answer leaves behind for the next question. */
export interface Table {
  mass?: Mass;
  /** The last weight of each thing, in g: what "the ganache" means after another topic. */
  masses?: Record<string, number>;
  /** The last two weights that answers came to: "both together". */
  recent?: Mass[];
  /** Equal parts after a split: what "one of them" means. */
  part?: Mass;
  /** What stayed of the weight before when a part of it was taken: "the other half". */
  rest?: Mass;
  /** Named parts after a split: "the lilac". */
  parts?: { name: string; grams: number; of?: string }[];
  /** How an order is shared out: "half raspberry, half pistachio". */
  shares?: { name: string; share: number; base?: string }[];
  /** What a plain sum came to: "that many grams". */
  number?: number;
  macarons?: number;
  shells?: number;
  diameter_mm?: number;
  chocolate?: string;
  filling?: string;
  /** Ingredients and weights of the recipe in hand, for cost, label and shopping. */
  recipe?: { name: string; grams: number }[];
  timer?: string;
  note?: number;
  /** The last label's inputs, so that it can be printed after another topic. */
  label?: Record<string, unknown>;
  /** The order that the last day was planned for, to go on from. */
  order?: Record<string, unknown>;
}

/** A change that a calculator asks for; src/store carries it out, never the calculator. */
export type Effect =
  | { do: "add"; list: ListName; entry: Record<string, unknown> }
  | { do: "change"; list: ListName; id: number; patch: Record<string, unknown> }
  | { do: "remove"; list: ListName; id: number }
  | { do: "set"; setting: string; value: unknown }
  | { do: "undo" }
  /** Back to the record as it was at the end of a day that there is a copy of: "2026-03-13". */
  | { do: "restore"; day: string }
  | ({ do: "write file"; name: string } & FileContent);

/** What goes into a file: text as it is, or what src/cli makes a PDF or a CSV of. */
export type FileContent = { text: string } | { paper: Paper } | { sheet: Sheet };

export type ListName = "timers" | "notes" | "bottles" | "stock" | "formulas" | "plans";

/** What `compute` hands back: the answer, and what goes beyond showing it. */
export interface Outcome extends Omit<Answer, "tool"> {
  /** With `asking`: the input that is missing. */
  slot?: string;
  /** A text file that has to be read first; src/cli reads it and calls again: a recipe's lines, or a record's rows. */
  wants?: { file: string; as?: "notes" };
  leaves?: Table;
  /** What was weighed in the sentence and is no part of the answer: it may be another question's. */
  unused?: readonly string[];
  effects?: Effect[];
  /** How the change is named when it is taken back: "the 20 min timer". */
  change?: string;
}
