/** "pastry cream x 2", "rosa ×1.5": so many times what was named, where nothing else is said. */
import type { Phrase } from "./phrase.ts";

const counted =
  "(?:note|log|box|boxes|bag|bags|tray|trays|timer|timers|egg|eggs|whites|yolks|macarons?|macs|shells?|cm|mm|and|or|what|whats|how|is|by|for|just|only|no|not|nope|actually|wait|sorry|oh|hm|jk|lol|haha|it|that|this|them|all|instead|rather|again|back|up|down)";

const done: Record<string, string> = { halved: "half of", doubled: "double", tripled: "triple" };

export const timesSign = (): readonly Phrase[] => [
  // "345 halved"
  {
    marks: [" halved", " doubled", " tripled"],
    from: /^((?:(?:ok|okay|and|so|now|then|please|whats|what's|what is),? )*)(\d+(?:\.\d+)?) (halved|doubled|tripled)((?: (?:please|pls|now|then))*)[ .?!]*$/g,
    to: (_, lead = "", number = "", how = "") => `${lead}${done[how]} ${number}`,
  },
  {
    marks: [" x", " ×"],
    from: new RegExp(
      `^((?:(?:ok|okay|and|so|now|then|please|make|do|scale|give me|the|my) )*(?:(?!${counted}\\b)[a-z][a-z'-]* ){1,4})[x×] ?(\\d(?:\\.\\d+)?)((?: (?:please|pls|now|then|instead))*)[ .?!]*$`,
      "g",
    ),
    to: "$1times $2$3",
  },
];
