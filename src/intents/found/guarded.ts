/** A pattern that is only tried where one of the words is there that it can't match without: compiling costs most. */
export interface Guarded {
  test(text: string): boolean;
}

export function guarded(words: string, make: () => RegExp): Guarded {
  const any = words.split(" ");
  let pattern: RegExp | undefined;
  return {
    test(text) {
      if (!any.some((word) => text.includes(word))) return false;
      pattern ??= make();
      return pattern.test(text);
    },
  };
}
