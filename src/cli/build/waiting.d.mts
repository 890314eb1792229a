export interface Table {
  lines(): string;
  source(start: number, length: number): string;
}
export function waiting(at: number, table: Table): RegExp;
export function patternTable(): {
  lines(): string;
  sources(): string;
  add(source: string, flags: string, lists: readonly (readonly string[])[]): number;
};
