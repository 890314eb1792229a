/** What a filling is made of, as one bar of a hundred per cent. */
import type { Answer } from "../../../tools/contract/index.ts";
import { plain } from "../../../tools/lib/show.ts";
import type { Signs } from "../signs.ts";
import { wrapped } from "../wrap.ts";
import { barCells, cut, leastPlot } from "./bars.ts";

const indent = "  ";
/** In the order in which they stand in the bar. */
const names = ["water", "fat", "sugar"];

/** A stacked bar of water, fat, sugar and the rest, each with its own sign, named below it; none without them. */
export function compositionPlot({ figures = [] }: Answer, columns: number, signs: Signs): string[] {
  const parts = names.flatMap((name) => {
    const share = figures.find((each) => each.name === name && each.unit === "%")?.value;
    return share === undefined ? [] : [{ name, share }];
  });
  const rest = 100 - parts.reduce((sum, part) => sum + part.share, 0);
  if (parts.length < names.length || rest < -0.5 || columns < leastPlot) return [];
  const all = rest > 0.05 ? [...parts, { name: "the rest", share: rest }] : parts;
  const sizes = cut(
    all.map(({ share }) => share),
    barCells(columns, indent.length),
  );
  const sign = (at: number) => signs.parts[at] ?? signs.empty;
  const bar = sizes.map((size, at) => sign(at).repeat(size)).join("");
  // a space that doesn't break, so that a sign stays with its name
  const key = all.map(({ name, share }, at) =>
    `${sign(at)} ${name} ${plain(share, 0)} %`.replaceAll(" ", "\u00a0"),
  );
  return [
    indent + bar,
    ...wrapped(key.join("  "), columns, { first: indent, rest: indent }).map((line) =>
      line.replaceAll("\u00a0", " "),
    ),
  ];
}
