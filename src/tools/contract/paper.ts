/** Something to print and a table to save, as plain data: what stands on it. src/cli makes the files of it. */

export type PaperSize = "a4" | "letter";

/** Table columns share the width; `right` sets numbers flush. A row is as many cells as there are columns. */
export interface PaperColumn {
  title: string;
  /** Its part of the width, against the others'. */
  share: number;
  right?: boolean;
}

/** One thing after another, from the top down. */
export type PaperBlock =
  | { is: "title" | "heading" | "text" | "strong" | "small"; text: string }
  /** Ruled lines to write on, behind a caption. */
  | { is: "blank"; caption: string; lines: number }
  /** A text with type of its own: the lower-case letters, or the digits, at least so tall. */
  | { is: "tall"; text: string; least_mm: number; of: "letters" | "digits" }
  /** With `ticked` a box to tick before each row. */
  | { is: "table"; columns: PaperColumn[]; rows: string[][]; ticked?: boolean };

export interface Paper {
  title: string;
  size: PaperSize;
  /** When it was made, ms since the epoch. */
  made_ms: number;
  blocks: PaperBlock[];
  /** The blocks once in each label; without it they run down the page, and on to the next. */
  labels?: {
    /** So many; without it one page full. */
    copies?: number;
    /** Of one label, cut; without it as many fit a page as can be read. */
    width_mm?: number;
    height_mm?: number;
    /** A lower-case x has to be so tall, in mm, and by which rule: smaller type isn't printed. */
    least_x_mm: number;
    law: string;
    /** Beside the labels, on the part that is cut away. */
    margin: string[];
  };
}

/** A table for a spreadsheet: text in every cell, the columns' names first. */
export interface Sheet {
  columns: string[];
  rows: string[][];
}
