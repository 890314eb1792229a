/** From what the terminal sends to what the editor does. Pure: what a chunk leaves open is in the state. */
import { controlKeys, csiKey, type EditKey, metaKeys, readSequence } from "./key-table.ts";

export type Key = { do: "insert"; text: string } | EditKey;

/** What was begun and not ended by the chunks so far. */
export interface Decoder {
  /** The start of an escape sequence. */
  pending: string;
  /** The last character was CR: a LF that follows belongs to it. */
  afterReturn: boolean;
  /** Between the marks that the terminal puts around a paste. */
  pasting: boolean;
}

export const freshDecoder: Decoder = { pending: "", afterReturn: false, pasting: false };

const pasteStart = "\u001b[200~";
const pasteEnd = "\u001b[201~";
const escapeSign = "\u001b";
const interrupt = "\u0003";

/**
 * Reads one chunk. The same characters in any chunks give the same keys, next to each other inserts joined.
 * Line ends in inserted text are all "\n"; tabs are spaces; other control characters are keys or nothing.
 */
export function decode(state: Decoder, chunk: string): { state: Decoder; keys: Key[] } {
  const input = state.pending + chunk;
  let { afterReturn, pasting } = state;
  const keys: Key[] = [];
  let text = "";
  const add = (key: Key | undefined) => {
    if (text) keys.push({ do: "insert", text });
    text = "";
    if (key) keys.push(key);
  };
  let at = 0;
  while (at < input.length) {
    const sign = input.charAt(at);
    if (sign === escapeSign) {
      const sequence = readSequence(input, at);
      if (sequence === undefined) break;
      at += sequence.length;
      afterReturn = false;
      if (sequence === pasteStart || sequence === pasteEnd) pasting = sequence === pasteStart;
      else if (!pasting) add(sequence.length > 2 ? csiKey(sequence) : metaKeys[sequence.slice(1)]);
      continue;
    }
    at += 1;
    if (sign === "\r" || (sign === "\n" && !afterReturn)) text += "\n";
    else if (sign === "\t") text += " ";
    else if (sign >= " " && !/[\u007f-\u009f]/.test(sign)) text += sign;
    // A paste whose end was lost on the way must not lock the keyboard: Ctrl-C ends it, the next one leaves.
    else if (pasting) pasting = sign !== interrupt;
    else add(controlKeys[sign]);
    afterReturn = sign === "\r";
  }
  add(undefined);
  return { state: { pending: input.slice(at), afterReturn, pasting }, keys };
}

/** To be called when a sequence was begun and nothing followed: it was the Escape key alone. */
export function flush(state: Decoder): { state: Decoder; keys: Key[] } {
  return { state: { ...state, pending: "" }, keys: state.pending === escapeSign ? [{ do: "escape" }] : [] };
}
