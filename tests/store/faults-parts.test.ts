/** Each file operation made to fail while old entries move, a copy is made and the record is replaced. */
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { addNotes, grown, later, numbered, textsOf } from "./growth.ts";
import { doing, faultyFiles, got, newHome, operations, readTexts } from "./support.ts";

/** All files below the home by name and content. */
const snapshot = (home: string) =>
  Object.fromEntries(
    fs
      .readdirSync(home, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => [
        join(entry.parentPath, entry.name),
        fs.readFileSync(join(entry.parentPath, entry.name), "utf8"),
      ]),
  );

/** What is there beyond `before`, but for what a process that lives may have left to be tidied. */
const beyond = (home: string, before: Record<string, string>) =>
  Object.entries(snapshot(home)).flatMap(([name, text]) =>
    before[name] !== text && !/\.(?:tmp|new|lock)(?:$|\.)/.test(name) ? [name.slice(home.length)] : [],
  );

const tries = {
  "an old note changed on a new day": {
    work: doing([{ do: "change", list: "notes", id: 5, patch: { text: "tried" } }], "it"),
    wanted: numbered(1, 600).with(4, "tried"),
  },
  "so many notes added that some move": { work: doing(addNotes(601, 700), "it"), wanted: numbered(1, 700) },
} as const;

let master: string | undefined;
async function home600(): Promise<string> {
  const home = newHome();
  master ??= await grown(600);
  fs.cpSync(master, home, { recursive: true });
  return home;
}

describe.each(Object.entries(tries))("%s", (_, { work, wanted: after }) => {
  test("with each operation failing at each of its calls: all of it is there or none", {
    timeout: 120_000,
  }, async () => {
    let [failed, went] = [0, 0];
    master = undefined;
    for (const operation of operations) {
      for (let call = 0; ; call++) {
        const home = await home600();
        const before = snapshot(home);
        const fault = faultyFiles();
        const store = later(home, 1, fault.files);
        fault.arm(operation, call % 2 ? "ENOSPC" : "EIO", call);
        const result = await store.change(work);
        fault.disarm();
        if (fault.fired() === 0) break;
        const at = `${operation} ${call}`;
        if (result.ok) went++;
        else {
          failed++;
          expect([at, beyond(home, before)]).toEqual([at, []]);
        }
        const wanted: readonly string[] = result.ok ? after : numbered(1, 600);
        expect([at, textsOf(got(await store.read()).record)]).toEqual([at, wanted]);
        expect([at, store.late()]).toEqual([at, undefined]);
        got(await store.change(doing([{ do: "remove", list: "notes", id: 600 }], "next")));
        expect([at, await readTexts(later(home, 1))]).toEqual([
          at,
          wanted.filter((text) => text !== "note 600"),
        ]);
      }
    }
    expect(failed).toBeGreaterThan(15);
    expect(went).toBeGreaterThan(3);
  });
});
