/** Blocks as pieces that stand one below the other: how tall each is, and how it is drawn. Lengths in points. */
import type { PaperBlock, PaperColumn } from "../../tools/contract/index.ts";
import { bold, type Document, heights, points, regular } from "./library.ts";

export interface Piece {
  height: number;
  draw(x: number, y: number): void;
  /** It belongs to what comes below it, and isn't the last on a page. */
  leads?: true;
}

/** Type against the running text's: nothing on a label is smaller than that. */
const sizes = { title: 1.5, heading: 1.2, text: 1, strong: 1, small: 0.85 } as const;

const gap = 0.35;
const leading = 0.12;

type Table = Extract<PaperBlock, { is: "table" }>;

/** @param pt the size of running text, in points */
export function piecesOf(document: Document, block: PaperBlock, width: number, pt: number): Piece[] {
  if (block.is === "table") return tableOf(document, block, width, pt);
  if (block.is === "blank") return blankOf(document, block.caption, block.lines, width, pt);
  if (block.is === "tall") {
    const size = Math.max(pt, points(block.least_mm) / heights[bold][block.of]);
    return [below(textOf(document, block.text, bold, size, width), size * 0.3)];
  }
  const size = pt * sizes[block.is];
  const font = block.is === "text" || block.is === "small" ? regular : bold;
  const piece = textOf(document, block.text, font, size, width);
  return block.is === "heading" ? [{ ...below(piece, size * 0.5), leads: true }] : [piece];
}

/** With room above it. */
const below = ({ height, draw }: Piece, above: number): Piece => ({
  height: height + above,
  draw: (x, y) => draw(x, y + above),
});

export const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, each) => sum + each.height, 0);

/** One below the other, from `y` down. */
export function drawAll(pieces: readonly Piece[], x: number, y: number): void {
  let at = y;
  for (const piece of pieces) {
    piece.draw(x, at);
    at += piece.height;
  }
}

function textOf(document: Document, text: string, font: string, size: number, width: number): Piece {
  const options = { width, lineGap: size * leading };
  const set = () => document.font(font).fontSize(size).fillColor("black");
  set();
  return {
    height: document.heightOfString(text, options) + size * gap,
    draw: (x, y) => {
      set().text(text, x, y, options);
    },
  };
}

function rule(document: Document, x: number, y: number, width: number, thick = 0.5): void {
  document
    .moveTo(x, y)
    .lineTo(x + width, y)
    .lineWidth(thick)
    .strokeColor("black")
    .stroke();
}

/** Room for a pen: lines of at least 6 mm. */
function blankOf(document: Document, caption: string, lines: number, width: number, pt: number): Piece[] {
  const height = Math.max(pt * 1.7, points(6));
  document.font(regular).fontSize(pt);
  const behind = caption ? document.widthOfString(`${caption} `) : 0;
  return Array.from({ length: lines }, (_, n) => ({
    height,
    draw: (x, y) => {
      const base = y + height * 0.8;
      if (n === 0 && caption)
        document
          .font(regular)
          .fontSize(pt)
          .fillColor("black")
          .text(caption, x, base - pt * 0.85, { lineBreak: false });
      const from = n === 0 ? Math.min(behind, width) : 0;
      rule(document, x + from, base, width - from);
    },
  }));
}

function tableOf(document: Document, { columns, rows, ticked }: Table, width: number, pt: number): Piece[] {
  const tick = ticked ? pt * 1.6 : 0;
  const all = columns.reduce((sum, each) => sum + each.share, 0);
  const widths = columns.map(({ share }) => ((width - tick) * share) / all);
  const row = (cells: readonly string[], font: string, box: boolean, size: number): Piece =>
    rowOf(document, cells, columns, widths, { font, size, tick, box });
  const titles = columns.map((each) => each.title);
  return [
    ...(titles.some((each) => each !== "")
      ? [{ ...row(titles, bold, false, pt * sizes.small), leads: true as const }]
      : []),
    ...rows.map((cells) => row(cells, regular, ticked === true, pt)),
    { height: pt * gap, draw: () => undefined },
  ];
}

function rowOf(
  document: Document,
  cells: readonly string[],
  columns: readonly PaperColumn[],
  widths: readonly number[],
  { font, size, tick, box }: { font: string; size: number; tick: number; box: boolean },
): Piece {
  const inset = size * 0.2;
  const set = () => document.font(font).fontSize(size).fillColor("black");
  const optionsOf = (n: number) => ({
    width: (widths[n] ?? 0) - 2 * inset,
    align: columns[n]?.right ? ("right" as const) : ("left" as const),
    lineGap: size * leading,
  });
  set();
  const height =
    Math.max(size, ...cells.map((cell, n) => document.heightOfString(cell, optionsOf(n)))) + 2 * inset;
  const width = tick + widths.reduce((sum, each) => sum + each, 0);
  return {
    height,
    draw: (x, y) => {
      set();
      let from = x + tick;
      cells.forEach((cell, n) => {
        document.text(cell, from + inset, y + inset, optionsOf(n));
        from += widths[n] ?? 0;
      });
      if (box)
        document
          .rect(x, y + inset, size * 0.8, size * 0.8)
          .lineWidth(0.7)
          .strokeColor("black")
          .stroke();
      rule(document, x, y + height, width, 0.25);
    },
  };
}
