/** Takes the last change to the record back, whatever it was, or goes back to the record of an earlier day. */

import * as z from "zod/mini";
import { opening } from "../../data/words/openers.ts";
import { later, tool } from "./contract/index.ts";
import { goBack, listCopies } from "./lib/copies.ts";
import { cues, sign } from "./lib/cue.ts";
import { placeless, whenSaid } from "./lib/when-said.ts";

const inputs = later(() =>
  z.strictObject({
    /** Nothing: the last change. A day's record, or which days there are. */
    what: z.optional(z.enum(["day", "days"])),
    when: z.optional(whenSaid),
  }),
);

const record = "(?:record|records|notebook|copy|copies|backup|backups)";
const goes = "(?:go|going|get|bring|put|take|want|switch|roll|set|turn|reset|have)";
const copiesAsked =
  "(?:copies|backups) (?:of|from) (?:my|the) (?:record|notes|notebook|data)|(?:daily|record|older|old|earlier) (?:copies|backups)|(?:which|what|any) (?:backups|days can i go back)";
const backToDay = [
  `${goes} .. back .. {when} .. ${record}`,
  `${goes} .. back .. ${record} .. {when}`,
  `(?:restore|recover) .. {when} .. ${record}`,
  `(?:restore|recover) .. ${record}`,
  `${record} .. back .. {when}`,
  `{when} .. ${record} back`,
  `${record} .. {when} back`,
  `${goes} .. back .. (?:last|latest|newest|older|earlier|previous) (?:daily )?${record}`,
];

const lead = `${opening}(?:(?:can you|could you|just|argh) )*`;
const end = "(?: (?:please|pls|again|now|then|for me|[.!?]))*$";
const last =
  "(?:that|it|this|the last (?:change|thing|one|note|timer|entry|step)|(?:what|whatever) i (?:just |last )?(?:did|said|changed|told you)(?: last)?|my last \\S+)";

export const undo = tool<z.infer<ReturnType<typeof inputs>>>({
  name: "undo",
  purpose: "Take the last change to your notes, timers, shelf or bench back",
  inputs,
  cues: cues(
    [
      4,
      `^${lead}undo(?: ${last})?${end}`,
      `(?:take|took) ${last} back`,
      `take back ${last}`,
      `undo ${last}`,
      `^${lead}(?:take back|undo|revert|reverse) (?:the )?last${end}`,
      `revert ${last}`,
      `^${lead}revert${end}`,
      `reverse ${last}`,
    ],
    // "mat is torn, undo that 24 circles"
    [9, "(?:^|, )undo (?:that|the|this|my) "],
    [
      4,
      `^${lead}scrap ${last}${end}`,
      "(?:put|change|set) it back (?:how|the way|to what) it was",
      `^${lead}(?:scratch|strike) (?:that|it|this)(?: (?:last )?(?:note|one|timer))?${end}`,
      "^go back one(?: step)?$",
      "i (?:didnt|did not) mean (?:to do |to |to say )?(?:that|it)$",
    ],
    [4, ...backToDay, copiesAsked],
    [3, "undo"],
    [
      -3,
      "{weight}",
      "{volume}",
      "{percent}",
      "how(?! i | it | they | everything )",
      "what(?! i | copies | backups | days | record )",
    ],
  ),
  examples: [
    { say: "undo", inputs: {} },
    { say: "undo that", inputs: {} },
    { say: "take that back", inputs: {} },
    { say: "scrap that", inputs: {} },
    { say: "revert the last change", inputs: {} },
    { say: "go back to yesterday's record", inputs: { what: "day", when: { days: -1 } } },
    { say: "restore friday's record", inputs: { what: "day", when: { weekday: 5 } } },
    { say: "which copies of my record are there", inputs: { what: "days" } },
  ],
  elsewhere: [
    { say: "take 5 min off the oven timer", tool: "timer" },
    { say: "cancel the syrup timer", tool: "timer" },
    { say: "forget my mat", tool: "bench" },
    { say: "which batch did i bake yesterday", tool: "recall" },
  ],
  read({ mask, whens: [when] }) {
    if (backToDay.some((pattern) => sign(pattern).test(mask)))
      return { what: "day" as const, ...(when ? { when: placeless(when) } : {}) };
    return sign(copiesAsked).test(mask) ? { what: "days" as const } : {};
  },
  compute(asked, world) {
    if (asked.what === "day") return goBack(asked.when, world);
    if (asked.what === "days") return listCopies(world);
    if (world.undoable === undefined)
      return { status: "impossible", headline: "There is nothing to undo: nothing was changed." };
    return { status: "answered", headline: `Taken back: ${world.undoable}.`, effects: [{ do: "undo" }] };
  },
});
