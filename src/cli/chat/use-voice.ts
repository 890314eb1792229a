import { useEffect, useRef } from "react";
import { findVoice, type Voice } from "./speech.ts";

export interface VoiceSwitch {
  /** Starts speaking; says why where it can't. */
  on(): Promise<string | undefined>;
  off(): void;
  /** Says it, where speaking is on. */
  say(text: string): void;
  /** Breaks off what is being said. */
  hush(): void;
}

/**
 * The voice that reads aloud, once it is asked for. It falls silent when the chat closes.
 * @param trouble hears of a program that can't be run; speaking is off then
 */
export function useVoice(
  env: Readonly<Record<string, string | undefined>>,
  trouble: (error: Error) => void,
): VoiceSwitch {
  const voice = useRef<Voice>(undefined);
  const latest = useRef(trouble);
  latest.current = trouble;
  useEffect(() => () => voice.current?.hush(), []);
  return {
    async on() {
      if (voice.current) return undefined;
      const found = await findVoice({
        platform: process.platform,
        env,
        trouble(error) {
          voice.current = undefined;
          latest.current(error);
        },
      });
      if (!found.ok) return found.why;
      voice.current = found.voice;
      return undefined;
    },
    off() {
      voice.current?.hush();
      voice.current = undefined;
    },
    say: (text) => voice.current?.say(text),
    hush: () => voice.current?.hush(),
  };
}
