/** Entries for tests, apart from the rest so that a test's own program can have them too. */
import type { RecordData } from "../../src/store/schema.ts";

export const noteNamed = (text: string): Omit<RecordData["notes"][number], "id"> => ({
  date: "2026-03-14",
  noted_ms: 1_773_500_000_000,
  text,
  flavors: ["pistachio"],
  problems: [],
});
