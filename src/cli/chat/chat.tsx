import { Box, Static, useApp, useCursor, useIsScreenReaderEnabled, useStdout } from "ink";
import { type ReactNode, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import { type Entry, EntryView, LineView } from "./entry-view.tsx";
import { layFrame } from "./frame.ts";
import type { ChatOptions } from "./options.ts";
import { signsFor } from "./signs.ts";
import { type Line, wantsColor } from "./tones.ts";
import { startTurns, type Turns } from "./turns.ts";
import { useKeys } from "./use-keys.ts";
import { useLine } from "./use-line.ts";
import { useSize } from "./use-size.ts";
import { useTimers } from "./use-timers.ts";
import { farewellLines, introLines, ringLines, startOverLines, troubleLines, turnLines } from "./words.ts";

const bell = "\u0007";

export interface ChatProps {
  options: ChatOptions;
  history: readonly string[];
  env: Readonly<Record<string, string | undefined>>;
  /** Hands over how to end the work under way, for after the screen is gone. */
  onStart(stop: () => Promise<unknown>): void;
}

/** The whole chat: what is finished above, what is live below. */
export function Chat({ options, history, env, onStart }: ChatProps): ReactNode {
  const { exit } = useApp();
  const { stdout } = useStdout();
  const { setCursorPosition } = useCursor();
  const still = useIsScreenReaderEnabled();
  const below = useRef(0);
  const size = useSize(useCallback(() => below.current, []));
  const [signs, color] = useMemo(() => [signsFor(env), wantsColor(env)], [env]);
  const [opened_ms] = useState(() => options.now_ms());
  const [entries, setEntries] = useState<Entry[]>(() => [
    { id: 0, lines: introLines(options.intro, options.home, size.columns) },
  ]);
  const [closing, setClosing] = useState(false);
  // What the queue and the watch need from later renders than the one they were made in.
  const now = useRef({ columns: size.columns, running: 0 });

  const add = (lines: Line[]) => {
    if (lines.length > 0) setEntries((before) => [...before, { id: before.length, lines }]);
  };
  const trouble = (error: unknown) => add(troubleLines(error, now.current.columns));
  const leave = () => {
    add(farewellLines(now.current.running, now.current.columns));
    setClosing(true);
  };

  const timers = useTimers({
    world: () => options.session.world(),
    now_ms: () => options.now_ms(),
    ring: (ids) => options.ring(ids),
    announce(due) {
      stdout.write(bell);
      add(ringLines(due, options.now_ms(), opened_ms, now.current.columns));
    },
    trouble,
  });
  now.current = { columns: size.columns, running: timers.running.length };

  // biome-ignore lint/correctness/useExhaustiveDependencies: one queue for the life of the chat
  const turns = useMemo<Turns>(
    () =>
      startTurns({
        ask: (line) => options.session.ask(line),
        show: (turn) => add(turnLines(turn, now.current.columns, signs)),
        startOver: () => add(startOverLines(now.current.columns)),
        after: () => timers.watch.look(),
        trouble,
        leave,
      }),
    [],
  );

  const line = useLine(history, (lines) => options.saveHistory(lines).catch(trouble));
  useKeys(
    (keys) => {
      const edited = line.take(keys);
      turns.submit(edited.submitted);
      if (edited.leave === "in turn") turns.leave();
      else if (edited.leave === "now" && !closing) leave();
    },
    () => setClosing(true),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, at the start
  useEffect(() => onStart(() => Promise.all([turns.stop(), timers.watch.stop(), line.settled()])), []);
  useEffect(() => {
    if (closing) exit();
  }, [closing, exit]);

  // The last frame has no live part, so that the shell's own prompt comes below everything.
  const frame = closing
    ? undefined
    : layFrame({ ...size, editor: line.shown, timers: timers.running, now_ms: timers.now_ms, signs, still });
  below.current = frame ? frame.lines.length - frame.cursor.y : 0;
  // When a signal ends the process, the shell's prompt must not come into the middle of the frame.
  useLayoutEffect(() => () => void stdout.write("\n".repeat(below.current)), [stdout]);
  // Set with every frame, by the component that every change passes through: ink forgets it otherwise.
  setCursorPosition(frame?.cursor);
  return (
    <>
      <Static items={entries}>{(entry) => <EntryView key={entry.id} entry={entry} color={color} />}</Static>
      <Box flexDirection="column">
        {frame?.lines.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
          <LineView key={at} line={line} color={color} />
        ))}
      </Box>
    </>
  );
}
