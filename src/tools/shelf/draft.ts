import type { ShelfInputs } from "./shelf.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<ShelfInputs>;
