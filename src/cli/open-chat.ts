/** What the chat is given: the session, the clock, and where its history is kept. */
import type { RecordStore } from "../store/types.ts";
import type { World } from "../tools/contract/index.ts";
import { tools } from "../tools/registry.ts";
import { drawFirst } from "./chat/first-frame.ts";
import type { ChatOptions } from "./chat/options.ts";
import { historyIn } from "./history.ts";
import { ringIn } from "./ring-in.ts";
import type { Session } from "./session.ts";

interface Parts {
  session: Session;
  store: RecordStore;
  now_ms(): number;
  env: Readonly<Record<string, string | undefined>>;
  stdin: NodeJS.ReadStream;
  stdout: NodeJS.WriteStream;
  /** The record is an invented one. */
  demo: boolean;
  /** Answers and rings are read aloud from the start. */
  speak: boolean;
}

/** Shows the first frame at once, and then loads what the rest of the chat needs. Resolves when it is left. */
export async function openIn(
  parts: Parts,
  loadChat: () => Promise<{ openChat(options: ChatOptions): Promise<void> }>,
): Promise<void> {
  const options = chatOptions(parts);
  try {
    const opened = await drawFirst(options);
    const { openChat } = await loadChat();
    await openChat({ ...options, opened });
  } finally {
    parts.stdin.setRawMode?.(false);
  }
}

/** Three questions for whoever has an empty record; a word for whoever knows the place. */
function introFor(world: World | undefined): string[] {
  const isNew = world && [world.notes, world.timers, world.bottles, world.stock, world.formulas, world.plans];
  if (!isNew?.every((list) => list.length === 0))
    return ['Ask as you would say it. "help" shows what there is, "bye" or Ctrl-C leaves.'];
  return [
    "Ask as you would say it. Three to try:",
    "  I have 230 g buttercream, how much flavor?",
    "  batter for 24 macarons",
    "  set a timer for 12 min",
    '"help" shows what else there is; "bye" or Ctrl-C leaves.',
  ];
}

function chatOptions({ session, store, now_ms, env, stdin, stdout, demo, speak }: Parts): ChatOptions {
  const history = historyIn(store.home);
  return {
    session,
    now_ms,
    home: store.home,
    isDemo: demo,
    stdin,
    stdout,
    env,
    speak,
    examples: tools.flatMap((tool) => tool.examples.map(({ say }) => say)),
    intro: (world) => [
      ...(demo
        ? ["A demo: an invented baker's record, which is gone when you leave. Yours isn't touched."]
        : []),
      ...introFor(world),
    ],
    ring: (timerIds) => ringIn(store, now_ms, timerIds),
    loadHistory: () => history.load(),
    keepHistory: (lines) => history.add(lines),
  };
}
