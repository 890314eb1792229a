/** What a conversation remembers between its turns. */
import type { Table } from "../../tools/contract/index.ts";

export type Inputs = Record<string, unknown>;

export interface Topic {
  tool: string;
  inputs: Inputs;
  /** The input that can't be: a number alone may take its place, but it isn't taken along. */
  wrong?: string;
  /** The inputs that the turn itself said: "no, 40" puts those right before any other. */
  said?: string[];
  /** How it was asked, typos mended. */
  text?: string;
  /** What its answer left on the table: "the first one. how many eggs is that". */
  table?: Table;
  /** The inputs that an earlier question of the same turn had left on the table. */
  from?: Derived;
}

/** Inputs that are of what stands on the table, each with where it stands there. */
export type Derived = Readonly<Record<string, "mass" | "macarons">>;

export interface State {
  table: Table;
  last?: Topic;
  /** The input that was asked for, and whose. */
  pending?: Topic & { slot: string; of?: string };
  /** An input that was asked for, where another question of the same turn was answered since; `of` is that turn. */
  waiting?: Topic & { slot: string; of?: string };
  /** Earlier topics, newest last, to come back to. */
  topics: Topic[];
  /** What was asked in the last turn, as typed and with its typos mended, a calculator each, and how often the last of them was. */
  turn?: Turn;
  /** What was answered, the latest last, each question with its inputs: "back to the lemon one". */
  past?: Topic[];
  /** How many a box holds: "no, 15 boxes" goes on from it. */
  in_box?: number;
  /** How many minutes the last answer says, where it says one length of time: "timer for that long". */
  minutes?: number;
  /** The heat that was told last, in °C: "whats that in f". */
  heat_c?: number;
  /** What was turned down just before as none of ours: "and for 60?" is still of that. `text` is how it was asked. */
  elsewhere?: { name: string; kind: "bake" | "matter" | "guests"; text: string };
  /** What the last calculator was asked in a row, newest last: "for both" is of the last two. */
  row?: Inputs[];
}

export interface Turn {
  said: string;
  text?: string;
  /** A calculator each. */
  topics: Topic[];
  times: number;
  /** Every question that was answered, in their order. */
  all?: Topic[];
  /** What these left on the table. */
  left?: Table;
  /** What the turn before it was about. */
  before?: Topic[];
}

/** Nothing was asked or turned down before. */
export const isFirst = ({ last, pending, waiting, turn, past, topics, elsewhere }: State): boolean =>
  !(last ?? pending ?? waiting ?? turn ?? past?.[0] ?? topics[0] ?? elsewhere);

export const freshState = (): State => ({ table: {}, topics: [] });

/** Calculators that weigh or count what is made: a number alone may be another size of it. */
export const sizing: ReadonlySet<string> = new Set(
  "dose scale shells fill ganache buttercream split".split(" "),
);

/** Which calculators a mix is the matter of. */
export const about: Readonly<Record<string, readonly string[]>> = {
  ganache: ["ganache"],
  buttercream: ["buttercream"],
  batter: ["shells", "scale", "split"],
  filling: ["fill"],
};
