import { describe, expect, test } from "vitest";
import { checkRecord } from "../../src/store/check.ts";
import { type Migration, migrate, migrations } from "../../src/store/migrations.ts";
import { emptyRecord, version } from "../../src/store/schema.ts";
import { textOf } from "../../src/store/text.ts";
import { sample } from "./sample.ts";

const rename: Migration = { from: 1, up: ({ oven, ...rest }) => ({ ...rest, oven_c: oven }) };
const toKelvin: Migration = { from: 2, up: (old) => ({ ...old, oven_k: Number(old.oven_c) + 273 }) };

describe("migrations", () => {
  test("run from the record's version to the wanted one, each once and in order", () => {
    const old = { version: 1, oven: 150 };
    expect(migrate(old, [toKelvin, rename], 3)).toEqual({ version: 3, oven_c: 150, oven_k: 423 });
    expect(migrate({ version: 2, oven_c: 150 }, [rename, toKelvin], 3)).toEqual({
      version: 3,
      oven_c: 150,
      oven_k: 423,
    });
    expect(old).toEqual({ version: 1, oven: 150 });
  });

  test("leave a record of this version alone", () => {
    const record = { version: 3 };
    expect(migrate(record, [rename, toKelvin], 3)).toBe(record);
  });

  test.each<[string, Record<string, unknown>, Migration[]]>([
    ["a version that no step starts from", { version: 0 }, [rename, toKelvin]],
    ["a step that is missing on the way", { version: 1 }, [rename]],
    ["no version", {}, [rename, toKelvin]],
    ["a version that is no number", { version: "1" }, [rename, toKelvin]],
    ["a version between two", { version: 1.5 }, [rename, toKelvin]],
    [
      "a step that fails",
      { version: 1 },
      [
        {
          from: 1,
          up: () => {
            throw new TypeError("no oven");
          },
        },
        toKelvin,
      ],
    ],
  ])("give up on %s", (_, raw, steps) => {
    expect(migrate(raw, steps, 3)).toBeUndefined();
  });

  test("in force lead from version 1 to this one without a gap", () => {
    expect(migrations.map(({ from }) => from)).toEqual(Array.from({ length: version - 1 }, (_, n) => n + 1));
  });

  test("are run on reading: an old record is sound, and no longer where a step is missing", () => {
    const bytes = Buffer.from(
      textOf(emptyRecord())
        .replace(`"version": ${version}`, '"version": 0')
        .replace('"notes": []', '"pages": []'),
    );
    const step: Migration = { from: 0, up: ({ pages, ...rest }) => ({ ...rest, notes: pages }) };
    expect(checkRecord(bytes, [step, ...migrations])).toEqual({
      record: emptyRecord(),
      state: "sound",
      version: 0,
    });
    expect(checkRecord(bytes, []).state).toBe("damaged");
  });

  test("a record of version 1, from before planned days were kept, is read whole and sound", () => {
    const { plans: _plans, last_ids, ...rest } = sample;
    const { plans: _last, ...ids } = last_ids;
    const found = checkRecord(Buffer.from(JSON.stringify({ ...rest, version: 1, last_ids: ids })));
    expect(found).toEqual({ record: sample, state: "sound", version: 1 });
  });
});
