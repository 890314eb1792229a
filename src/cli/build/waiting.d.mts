export interface Table {
  lines(): string;
  source(start: number, length: number): string;
}
export function waiting(at: number, table: Table): RegExp;
