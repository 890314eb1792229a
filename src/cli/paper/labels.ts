/** Labels on a page: the grid that holds them in the largest type, and never smaller than the law's. */
import type { Paper } from "../../tools/contract/index.ts";
import { plain } from "../../tools/lib/show.ts";
import { type Document, heights, millimetres, points, regular } from "./library.ts";
import { drawAll, heightOf, type Piece, piecesOf } from "./pieces.ts";

export type Labels = NonNullable<Paper["labels"]>;

interface Area {
  width: number;
  height: number;
}

interface Grid {
  columns: number;
  rows: number;
  cell: Area;
  pt: number;
}

/** Cut away around the labels, and between a label's edge and its text. */
const margin = points(10);
const padding = points(3);
/** Running text is set in this at most; in what is comfortable, a larger label has nothing over a smaller one. */
const most_pt = 11;
const comfortable_pt = 9.5;
/** A page of labels, where nothing else is said. */
const usual = 8;
const mostColumns = 3;
const mostRows = 10;
const margin_pt = 7.5;
/** Between the last cut and the words below it. */
const apart = points(2);

export type Laid = { ok: true; assumed: string[] } | { ok: false; why: string };

/** Draws all the labels, or says why they can't be: too small for the type that may be printed. */
export function drawLabels(document: Document, { blocks, size, labels }: Paper & { labels: Labels }): Laid {
  document.addPage();
  const page = { width: document.page.width, height: document.page.height };
  const inside = page.width - 2 * margin;
  const around = labels.margin.map((text) => ({ is: "text" as const, text }));
  const notes = around.flatMap((block) => piecesOf(document, block, inside, margin_pt));
  const area = { width: inside, height: page.height - 2 * margin - heightOf(notes) - apart };
  const least_pt = points(labels.least_x_mm) / heights[regular].letters;
  const at = (width: number, pt: number): Piece[] =>
    blocks.flatMap((block) => piecesOf(document, block, width - 2 * padding, pt));
  const needs = (width: number, pt: number): number => heightOf(at(width, pt)) + 2 * padding;

  const sizeOf = (cell: Area): number | undefined => {
    for (let pt = most_pt; pt > least_pt; pt -= 0.25) if (needs(cell.width, pt) <= cell.height) return pt;
    return needs(cell.width, least_pt) <= cell.height ? least_pt : undefined;
  };
  const cells = cellsFor(area, labels);
  if (cells.length === 0) return { ok: false, why: tooLarge(labels, area) };
  const grids = cells.flatMap((each): Grid[] => {
    const pt = sizeOf(each.cell);
    return pt === undefined ? [] : [{ ...each, pt }];
  });
  const grid = best(grids, labels.copies);
  if (!grid) return { ok: false, why: tooSmall(labels, cells, least_pt, (width) => needs(width, least_pt)) };

  const onPage = grid.columns * grid.rows;
  const pieces = at(grid.cell.width, grid.pt);
  const copies = labels.copies ?? onPage;
  for (let n = 0; n < copies; n++) {
    if (n > 0 && n % onPage === 0) document.addPage();
    const [column, row] = [n % grid.columns, Math.floor((n % onPage) / grid.columns)];
    const [x, y] = [margin + column * grid.cell.width, margin + row * grid.cell.height];
    document.rect(x, y, grid.cell.width, grid.cell.height).lineWidth(0.3).strokeColor("#999999").stroke();
    drawAll(pieces, x + padding, y + padding);
    if (n % onPage === 0) drawAll(notes, margin, page.height - margin - heightOf(notes));
  }
  const pages = Math.ceil(copies / onPage);
  const sides = `${side(grid.cell.width)} × ${side(grid.cell.height)} mm`;
  const many = copies === 1 ? `a label of ${sides}` : `labels of ${sides}, ${onPage} to a page`;
  const name = size === "a4" ? "A4" : "US Letter";
  return {
    ok: true,
    assumed: [
      `${many}, ${pages === 1 ? `1 ${name} page` : `${pages} ${name} pages`}, in ${plain(grid.pt, 1)} pt type: a lower-case x is ${plain(millimetres(grid.pt * heights[regular].letters), 1)} mm tall`,
    ],
  };
}

const side = (length: number): string => plain(millimetres(length), 0);

/** The grids that there are: of the size that was said, else all that divide the page. */
function cellsFor(area: Area, { width_mm, height_mm }: Labels): Omit<Grid, "pt">[] {
  const [width, height] = [width_mm && points(width_mm), height_mm && points(height_mm)];
  const fits = (all: number, one: number) => Math.floor(all / one + 1e-9);
  const columns = width ? [fits(area.width, width)] : count(mostColumns);
  const rows = height ? [fits(area.height, height)] : count(mostRows);
  return columns.flatMap((across) =>
    rows.flatMap((down) =>
      across > 0 && down > 0
        ? [
            {
              columns: across,
              rows: down,
              cell: { width: width ?? area.width / across, height: height ?? area.height / down },
            },
          ]
        : [],
    ),
  );
}

const count = (most: number): number[] => Array.from({ length: most }, (_, n) => n + 1);

/** All on one page first, then the larger type, then fewer pages, then labels of a usual size. */
function best(grids: readonly Grid[], copies = usual): Grid | undefined {
  const rank = ({ columns, rows, pt }: Grid): number[] => {
    const pages = Math.ceil(copies / (columns * rows));
    return [
      Number(pages > 1),
      -Math.min(pt, comfortable_pt),
      pages,
      Math.abs(columns * rows - Math.max(copies, usual)),
    ];
  };
  const before = (a: Grid, b: Grid): number => {
    const [first, second] = [rank(a), rank(b)];
    return first.map((value, n) => value - (second[n] ?? 0)).find((each) => Math.abs(each) > 1e-6) ?? 0;
  };
  return [...grids].sort(before)[0];
}

const tooLarge = ({ width_mm, height_mm }: Labels, area: Area): string =>
  `A label of ${plain(width_mm ?? 0)} × ${plain(height_mm ?? 0)} mm is larger than the page: ${side(area.width)} × ${side(area.height)} mm can be printed.`;

function tooSmall(
  { law, least_x_mm, width_mm, height_mm }: Labels,
  cells: readonly Omit<Grid, "pt">[],
  least_pt: number,
  needs: (width: number) => number,
): string {
  const largest = cells.reduce((a, b) =>
    b.cell.width * b.cell.height > a.cell.width * a.cell.height ? b : a,
  ).cell;
  const has = `${side(largest.width)} × ${side(largest.height)} mm`;
  const takes = `${side(largest.width)} × ${plain(Math.ceil(millimetres(needs(largest.width))), 0)} mm`;
  const hint = width_mm || height_mm ? "Ask for a larger one, or leave the size out." : "Shorten the list.";
  return `It doesn't fit a label of ${has}: in the smallest type that may be printed (${plain(least_pt, 1)} pt, a lower-case x of ${plain(least_x_mm, 1)} mm; ${law}) it takes ${takes}. ${hint}`;
}
