/** PDFs read back by a reader of its own, which shares nothing with the library that makes them. */
import { getDocumentProxy } from "unpdf";

export interface Piece {
  text: string;
  /** Size of its type, and its place from the lower left, in points. */
  size: number;
  x: number;
  y: number;
  width: number;
}

export interface Page {
  /** In mm. */
  width: number;
  height: number;
  pieces: Piece[];
  /** All of it, its lines joined by blanks. */
  text: string;
}

export async function pagesOf(bytes: Uint8Array | undefined): Promise<Page[]> {
  if (!bytes) throw new Error("no PDF");
  const pdf = await getDocumentProxy(new Uint8Array(bytes));
  const pages: Page[] = [];
  for (let n = 1; n <= pdf.numPages; n++) {
    const page = await pdf.getPage(n);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const pieces = items.flatMap((item): Piece[] =>
      "str" in item && item.str.trim() !== ""
        ? [
            {
              text: item.str,
              size: Math.hypot(item.transform[2], item.transform[3]),
              x: item.transform[4],
              y: item.transform[5],
              width: item.width,
            },
          ]
        : [],
    );
    pages.push({
      width: ((right - left) / 72) * 25.4,
      height: ((top - bottom) / 72) * 25.4,
      pieces,
      // the font's one mu is the micro sign's as well as the Greek letter's
      text: items
        .map((item) => ("str" in item ? `${item.str}${item.hasEOL ? " " : ""}` : ""))
        .join("")
        .replace(/\s+/g, " ")
        .replaceAll("μ", "µ"),
    });
  }
  return pages;
}

/** What the file says of itself. */
export async function titleOf(bytes: Uint8Array): Promise<string | undefined> {
  const pdf = await getDocumentProxy(new Uint8Array(bytes));
  const { info } = await pdf.getMetadata();
  return (info as { Title?: string }).Title;
}
