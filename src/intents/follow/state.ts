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
}

export interface State {
  table: Table;
  last?: Topic;
  /** The input that was asked for, and whose. */
  pending?: Topic & { slot: string };
  /** Earlier topics, newest last, to come back to. */
  topics: Topic[];
  /** What was asked in the last turn, as typed and with its typos mended, a calculator each, and how often the last of them was. */
  turn?: { said: string; text?: string; topics: Topic[]; times: number };
  /** What was answered, the latest last, each question with its inputs: "back to the lemon one". */
  past?: Topic[];
  /** How many a box holds: "no, 15 boxes" goes on from it. */
  in_box?: number;
  /** What the last calculator was asked in a row, newest last: "for both" is of the last two. */
  row?: Inputs[];
}

export const freshState = (): State => ({ table: {}, topics: [] });

/** Which calculators a mix is the matter of. */
export const about: Readonly<Record<string, readonly string[]>> = {
  ganache: ["ganache"],
  buttercream: ["buttercream"],
  batter: ["shells", "scale", "split"],
  filling: ["fill"],
};
