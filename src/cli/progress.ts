/** A word on the terminal about what takes a while; it goes away again when that is done. */

const patience_ms = 500;
/** No quicker than an eye can follow. */
const again_ms = 250;

export interface Progress {
  /** Shows `text` when `work` is still going on after half a second. */
  during<T>(text: string, work: () => Promise<T>): Promise<T>;
  /** Between pieces of work that keep the process busy: shows `text` when half a second has passed since the start. */
  so(text: () => string): void;
  /** Takes away what is shown, before anything else is written. */
  clear(): void;
}

interface ProgressAround {
  /** Whether standard error is a terminal: else nothing is shown. */
  shows: boolean;
  /** Writes to standard error. */
  write(text: string): void;
  /** The machine's own clock, which runs on when the program's stands. */
  real_ms(): number;
}

export function startProgress({ shows, write, real_ms }: ProgressAround): Progress {
  if (!shows) return { during: (_, work) => work(), so() {}, clear() {} };
  let shown = 0;
  let next_ms = real_ms() + patience_ms;
  const clear = () => {
    if (shown > 0) write(`\r${" ".repeat(shown)}\r`);
    shown = 0;
  };
  const show = (text: string) => {
    clear();
    write(text);
    shown = text.length;
  };
  return {
    clear,
    async during(text, work) {
      const timeout = setTimeout(() => show(text), patience_ms);
      try {
        return await work();
      } finally {
        clearTimeout(timeout);
        clear();
      }
    },
    so(text) {
      const now_ms = real_ms();
      if (now_ms < next_ms) return;
      next_ms = now_ms + again_ms;
      show(text());
    },
  };
}
