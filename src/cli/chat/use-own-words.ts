import { useRef, useState } from "react";
import type { Answer } from "../../tools/contract/index.ts";
import type { Turn } from "../session.ts";
import { clipboardSequence, copyText } from "./copy.ts";
import type { OwnWord } from "./own-words.ts";
import type { Signs } from "./signs.ts";
import { spokenAnswers } from "./spoken.ts";
import type { VoiceSwitch } from "./use-voice.ts";
import { ownAnswers } from "./words.ts";

interface Around {
  voice: VoiceSwitch;
  signs: Signs;
  /** For screen readers there is no second screen: the timers are on the one there is. */
  still: boolean;
  /** Writes to the terminal beside ink. */
  write(text: string): void;
  running(): number;
  /** Shows what the chat answers to one of its own words. */
  tell(asked: string, answer: string): void;
}

export interface OwnWords {
  /** The large timers are on the screen. */
  big: boolean;
  /** Goes back from them; false where they aren't on. */
  back(): boolean;
  carryOut(word: Exclude<OwnWord, "new conversation">, line: string): Promise<void>;
  /** A turn was answered: it can be copied, and is read aloud where that is wanted. */
  answered(turn: Turn): void;
  /** Starts reading aloud; says why where it can't. */
  speak(line: string): Promise<void>;
}

/** What the chat does itself: large timers, reading aloud, copying. The `around` of the latest render counts. */
export function useOwnWords(around: Around): OwnWords {
  const [big, setBig] = useState(false);
  const isBig = useRef(false);
  const last = useRef<readonly Answer[]>([]);
  const latest = useRef(around);
  latest.current = around;
  const show = (on: boolean) => {
    isBig.current = on;
    setBig(on);
  };

  async function speak(line: string): Promise<void> {
    const { voice, tell } = latest.current;
    const why = await voice.on();
    tell(line, why ?? ownAnswers.speaking);
    voice.say(ownAnswers.speaking);
  }

  function copy(): string {
    if (last.current.length === 0) return ownAnswers.nothingToCopy;
    latest.current.write(clipboardSequence(copyText(last.current, latest.current.signs)));
    return ownAnswers.copied;
  }

  return {
    big,
    back() {
      if (!isBig.current) return false;
      show(false);
      return true;
    },
    async carryOut(word, line) {
      const { running, still, tell, voice } = latest.current;
      if (word === "speak") return speak(line);
      if (word === "copy") return tell(line, copy());
      if (word === "stop speaking") {
        voice.off();
        return tell(line, ownAnswers.silent);
      }
      if (running() === 0) return tell(line, ownAnswers.noTimers);
      if (still) return tell(line, ownAnswers.stillTimers);
      show(true);
    },
    answered({ answers }) {
      if (answers.length > 0) last.current = answers;
      latest.current.voice.say(spokenAnswers(answers));
    },
    speak,
  };
}
