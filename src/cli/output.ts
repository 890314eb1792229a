/**
 * Writing without node's stream objects: making them costs as much as an answer does. A single question writes once
 * and ends.
 */
import { fstatSync, statSync, writeSync } from "node:fs";
import { devNull } from "node:os";

/** True when a descriptor is a terminal. */
export function isTerminal(descriptor: number): boolean {
  try {
    const found = fstatSync(descriptor);
    // A pipe or a file never is; only for what may be one node's terminals are loaded. Before 20.16 it can't be asked.
    if (!found.isCharacterDevice() || found.rdev === statSync(devNull).rdev) return false;
    return process.getBuiltinModule?.("node:tty").isatty(descriptor) ?? true;
  } catch {
    return false;
  }
}

/** Writes all of a text; waits where the reader is slow, and stops where it has gone away ("| head"). */
export function writeAll(descriptor: number, text: string): void {
  let rest = Buffer.from(text);
  while (rest.length > 0) {
    try {
      rest = rest.subarray(writeSync(descriptor, rest));
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === "EPIPE") return;
      if (code !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5);
    }
  }
}
