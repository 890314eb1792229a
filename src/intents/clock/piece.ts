/** A piece of a moment as it is read: what it says, and where the tokens go on. */
import type { When } from "../../tools/contract/index.ts";
import type { Token } from "../text/tokens.ts";

export type Piece = Omit<When, "text" | "at">;

export interface WhenRead {
  when: Piece;
  next: number;
}

export const text = (token: Token | undefined) => token?.text ?? "";
