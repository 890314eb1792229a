/** What the readers of amounts are made of. */
import type { Amount, Dimension } from "../../../tools/contract/index.ts";
import type { Token } from "../../text/tokens.ts";

export interface AmountRead {
  amount: Amount;
  next: number;
}

export type UnitRead = { unit: string; dim: Dimension; next: number };

export const text = (token: Token | undefined) => token?.text ?? "";

export const made = (
  value: number,
  unit: string,
  dim: Dimension,
  next: number,
  more: Partial<Amount> = {},
): AmountRead => ({
  amount: { dim, value, unit, text: "", at: [0, 0], ...more },
  next,
});
