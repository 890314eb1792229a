/** Turns a paper into a PDF. A bundle of its own: the library is loaded when something is printed, not before. */
import type { Paper } from "../../tools/contract/index.ts";
import { drawLabels } from "./labels.ts";
import { bytesOf, openDocument } from "./library.ts";
import { drawSheet } from "./sheet.ts";

export type Made = { ok: true; bytes: Uint8Array; assumed: string[] } | { ok: false; why: string };

/**
 * The same paper gives the same bytes. Its text has to be what the fonts have, as src/tools/lib/printable makes it.
 * @returns why not, where labels can't hold their text in legible type
 */
export async function makePdf(paper: Paper): Promise<Made> {
  const document = openDocument(paper.title, paper.size, paper.made_ms);
  const { labels } = paper;
  if (!labels) {
    drawSheet(document, paper);
    return { ok: true, bytes: await bytesOf(document), assumed: [] };
  }
  const laid = drawLabels(document, { ...paper, labels });
  return laid.ok ? { ok: true, bytes: await bytesOf(document), assumed: laid.assumed } : laid;
}
