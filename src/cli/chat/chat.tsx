import { Box, Static, useApp, useCursor, useIsScreenReaderEnabled, useStdout } from "ink";
import { type ReactNode, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { Timer } from "../../tools/contract/record.ts";
import { wantsColor } from "../color.ts";
import { ringText } from "./countdown.ts";
import { EntryView, LineView } from "./entry-view.tsx";
import type { Opened } from "./first-frame.ts";
import { type Frame, layFrame } from "./frame.ts";
import type { ChatOptions } from "./options.ts";
import { signsFor } from "./signs.ts";
import { spoken } from "./spoken.ts";
import { likelyEnd } from "./suggest.ts";
import { startTurns, type Turns } from "./turns.ts";
import { useBig } from "./use-big.ts";
import { useEntries } from "./use-entries.ts";
import { useKeys } from "./use-keys.ts";
import { useLine } from "./use-line.ts";
import { useOwnWords } from "./use-own-words.ts";
import { useSize } from "./use-size.ts";
import { useTimers } from "./use-timers.ts";
import { useVoice } from "./use-voice.ts";
import { useWaiting } from "./use-waiting.ts";
import {
  farewellLines,
  introLines,
  noticeLines,
  ownLines,
  ringLines,
  startOverLines,
  troubleLines,
  turnLines,
} from "./words.ts";

const bell = "\u0007";

export interface ChatProps {
  options: ChatOptions;
  opened: Opened;
  env: Readonly<Record<string, string | undefined>>;
  /** Hands over how to end the work under way, for after the screen is gone. */
  onStart(stop: () => Promise<unknown>): void;
  /** What the live part is drawn as from here on; undefined where it isn't on the screen, or can't be wiped by its lines. */
  onFrame(frame: Frame | undefined): void;
  /** The view is taken down, by a signal too: what was written has to reach the terminal now. */
  onGone(): void;
}

/** The whole chat: what is finished above, what is live below. */
export function Chat({ options, opened, env, onStart, onFrame, onGone }: ChatProps): ReactNode {
  const { exit } = useApp();
  const { stdout } = useStdout();
  const { setCursorPosition } = useCursor();
  const still = useIsScreenReaderEnabled();
  const below = useRef(0);
  const size = useSize(useCallback(() => below.current, []));
  const [signs, color] = useMemo(() => [signsFor(env), wantsColor(env, true)], [env]);
  const [opened_ms] = useState(() => options.now_ms());
  const [closing, setClosing] = useState(false);
  const [rang, setRang] = useState<Timer[]>([]);
  const waiting = useWaiting();
  // What the queue and the watch need from later renders than the one they were made in.
  const now = useRef({ columns: size.columns, running: 0 });
  const entries = useEntries(
    opened.cursorRow === undefined
      ? introLines(options.intro(opened.world), options.home, size.columns, options.isDemo)
      : [],
  );
  const trouble = (error: unknown) => entries.add(troubleLines(error, now.current.columns));
  const voice = useVoice(env, trouble);
  const own = useOwnWords({
    voice,
    signs,
    still,
    write: (text) => void stdout.write(text),
    running: () => now.current.running,
    tell: (asked, answer) => entries.add(ownLines(asked, answer, now.current.columns, signs)),
  });
  const leave = () => {
    entries.add(farewellLines(now.current.running, now.current.columns, options.isDemo));
    setClosing(true);
  };

  // What the store says about the record, such as a damaged file kept aside: each sentence once.
  const told = useRef(new Set<string>());
  const tellNotice = () => {
    const notice = options.session.notice?.();
    if (!notice || told.current.has(notice)) return;
    told.current.add(notice);
    entries.add(noticeLines(notice, now.current.columns));
  };

  const timers = useTimers({
    async world() {
      const world = await options.session.world();
      tellNotice();
      return world;
    },
    now_ms: () => options.now_ms(),
    ring: (ids) => options.ring(ids),
    announce(due) {
      stdout.write(bell);
      const now_ms = options.now_ms();
      for (const timer of due) voice.say(spoken(ringText(timer, now_ms, opened_ms)));
      setRang((before) => [...before, ...due]);
      entries.add(ringLines(due, now_ms, opened_ms, now.current.columns));
    },
    trouble,
  });
  now.current = { columns: size.columns, running: timers.running.length };

  // biome-ignore lint/correctness/useExhaustiveDependencies: one queue for the life of the chat
  const turns = useMemo<Turns>(
    () =>
      startTurns({
        ask: (line) => waiting.during(() => options.session.ask(line)),
        isListing: () => options.session.isListing?.() ?? false,
        show(turn) {
          entries.add(turnLines(turn, now.current.columns, signs, still));
          own.answered(turn);
        },
        async own(word, line) {
          if (word === "big") {
            setRang([]);
            // before anything that comes in the same moment
            entries.hold(now.current.running > 0 && !still);
          }
          await own.carryOut(word, line);
        },
        startOver: (line) => entries.add(startOverLines(line, now.current.columns, signs)),
        after: () => timers.watch.look(),
        trouble,
        leave,
      }),
    [],
  );

  const likely = (text: string, history: readonly string[]) => likelyEnd(text, history, options.examples);
  const line = useLine(opened.history, likely, (lines) => options.keepHistory(lines).catch(trouble));
  useKeys(
    (keys) => {
      const edited = line.take(keys);
      if (edited.submitted.length > 0) voice.hush();
      turns.submit(edited.submitted);
      if (edited.leave === "in turn") turns.leave();
      else if (edited.leave === "now" && !closing) leave();
    },
    () => setClosing(true),
    () => own.back(),
  );

  // biome-ignore lint/correctness/useExhaustiveDependencies: once, at the start
  useEffect(() => {
    onStart(() => Promise.all([turns.stop(), timers.watch.stop(), line.settled()]));
    if (options.speak) void own.speak("speak");
  }, []);
  useEffect(() => {
    if (closing) exit();
  }, [closing, exit]);

  const { text, cursor, history } = line.shown;
  const rest = cursor === text.length ? likely(text, history) : "";
  const isBig = own.big && !closing;
  // The last frame has no live part, so that the shell's own prompt comes below everything. Nor has the first screen
  // while the large timers are on: a window that changes its size meanwhile would break lines that ink then can't find.
  const frame: Frame | undefined =
    closing || isBig
      ? undefined
      : layFrame({
          ...size,
          editor: line.shown,
          likely: rest && text + rest,
          waits: waiting.long,
          timers: timers.running,
          now_ms: timers.now_ms,
          signs,
          still,
        });
  // biome-ignore lint/correctness/useExhaustiveDependencies: when it changes, and not with every frame
  useLayoutEffect(() => entries.hold(isBig), [isBig]);
  useBig(isBig, [...rang, ...timers.running], options.now_ms, signs);
  useLayoutEffect(() => onFrame(still ? undefined : frame));
  below.current = frame ? frame.lines.length - frame.cursor.y : 0;
  // When a signal ends the process, the shell's prompt must not come into the middle of the frame.
  useLayoutEffect(() => () => void stdout.write("\n".repeat(below.current)), [stdout]);
  useLayoutEffect(() => onGone, [onGone]);
  // Set with every frame, by the component that every change passes through: ink forgets it otherwise.
  setCursorPosition(frame?.cursor);
  return (
    <>
      <Static items={entries.shown}>
        {(entry) => <EntryView key={entry.id} entry={entry} color={color} />}
      </Static>
      <Box flexDirection="column">
        {frame?.lines.map((line, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place
          <LineView key={at} line={line} color={color} />
        ))}
      </Box>
    </>
  );
}
