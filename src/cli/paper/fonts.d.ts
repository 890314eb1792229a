declare module "pdfkit/standard-fonts/*" {
  /** The font's metrics, in thousandths of its size. */
  const font: { name: string; xHeight: number; capHeight: number };
  export default font;
}
