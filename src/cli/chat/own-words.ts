/** What is said to the chat itself, and not to a calculator. */

export type OwnWord = "big" | "speak" | "stop speaking" | "copy" | "new conversation";

const words: Readonly<Record<OwnWord, RegExp>> = {
  big: /^(?:big|(?:show |make )?(?:the |my |all )?(?:timers? |clock |digits |numbers )?(?:big|bigger|large)|big (?:timers?|clock|digits|numbers|screen))$/,
  speak:
    /^(?:start (?:speaking|talking|reading(?: aloud)?)|speak(?: up| to me| aloud| the answers)?|talk to me|read (?:to me|(?:it |them |the answers |everything )?(?:aloud|out loud)))$/,
  "stop speaking":
    /^(?:stop (?:speaking|talking|reading(?: aloud)?)|don'?t speak|no (?:more )?speaking|(?:be )?quiet|silence|hush)$/,
  copy: /^copy(?: (?:it|that|this|the (?:last )?answer))?$/,
  "new conversation":
    /^(?:(?:start|begin|open) )?(?:a )?(?:new|fresh) (?:conversation|chat|talk|session)$|^(?:let'?s )?(?:start|begin) (?:over|afresh|anew)$|^(?:forget|drop|clear) (?:(?:all )?(?:that|what) (?:we|i|you) (?:said|talked about)(?: so far| before)?|(?:the|this) (?:conversation|chat))$/,
};

/** The word, where a line is that and nothing else. */
export function ownWord(line: string): OwnWord | undefined {
  const said = line
    .toLowerCase()
    .replace(/^[^\p{L}]+|[^\p{L}]+$/gu, "")
    .replace(/^please |[ ,]+please$/g, "")
    .replace(/\s+/g, " ");
  return (Object.keys(words) as OwnWord[]).find((word) => words[word].test(said));
}
