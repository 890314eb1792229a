export function wordsOf(source: string, flags?: string): string[][];

export function spacedOut(text: string): string;
