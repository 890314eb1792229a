import { useStdin, useStdout } from "ink";
import { useLayoutEffect, useRef } from "react";
import { decode, flush, freshDecoder, type Key } from "./keys.ts";

const pasteMarksOn = "\u001b[?2004h";
const pasteMarksOff = "\u001b[?2004l";
const interrupt = "\u0003";
/** How long after a lone Escape what follows is no longer part of a sequence. */
const sequence_ms = 60;

/**
 * Hands over every key from the terminal. It reads the stream itself: ink's own reading drops the escape that
 * tells a pasted text from a typed one, and takes a sequence that comes in two pieces for text.
 *
 * Set up and taken down in layout effects, which ink runs even when a signal ends the process: the terminal
 * gets its paste mode and its line mode back.
 * @param onKeys called with what one chunk holds
 * @param onEnd the terminal is gone
 * @param onAny called first with whatever came; what it takes for itself (true) goes no further
 */
export function useKeys(onKeys: (keys: Key[]) => void, onEnd: () => void, onAny: () => boolean): void {
  const { stdin } = useStdin();
  const { stdout } = useStdout();
  const latest = useRef({ onKeys, onEnd, onAny });
  latest.current = { onKeys, onEnd, onAny };
  useLayoutEffect(() => {
    let state = freshDecoder;
    let waiting: NodeJS.Timeout | undefined;
    const take = (read: ReturnType<typeof decode>) => {
      state = read.state;
      if (read.keys.length > 0) latest.current.onKeys(read.keys);
    };
    const onData = (chunk: string | Buffer) => {
      clearTimeout(waiting);
      const text = String(chunk);
      // Ctrl-C is heard from anywhere
      if (latest.current.onAny() && text !== interrupt) return;
      take(decode(state, text));
      if (state.pending) waiting = setTimeout(() => take(flush(state)), sequence_ms);
    };
    const ended = () => latest.current.onEnd();
    stdin.setEncoding("utf8");
    stdin.setRawMode?.(true);
    stdin.ref?.();
    stdin.on("data", onData);
    stdin.on("end", ended);
    // Stays on: a terminal that is torn away reports it late, and unheard that would end in a stack trace.
    stdin.on("error", ended);
    stdout.write(pasteMarksOn);
    return () => {
      clearTimeout(waiting);
      stdin.off("data", onData);
      stdin.off("end", ended);
      stdin.pause();
      stdin.setRawMode?.(false);
      stdin.unref?.();
      stdout.write(pasteMarksOff);
    };
  }, [stdin, stdout]);
}
