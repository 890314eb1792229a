// Cues that are no walk are regular expressions. In the built program's tables each says how it begins and what it needs.
import { headOf } from "./pattern-head.mjs";
import { wordsOf } from "./pattern-words.mjs";

/** A walk begins with a sign of the table's own. */
const isWalk = (written) => written < " ";

/** @param table as the program wrote it: a line a cue has tabs, and those before them have none */
export const withHeads = (table) =>
  table
    .split("\n")
    .map((line) => {
      const [weight, needs, written] = line.split("\t");
      if (!written || isWalk(written)) return line;
      const lists = wordsOf(written).filter((list) => !/[\n\t|]/.test(list.join("")));
      return [weight, needs, written, headOf(written) ?? "", ...lists.map((list) => list.join("|"))].join(
        "\t",
      );
    })
    .join("\n");
