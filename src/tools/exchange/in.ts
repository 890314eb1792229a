/** Notes out of a file into the record: what is new, once; what can't be read, by its line. One undo takes it back. */
import type { Effect, Outcome, World } from "../contract/index.ts";
import { counted, listed } from "../lib/show.ts";
import { merged } from "./merge.ts";
import { type Found, readFound } from "./rows.ts";

/** So many of the rows that weren't read are shown. */
const mostShown = 20;

const were = (count: number, one: string) => `${counted(count, one)} ${count === 1 ? "was" : "were"}`;

/** @param found what the file held; without it the file is asked for */
export function answerImport(file: string | undefined, found: Found | undefined, world: World): Outcome {
  if (!file) {
    const question = "From which file? A CSV or JSON file, by its name.";
    return { status: "asking", headline: question, question, slot: "file" };
  }
  if (!found)
    return {
      status: "impossible",
      headline: `${file} can't be read from here.`,
      wants: { file, as: "notes" },
    };
  const { rows, unread, unknown, why } = readFound(found);
  if (why) return { status: "impossible", headline: `No note can be read from ${file}: ${why}` };
  if (rows.length === 0 && unread.length === 0)
    return { status: "impossible", headline: `There is no note in ${file}.` };
  const shown = unread.slice(0, mostShown);
  const left = unread.length - shown.length;
  const items = [
    ...shown.map((text) => ({ unread: text })),
    ...(left ? [{ unread: `and ${left} more` }] : []),
  ];
  if (rows.length === 0)
    return {
      status: "impossible",
      headline: `No note can be read from ${file}: ${unread[0]}${unread.length > 1 ? ` (and ${unread.length - 1} more)` : ""}`,
      items,
    };
  const { added, same, older } = merged(rows, world.notes, world.now_ms);
  const parts = [
    ...(same ? [`${were(same, "note")} there already`] : []),
    ...(older ? [`${were(older, "note")} there with more to ${older === 1 ? "it" : "them"}`] : []),
    ...(unread.length
      ? [`${were(unread.length, "row")} not read: ${shown[0]}${unread.length > 1 ? ", ..." : ""}`]
      : []),
  ];
  const head = added.length
    ? `${counted(added.length, "note")} added from ${file}`
    : `Nothing new in ${file}`;
  return {
    status: "answered",
    headline: [head, ...parts].join("; "),
    figures: [
      { name: "added", value: added.length, unit: "notes" },
      { name: "there already", value: same + older, unit: "notes" },
      { name: "not read", value: unread.length, unit: "rows" },
    ],
    ...(items.length ? { items } : {}),
    ...(unknown.length
      ? {
          cautions: [
            `Not taken: ${listed(unknown)}. Only notes, by the fields that they have, are taken in.`,
          ],
        }
      : {}),
    ...(added.length
      ? {
          effects: added.map((entry): Effect => ({ do: "add", list: "notes", entry })),
          change: `the import of ${counted(added.length, "note")}`,
        }
      : {}),
  };
}
