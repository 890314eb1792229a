import { useRef, useState } from "react";
import type { Entry } from "./entry-view.tsx";
import type { Line } from "./tones.ts";

export interface Entries {
  shown: Entry[];
  add(lines: readonly Line[]): void;
  /** Keeps what is added back while `on`, and shows it afterwards: ink would write it onto the other screen. */
  hold(on: boolean): void;
}

/** What is finished, in order. It only grows. */
export function useEntries(first: readonly Line[]): Entries {
  const [shown, setShown] = useState<Entry[]>(() => (first.length > 0 ? [{ id: 0, lines: [...first] }] : []));
  const held = useRef<Line[][]>([]);
  const holding = useRef(false);
  const append = (all: Line[][]) =>
    setShown((before) => [...before, ...all.map((lines, at) => ({ id: before.length + at, lines }))]);
  return {
    shown,
    add(lines) {
      if (lines.length === 0) return;
      if (holding.current) held.current.push([...lines]);
      else append([[...lines]]);
    },
    hold(on) {
      holding.current = on;
      const all = held.current;
      if (on || all.length === 0) return;
      held.current = [];
      append(all);
    },
  };
}
