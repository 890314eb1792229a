/** What is said not to be in it: "no butter", "without nuts or milk", "egg free". Free range eggs are in it. */
import type { Span } from "../contract/index.ts";

const before =
  /\b(?:no|not|nor|without|free of|free from|isnt|minus|instead of|rather than|never) (?:any |the |a )?(?:[a-z]+ (?:or|nor) )*$/;
/** "almond free", but neither "almond, free range egg" nor "butter free from salt". */
export const freeBehind = "free\\b(?![ -]?(?:range|from|of|flow\\w*|trade|run|farm\\w*)\\b)";
const behind = new RegExp(`^[ -]?${freeBehind}`);

/** Whether the words at that place are refused. */
export const isRefusedAt = (text: string, [start, end]: Span): boolean =>
  before.test(text.slice(0, start)) || behind.test(text.slice(end));
