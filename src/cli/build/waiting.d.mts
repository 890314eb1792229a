export function waiting(words: string, make: () => RegExp, isSmall?: boolean): RegExp;
export function inLines(lists: readonly (readonly string[])[]): string;
