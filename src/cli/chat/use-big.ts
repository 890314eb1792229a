import { useStdout } from "ink";
import { useLayoutEffect, useRef } from "react";
import type { Timer } from "../../tools/contract/record.ts";
import { bigLines } from "./big.ts";
import type { Signs } from "./signs.ts";

// The terminal's second screen: what was on the first is there again when it is left.
const enter = "\u001b[?1049h\u001b[?25l\u001b[2J\u001b[H";
const leave = "\u001b[?1049l\u001b[?25h";
const clearLine = "\u001b[K";
const clearBelow = "\u001b[J";
/** Says to terminals that know it: show all of this at once. */
const [together, done] = ["\u001b[?2026h", "\u001b[?2026l"];

/** ink draws a little after it is told to, at most 34 ms: what it has begun belongs on the first screen. */
const settle_ms = 80;

/**
 * Draws the large timers on the terminal's second screen for as long as `on` holds. ink keeps out meanwhile: its own
 * frame must not change, and what listens to the window's size is set aside, since all of that would be drawn here.
 */
export function useBig(on: boolean, timers: readonly Timer[], now_ms: () => number, signs: Signs): void {
  const { stdout } = useStdout();
  const latest = useRef<Latest>({ timers, draw() {} });
  latest.current.timers = timers;
  useLayoutEffect(() => {
    if (!on) return;
    let leaveIt = () => {};
    const entering = setTimeout(() => {
      leaveIt = takeOver(stdout, () => latest.current, now_ms, signs);
    }, settle_ms);
    return () => {
      clearTimeout(entering);
      latest.current.draw = () => {};
      leaveIt();
    };
  }, [on, stdout, now_ms, signs]);
  useLayoutEffect(() => {
    if (on) latest.current.draw();
  });
}

interface Latest {
  timers: readonly Timer[];
  draw(): void;
}

/** Draws until it is called off: that is what it gives back. */
function takeOver(
  stdout: NodeJS.WriteStream,
  latest: () => Latest,
  now_ms: () => number,
  signs: Signs,
): () => void {
  const listeners = stdout.rawListeners("resize") as (() => void)[];
  const before = [stdout.columns, stdout.rows];
  let drawn = "";
  const draw = () => {
    const [columns, rows] = [stdout.columns || 80, stdout.rows || 24];
    const lines = bigLines({ timers: latest().timers, now_ms: now_ms(), columns, rows, signs });
    const screen = `\u001b[H${lines.map((line) => line + clearLine).join("\r\n")}${clearBelow}`;
    if (screen !== drawn) stdout.write(together + screen + done);
    drawn = screen;
  };
  const resized = () => {
    drawn = "";
    draw();
  };
  stdout.removeAllListeners("resize");
  stdout.on("resize", resized);
  latest().draw = draw;
  stdout.write(enter);
  draw();
  return () => {
    stdout.off("resize", resized);
    for (const listener of listeners) stdout.on("resize", listener);
    stdout.write(leave);
    // the first screen has to be laid out for a window that has another size now
    if (stdout.columns !== before[0] || stdout.rows !== before[1]) stdout.emit("resize");
  };
}
