/** From what the terminal sends to what the editor does. Pure: what a chunk leaves open is in the state. */
import { controlKeys, csiKey, type EditKey, metaKeys, readSequence } from "./key-table.ts";

export type Key = { do: "insert"; text: string } | { do: "paste"; text: string } | EditKey;

/** What was begun and not ended by the chunks so far. */
export interface Decoder {
  /** The start of an escape sequence. */
  pending: string;
  /** The last character was CR: a LF that follows belongs to it. */
  afterReturn: boolean;
  /** The start of a sequence whose rest didn't come in time: if it is where the cursor is, nobody typed the rest. */
  late?: string;
  /** What came so far between the marks that the terminal puts around a paste; undefined outside of them. */
  pasted?: string;
}

export const freshDecoder: Decoder = { pending: "", afterReturn: false };

const pasteStart = "\u001b[200~";
const pasteEnd = "\u001b[201~";
const escapeSign = "\u001b";
const interrupt = "\u0003";
// biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
const report = /^\u001b\[\d+;\d+R/;

/**
 * Reads one chunk. The same characters in any chunks give the same keys, next to each other inserts joined.
 * Line ends in inserted text are all "\n"; other control characters are keys or nothing. A paste is one key, however
 * many chunks it takes; tabs in it are spaces.
 */
export function decode(state: Decoder, chunk: string): { state: Decoder; keys: Key[] } {
  const late = state.late ? (report.exec(state.late + chunk)?.[0].slice(state.late.length) ?? "") : "";
  const input = state.pending + chunk.slice(late.length);
  let { afterReturn, pasted } = state;
  const keys: Key[] = [];
  let text = "";
  const add = (key: Key | undefined) => {
    if (text) keys.push({ do: "insert", text });
    text = "";
    if (key) keys.push(key);
  };
  const endPaste = () => {
    if (pasted) add({ do: "paste", text: pasted });
    pasted = undefined;
  };
  const put = (letters: string) => {
    if (pasted === undefined) text += letters;
    else pasted += letters;
  };
  let at = 0;
  while (at < input.length) {
    const sign = input.charAt(at);
    if (sign === escapeSign) {
      const sequence = readSequence(input, at);
      if (sequence === undefined) break;
      at += sequence.length;
      afterReturn = false;
      if (sequence === pasteStart) pasted ??= "";
      else if (sequence === pasteEnd) endPaste();
      else if (pasted === undefined)
        add(sequence.length > 2 ? csiKey(sequence) : metaKeys[sequence.slice(1)]);
      continue;
    }
    at += 1;
    if (sign === "\r" || (sign === "\n" && !afterReturn)) put("\n");
    else if (sign === "\t" && pasted !== undefined) put(" ");
    else if (sign >= " " && !/[\u007f-\u009f]/.test(sign)) put(sign);
    // A paste whose end was lost on the way must not lock the keyboard: Ctrl-C ends it, the next one leaves.
    else if (pasted !== undefined) {
      if (sign === interrupt) endPaste();
    } else add(controlKeys[sign]);
    afterReturn = sign === "\r";
  }
  add(undefined);
  return {
    state: { pending: input.slice(at), afterReturn, ...(pasted === undefined ? {} : { pasted }) },
    keys,
  };
}

/** To be called when a sequence was begun and nothing followed: it was the Escape key alone, or the rest is late. */
export function flush(state: Decoder): { state: Decoder; keys: Key[] } {
  return {
    state: { ...state, pending: "", late: state.pending },
    keys: state.pending === escapeSign ? [{ do: "escape" }] : [],
  };
}
