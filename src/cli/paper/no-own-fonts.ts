/** In place of the library's reader of font files, which nothing here uses: papers are set in the standard fonts. */
export function create(): never {
  throw new Error("only the standard fonts are used");
}
