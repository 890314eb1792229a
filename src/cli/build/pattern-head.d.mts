export function headOf(source: string, flags?: string): string | undefined;
