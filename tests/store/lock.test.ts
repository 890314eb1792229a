import { spawn } from "node:child_process";
import { once } from "node:events";
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Files, nodeFiles } from "../../src/store/files.ts";
import { describeHolder, type Holder, isGone, newHolder, parseHolder } from "../../src/store/holder.ts";
import { underLock } from "../../src/store/lock.ts";
import { openStore } from "../../src/store/open.ts";
import { faultyFiles, fileOf, got, newHome, noting, readTexts } from "./support.ts";

/** A holder that is no more: its process id is above all that a system gives out. */
const gone = (token = "4194311-0123abcd"): Holder => ({ ...newHolder(), token, pid: 4_194_311 });
const lockOf = (home: string): string => `${fileOf(home)}.lock`;
const put = (path: string, holder: Holder): void => fs.writeFileSync(path, describeHolder(holder));
const onLinux = process.platform === "linux";

test("what this process writes into a lock is understood by those who find it", () => {
  const mine = newHolder();
  expect(parseHolder(describeHolder(mine))).toEqual(mine);
  expect(newHolder().token).not.toBe(mine.token);
  expect(isGone(mine)).toBe(false);
});

describe("one writer at a time", () => {
  test("a lock that is held is waited for, then the change goes through", async () => {
    const home = newHome();
    const order: string[] = [];
    const first = underLock(nodeFiles, lockOf(home), 0, async () => {
      order.push("first in");
      await new Promise((resolve) => setTimeout(resolve, 30));
      order.push("first out");
    });
    const second = openStore(home).change(() => {
      order.push("second in");
      return noting("x")();
    });
    got(await second);
    await first;
    expect(order).toEqual(["first in", "first out", "second in"]);
  });

  test("the wait is bounded: then it says busy, names the lock, and has written nothing", async () => {
    const home = newHome();
    put(lockOf(home), newHolder());
    const result = await openStore(home, { wait_ms: 40 }).change(noting("x"));
    expect(result).toMatchObject({ ok: false, problem: { kind: "busy", file: lockOf(home) } });
    expect(fs.readdirSync(home)).toEqual(["record.json.lock"]);
    fs.unlinkSync(lockOf(home));
    got(await openStore(home).change(noting("x")));
  });

  test("a lock deleted by hand and taken by another is left to the other", async () => {
    const home = newHome();
    const other = newHolder();
    await underLock(nodeFiles, lockOf(home), 0, async () => put(lockOf(home), other));
    expect(fs.readFileSync(lockOf(home), "utf8")).toBe(describeHolder(other));
  });

  test("a lock that this process could not remove doesn't shut it out", async () => {
    const home = newHome();
    const fault = faultyFiles();
    const store = openStore(home, { files: fault.files, wait_ms: 40 });
    fault.arm("unlinkSync", "EIO", 0, 1000);
    got(await store.change(noting("a")));
    fault.disarm();
    expect(fs.existsSync(lockOf(home))).toBe(true);
    got(await store.change(noting("b")));
    expect(await readTexts(store)).toEqual(["a", "b"]);
    expect(fs.existsSync(lockOf(home))).toBe(false);
  });
});

describe("a holder that is gone is succeeded at once", () => {
  const succeeds = async (home: string) => {
    got(await openStore(home, { wait_ms: 200 }).change(noting("x")));
    expect(fs.readdirSync(home)).toEqual(["record.json"]);
  };

  test("when its process has ended", async () => {
    const home = newHome();
    put(lockOf(home), gone());
    await succeeds(home);
  });

  test("when it died while succeeding another, and that one's successor too", async () => {
    const home = newHome();
    const [one, two, three] = ["4194311-00000001", "4194311-00000002", "4194311-00000003"] as const;
    put(lockOf(home), gone(one));
    put(`${lockOf(home)}.${one}`, gone(two));
    put(`${lockOf(home)}.${one}.${two}`, gone(three));
    await succeeds(home);
  });

  test.each(["", "\0\0\0\0"])("when the power went before it was written down: %j", async (text) => {
    const home = newHome();
    fs.writeFileSync(lockOf(home), text);
    await succeeds(home);
  });

  test.skipIf(!onLinux)("when another process has its number now", async () => {
    const home = newHome();
    put(lockOf(home), { ...newHolder(), started: "1" });
    await succeeds(home);
  });

  test.skipIf(!onLinux)("when it ended but nobody waited for it", async () => {
    // The shell starts a child and becomes a program that never waits for it. Only then the child is ended.
    const parent = spawn("sh", ["-c", "sleep 60 & echo $!; exec sleep 60"]);
    const until = async (holds: () => boolean) => {
      for (let tries = 0; !holds() && tries < 500; tries++) await new Promise((done) => setTimeout(done, 10));
      expect(holds()).toBe(true);
    };
    try {
      const [text] = await once(parent.stdout, "data");
      const pid = Number(String(text));
      const stat = () => fs.readFileSync(`/proc/${pid}/stat`, "latin1").split(" ");
      const child = { ...newHolder(), pid, started: stat()[21] ?? "" };
      expect(isGone(child)).toBe(false);
      await until(() => fs.readFileSync(`/proc/${parent.pid}/comm`, "utf8") === "sleep\n");
      process.kill(pid, "SIGKILL");
      await until(() => stat()[2] === "Z");
      expect(isGone(child)).toBe(true);
    } finally {
      parent.kill("SIGKILL");
    }
  });

  test.each(["pid 17", "null", '{"token":"../x","pid":1}'])(
    "but a lock that another version may have written is waited for: %j",
    async (text) => {
      const home = newHome();
      fs.writeFileSync(lockOf(home), text);
      const result = await openStore(home, { wait_ms: 20 }).change(noting("x"));
      expect(result).toMatchObject({ problem: { kind: "busy" } });
      expect(fs.readFileSync(lockOf(home), "utf8")).toBe(text);
    },
  );

  test("but one of another machine, whose processes can't be seen, is waited for", async () => {
    const home = newHome();
    put(lockOf(home), { ...gone(), place: "another machine" });
    expect(await openStore(home, { wait_ms: 20 }).change(noting("x"))).toMatchObject({
      problem: { kind: "busy" },
    });
  });
});

describe("two that would succeed the same dead holder don't both get in", () => {
  /** File operations that let others act right before a call of this process. */
  function interrupted(
    operation: "linkSync" | "unlinkSync" | "readFileSync",
    path: string,
    act: () => void,
  ): Files {
    let done = false;
    const hook = (...args: unknown[]) => {
      if (!done && (args[0] === path || args[1] === path)) {
        done = true;
        act();
      }
      return (nodeFiles[operation] as (...all: unknown[]) => unknown)(...args);
    };
    return { ...nodeFiles, [operation]: hook } as Files;
  }

  test("the second look: a lock taken anew since the first look is left alone", async () => {
    const home = newHome();
    const dead = gone();
    put(lockOf(home), dead);
    const winner = newHolder();
    // The other succeeds and takes the lock after this one saw the dead holder, and before it claims the succession.
    const files = interrupted("linkSync", `${lockOf(home)}.${dead.token}`, () => put(lockOf(home), winner));
    const result = await openStore(home, { files, wait_ms: 40 }).change(noting("x"));
    expect(result).toMatchObject({ problem: { kind: "busy" } });
    expect(fs.readFileSync(lockOf(home), "utf8")).toBe(describeHolder(winner));
    expect(fs.readdirSync(home)).toEqual(["record.json.lock"]);
  });

  test("the second lock: while one is about to remove the dead holder's lock, no other may", async () => {
    const home = newHome();
    const dead = gone();
    put(lockOf(home), dead);
    const claimant = newHolder();
    put(`${lockOf(home)}.${dead.token}`, claimant);
    const result = await openStore(home, { wait_ms: 40 }).change(noting("x"));
    expect(result).toMatchObject({ problem: { kind: "busy" } });
    expect(fs.readFileSync(lockOf(home), "utf8")).toBe(describeHolder(dead));
  });

  test("a succession is over with its lock: what is left of it is tidied away", async () => {
    const home = newHome();
    put(`${lockOf(home)}.4194311-00000001`, gone("4194311-00000002"));
    put(join(home, "record.json.lock.4194311-00000009"), newHolder());
    got(await openStore(home).change(noting("x")));
    expect(fs.readdirSync(home).sort()).toEqual(["record.json", "record.json.lock.4194311-00000009"]);
  });
});
