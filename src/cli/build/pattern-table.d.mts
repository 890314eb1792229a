export function patternTable(): {
  lines(): string;
  sources(): string;
  add(source: string, flags: string, lists: readonly (readonly string[])[], head?: string): number;
};
