/** "pastry cream x 2", "rosa ×1.5": so many times what was named, where nothing else is said. */
import type { Phrase } from "./phrase.ts";

const counted =
  "(?:note|log|box|boxes|bag|bags|tray|trays|timer|timers|egg|eggs|whites|yolks|macarons?|macs|shells?|cm|mm|and|or|what|whats|how|is|by|for|just|only|no|not|nope|actually|wait|sorry|oh|hm|jk|lol|haha|it|that|this|them|all|instead|rather|again|back|up|down)";

export const timesSign: readonly Phrase[] = [
  {
    marks: [" x", " ×"],
    from: new RegExp(
      `^((?:(?:ok|okay|and|so|now|then|please|make|do|scale|give me|the|my) )*(?:(?!${counted}\\b)[a-z][a-z'-]* ){1,4})[x×] ?(\\d(?:\\.\\d+)?)((?: (?:please|pls|now|then|instead))*)[ .?!]*$`,
      "g",
    ),
    to: "$1times $2$3",
  },
];
