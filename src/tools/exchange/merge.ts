/** What of a file is new: a note that is there already isn't added again, nor an earlier state of one. */
import type { Note } from "../contract/index.ts";
import type { Row } from "./rows.ts";

export interface Merged {
  added: Omit<Note, "id">[];
  /** Rows that are in the record word for word. */
  same: number;
  /** Rows that are in the record with more to them: what was added or corrected since stays. */
  older: number;
}

/** The same whatever the order of its fields; an empty list says as much as none. */
function keyOf(note: Partial<Note>): string {
  const { id: _id, noted_ms: _noted, ...fields } = note;
  const said = Object.entries(fields).filter(
    ([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0),
  );
  return JSON.stringify(said.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** A note's words get longer when it is added to or corrected; its moment stays. */
const isOlder = (row: Row, note: Note): boolean =>
  row.noted_ms === note.noted_ms &&
  row.text !== "" &&
  note.text.startsWith(`${row.text.replace(/[\s.,;]+$/, "")};`);

/** @param now_ms when rows without a moment are said to be noted */
export function merged(rows: readonly Row[], notes: readonly Note[], now_ms: number): Merged {
  const open = new Map<string, Note[]>();
  for (const note of notes) open.set(keyOf(note), [...(open.get(keyOf(note)) ?? []), note]);
  const added: Omit<Note, "id">[] = [];
  let [same, older] = [0, 0];
  for (const row of rows) {
    // each note of the record answers for one row, so that two alike stay two
    const left = open.get(keyOf(row)) ?? [];
    const at = left.findIndex((note) => row.noted_ms === undefined || row.noted_ms === note.noted_ms);
    if (at >= 0) {
      left.splice(at, 1);
      same += 1;
    } else if (notes.some((note) => isOlder(row, note))) older += 1;
    else added.push({ ...row, noted_ms: row.noted_ms ?? now_ms });
  }
  return { added, same, older };
}
