/** Who holds a lock, written down so that others can tell whether that process still runs. */
import { readFileSync, readlinkSync } from "node:fs";
import { hostname } from "node:os";

export interface Holder {
  /** Different for each lock ever taken. Begins with the process id, for whoever tidies. */
  token: string;
  pid: number;
  /** When the process started, in the system's own count; "" where the system doesn't say. */
  started: string;
  /** The machine and its process table: a process id means nothing outside of it. */
  place: string;
}

/** How a token is written, for those who look for one in a file's name. The number is the process id. */
export const tokenForm = "(\\d+)-[0-9a-z]+";

/** A name that no other process and no earlier moment of this one has. No random bytes: their module loads slowly. */
export const newToken = (): string => `${process.pid}-${process.hrtime.bigint().toString(36)}`;

export const describeHolder = (holder: Holder): string => JSON.stringify(holder);

/** This process, with a token of its own for one lock. */
export function newHolder(): Holder {
  self ??= { pid: process.pid, started: lifeOf("self")?.started ?? "", place: placeOfThis() };
  return { token: newToken(), ...self };
}

const wholeToken = new RegExp(`^${tokenForm}$`);

/** Reads a lock's text. Undefined where it names nobody in a way that this version knows. */
export function parseHolder(text: string): Holder | undefined {
  try {
    const { token, pid, started, place } = JSON.parse(text) as Partial<Holder>;
    if (!wholeToken.test(String(token)) || !Number.isInteger(pid) || Number(pid) < 1) return undefined;
    return { token: String(token), pid: Number(pid), started: String(started), place: String(place) };
  } catch {
    return undefined;
  }
}

/**
 * True when the holder is certain to run no more. In doubt (another machine, another container, a process id given
 * anew on a system that doesn't tell start times) it is taken to run: waiting loses nothing, a wrong guess does.
 */
export function isGone(holder: Holder): boolean {
  const here = newHolder();
  if (holder.place !== here.place) return false;
  if (!isRunning(holder.pid)) return true;
  if (here.started === "") return false;
  const life = lifeOf(String(holder.pid));
  // A process that ended but was never waited for still has its number; so may one that came later.
  return life !== undefined && (life.ended || life.started !== holder.started);
}

/** Whether any process has this number. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

let self: Omit<Holder, "token"> | undefined;

/** Linux tells when a process started, in ticks since the machine did, and whether it has ended. */
function lifeOf(pid: string): { started: string; ended: boolean } | undefined {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, "latin1");
    // The name before it, in brackets, may hold anything, brackets and spaces too.
    const after = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
    return { started: after[19] ?? "", ended: after[0] === "Z" || after[0] === "X" };
  } catch {
    return undefined;
  }
}

function placeOfThis(): string {
  try {
    return `${hostname()} ${readlinkSync("/proc/self/ns/pid")}`;
  } catch {
    return hostname();
  }
}
