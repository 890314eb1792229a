export function wordsOf(source: string, flags?: string): string[][];
