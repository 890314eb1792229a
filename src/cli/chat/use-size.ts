import { useStdout } from "ink";
import { useLayoutEffect, useState } from "react";

export interface Size {
  columns: number;
  rows: number;
  /** The window is being dragged, or was a moment ago. */
  settling: boolean;
}

const settle_ms = 120;

/**
 * The window's size in cells, kept current.
 *
 * A terminal that gets lower drops the lines below its cursor, and ink, which goes down over them before it
 * wipes its last frame, would then wipe as many finished lines above it. So room for them is made first.
 * @param below how many lines of the last frame are below the cursor
 */
export function useSize(below: () => number): Size {
  const { stdout } = useStdout();
  const [size, setSize] = useState<Size>({ ...read(stdout), settling: false });
  useLayoutEffect(() => {
    let quiet: NodeJS.Timeout | undefined;
    const changed = () => {
      clearTimeout(quiet);
      const lines = below();
      if (lines > 0) stdout.write(`${"\n".repeat(lines)}\u001b[${lines}A`);
      setSize({ ...read(stdout), settling: true });
      quiet = setTimeout(() => setSize({ ...read(stdout), settling: false }), settle_ms);
    };
    // Ahead of ink's own listener.
    stdout.prependListener("resize", changed);
    return () => {
      clearTimeout(quiet);
      stdout.off("resize", changed);
    };
  }, [stdout, below]);
  return size;
}

const read = (stdout: NodeJS.WriteStream) => ({ columns: stdout.columns || 80, rows: stdout.rows || 24 });
