/** The PDF library, with the two fonts that papers are set in: both are in every reader, none is embedded. */
import * as pdfkit from "pdfkit";
import Regular from "pdfkit/standard-fonts/Helvetica";
import Bold from "pdfkit/standard-fonts/HelveticaBold";

/** The library's build without files of its own, which is the one that is bundled, has to be handed its fonts. */
const { registerStdFonts } = pdfkit as { registerStdFonts?(...fonts: unknown[]): void };
registerStdFonts?.(Regular, Bold);

export type Document = PDFKit.PDFDocument;

export const regular = "Helvetica";
export const bold = "Helvetica-Bold";

/** Heights in type of one point. Source: the fonts' own metrics (AFM); a digit's from its outline's box. */
export const heights = {
  [regular]: { letters: Regular.xHeight / 1000, digits: 0.703 },
  [bold]: { letters: Bold.xHeight / 1000, digits: 0.71 },
} as const;

const point_mm = 25.4 / 72;
export const points = (mm: number): number => mm / point_mm;
export const millimetres = (pt: number): number => pt * point_mm;

/** Width and height in points. A4: ISO 216, 210 × 297 mm. Letter: 8.5 × 11 in. */
export const pageSizes = {
  a4: [points(210), points(297)],
  letter: [612, 792],
} as const;

export function openDocument(title: string, size: keyof typeof pageSizes, made_ms: number): Document {
  const [width, height] = pageSizes[size];
  return new pdfkit.default({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    displayTitle: true,
    lang: "en",
    info: { Title: title, Creator: "bowlside", Producer: "bowlside", CreationDate: new Date(made_ms) },
  });
}

/** The finished file. */
export function bytesOf(document: Document): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    document.on("end", () => resolve(Buffer.concat(chunks)));
    document.on("error", reject);
    document.end();
  });
}
