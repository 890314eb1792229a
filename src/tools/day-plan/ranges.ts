/** Numbers that come from outside, held to their ranges; each is handed back when it is right. */

export function whole(name: string, value: number): number {
  if (!Number.isSafeInteger(value)) throw new RangeError(`${name}: ${value} is not a whole number`);
  return value;
}

export function within(name: string, value: number, low: number, high: number): number {
  if (!(value >= low && value <= high))
    throw new RangeError(`${name}: ${value} is not from ${low} to ${high}`);
  return value;
}
