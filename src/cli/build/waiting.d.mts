export function waiting(words: string, make: () => RegExp): RegExp;
