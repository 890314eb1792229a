import type { Plugin } from "rolldown";

export interface Heard {
  pattern: string;
  flags: string;
}
export function hearPatterns(
  root: string,
  bundle: (plugin: Plugin, file: string) => Promise<unknown>,
): Promise<ReadonlyMap<string, Heard>>;
export function patternsIn(program: unknown): { start: number; end: number; regex?: Heard }[];
