/** Brings records of older versions up to this one, a step at a time. */
import { version } from "./schema.ts";

/** A record of any version, before it is checked. */
export type Raw = Record<string, unknown>;

/** One step: takes a record of version `from` and returns it as version `from + 1` has it, in a new object. */
export interface Migration {
  from: number;
  up(old: Raw): Raw;
}

/** In order. A change of the schema adds one here, raises `version` there, and is never edited afterwards. */
export const migrations: readonly Migration[] = [
  // planned days came with version 2
  {
    from: 1,
    up: ({ last_ids, ...rest }) => ({ plans: [], ...rest, last_ids: { plans: 0, ...Object(last_ids) } }),
  },
  // old notes and timers went into files of their own with version 3
  { from: 2, up: (rest) => ({ ...rest, sealed: [] }) },
];

/**
 * Runs the steps from the record's own version up to `target`, a whole number of 1 or more, and sets the version.
 * Undefined where the record's version is none, a step is missing, or a step fails on what it finds.
 */
export function migrate(
  raw: Raw,
  steps: readonly Migration[] = migrations,
  target = version,
): Raw | undefined {
  let current = raw;
  for (let at = raw.version; at !== target; ) {
    const step = steps.find((each) => each.from === at);
    if (!step) return undefined;
    try {
      current = { ...step.up(current), version: step.from + 1 };
    } catch {
      return undefined;
    }
    at = step.from + 1;
  }
  return current;
}
