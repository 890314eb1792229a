import "./terminal.ts";
import { render } from "ink";
import { Chat } from "./chat.tsx";
import { readFirst, undoFirst } from "./first-frame.ts";
import type { Frame } from "./frame.ts";
import { laidOut } from "./layout-engine.ts";
import type { ChatOptions } from "./options.ts";
import { steadyOutput } from "./steady-output.ts";

export type { ChatOptions } from "./options.ts";

/**
 * Opens the chat in a terminal and resolves when the baker has left it, with the terminal as it was before
 * and nothing of the record under way. It never ends the process itself.
 *
 * Needs a terminal on both streams; without one, lines are answered as plain text elsewhere.
 * @throws what broke inside the view; what goes wrong with the record is said in the chat, which stays open
 */
export async function openChat(options: ChatOptions): Promise<void> {
  const stdin = options.stdin ?? process.stdin;
  const stdout = options.stdout ?? process.stdout;
  // Before anything is waited for: until then the terminal itself echoes what is typed ahead.
  stdin.setRawMode?.(true);
  let stop: () => Promise<unknown> = async () => {};
  const onStart = (how: () => Promise<unknown>) => {
    stop = how;
  };
  try {
    const opened = options.opened ?? (await readFirst(options));
    const env = options.env ?? process.env;
    await laidOut;
    let drawn: Frame | undefined;
    const steady = steadyOutput(stdout, stdin, () => drawn);
    const onFrame = (frame: Frame | undefined) => {
      drawn = frame;
    };
    const chat = (
      <Chat
        options={options}
        opened={opened}
        env={env}
        onStart={onStart}
        onFrame={onFrame}
        onGone={steady.release}
      />
    );
    if (opened.cursorRow !== undefined) stdout.write(undoFirst(opened.cursorRow));
    // Ctrl-C is a key like the others here; on an empty line it leaves by the same door as "bye".
    // Incremental rendering stays off: with a visible cursor it starts one line too low.
    try {
      await render(chat, { stdin, stdout: steady.stream, exitOnCtrlC: false }).waitUntilExit();
    } finally {
      steady.release();
      await steady.heardOut();
    }
  } finally {
    stdin.setRawMode?.(false);
    await stop();
  }
}
