/** Takes the last change to the record back: a timer, a note, a setting, whatever it was. */
import * as z from "zod/mini";
import { tool } from "./contract/index.ts";
import { cues } from "./lib/cue.ts";

const inputs = z.strictObject({});

const lead =
  "(?:(?:no|oh|oops|whoops|wait|sorry|please|pls|can you|could you|and|actually|ok|just|um|argh) )*(?:[,] )?";
const end = "(?: (?:please|pls|again|now|then|for me|[.!?]))*$";
const last =
  "(?:that|it|this|the last (?:change|thing|one|note|timer|entry|step)|what i (?:just )?(?:did|said)|my last \\S+)";

export const undo = tool<z.infer<typeof inputs>>({
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
      `revert ${last}`,
      `^${lead}revert${end}`,
      `reverse ${last}`,
    ],
    [
      4,
      `^${lead}scrap ${last}${end}`,
      "(?:put|change|set) it back (?:how|the way|to what) it was",
      "^go back one(?: step)?$",
      "i (?:didnt|did not) mean (?:to do |to |to say )?(?:that|it)$",
    ],
    [3, "undo"],
    [-3, "{weight}", "{volume}", "{percent}", "(?:how|what)(?! i )"],
  ),
  examples: [
    { say: "undo", inputs: {} },
    { say: "undo that", inputs: {} },
    { say: "take that back", inputs: {} },
    { say: "scrap that", inputs: {} },
    { say: "revert the last change", inputs: {} },
  ],
  elsewhere: [
    { say: "take 5 min off the oven timer", tool: "timer" },
    { say: "cancel the syrup timer", tool: "timer" },
    { say: "forget my mat", tool: "bench" },
  ],
  read: () => ({}),
  compute(_inputs, world) {
    if (world.undoable === undefined)
      return { status: "impossible", headline: "There is nothing to undo: nothing was changed." };
    return { status: "answered", headline: `Taken back: ${world.undoable}.`, effects: [{ do: "undo" }] };
  },
});
