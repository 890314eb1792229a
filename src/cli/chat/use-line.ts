import { useRef, useState } from "react";
import { type Edited, type Editor, edit, freshEditor, type Likely } from "./editor.ts";
import type { Key } from "./keys.ts";

export interface QuestionLine {
  /** As it is on the screen. */
  shown: Editor;
  /** Carries out keys and shows the result. */
  take(keys: readonly Key[]): Edited;
  /** Resolves when the history is kept. */
  settled(): Promise<unknown>;
}

/**
 * The question line and its history.
 * @param history lines of earlier sessions
 * @param likely how a line probably goes on
 * @param keep called with the lines that were added, never twice at once
 */
export function useLine(
  history: readonly string[],
  likely: Likely,
  keep: (lines: readonly string[]) => Promise<unknown>,
): QuestionLine {
  const [shown, setShown] = useState(() => freshEditor(history));
  // Several chunks can come between two frames: the ref is what they change, the state only shows it.
  const current = useRef(shown);
  const saving = useRef<Promise<unknown>>(Promise.resolve());
  return {
    shown,
    take(keys) {
      const edited = edit(current.current, keys, likely);
      current.current = edited.editor;
      setShown(edited.editor);
      if (edited.kept.length > 0) saving.current = saving.current.then(() => keep(edited.kept));
      return edited;
    },
    settled: () => saving.current,
  };
}
