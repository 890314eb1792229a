/** Facts as fields of a note. */
import type { Note } from "../contract/index.ts";
import type { Facts } from "./facts.ts";

/** The fields of a record's note that facts give; empty lists are left out of a change. */
export function fieldsOf(facts: Facts): Partial<Note> {
  const {
    absent: _absent,
    loose_min: _times,
    loose: _loose,
    wrong: _wrong,
    wrong_flavors: _flavors,
    assumed: _assumed,
    ...fields
  } = facts;
  return Object.fromEntries(
    Object.entries(fields).filter(
      ([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0),
    ),
  );
}
