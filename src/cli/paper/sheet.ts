/** A sheet for the wall: down the page in the largest type that keeps it on one, else on to the next. */
import type { Paper } from "../../tools/contract/index.ts";
import { type Document, points } from "./library.ts";
import { heightOf, type Piece, piecesOf } from "./pieces.ts";

const margin = points(15);
const foot_pt = 8;
const foot = points(8);
/** Read from the bench: as large as one page allows; over several pages in the middle size. */
const most_pt = 13;
const least_pt = 9;
const several_pt = 10.5;

/** @returns how many pages it took */
export function drawSheet(document: Document, { blocks, title }: Paper): number {
  document.addPage();
  const { width, height } = document.page;
  const inside = width - 2 * margin;
  const room = height - 2 * margin - foot;
  const at = (pt: number): Piece[] => blocks.flatMap((block) => piecesOf(document, block, inside, pt));
  let pt = most_pt;
  while (pt >= least_pt && heightOf(at(pt)) > room) pt -= 0.25;
  const pieces = at(pt >= least_pt ? pt : several_pt);
  let y = 0;
  pieces.forEach((piece, n) => {
    if (y > 0 && y + together(pieces, n) > room) {
      document.addPage();
      y = 0;
    }
    piece.draw(margin, margin + y);
    y += piece.height;
  });
  const { count } = document.bufferedPageRange();
  for (let n = 0; n < count; n++) {
    document.switchToPage(n);
    const text = count > 1 ? `${title} · page ${n + 1} of ${count}` : title;
    document.font("Helvetica").fontSize(foot_pt).fillColor("black");
    document.text(text, margin, height - margin - foot_pt, { width: inside, lineBreak: false });
  }
  return count;
}

/** A piece with what it leads: none of them parted from the next. */
function together(pieces: readonly Piece[], n: number): number {
  const piece = pieces[n];
  if (!piece) return 0;
  return piece.height + (piece.leads ? together(pieces, n + 1) : 0);
}
