/** A turn of phrase as a function: what it says of the inputs, or undefined where the sentence isn't that turn. */
export type Way<Context, Found> = (context: Context) => Found | undefined;

/**
 * Asks the ways in their order; the first that knows the sentence reads it, the narrower before the wider.
 * A way that knows the sentence and takes nothing from it gives an empty find, which ends the search too.
 */
export function firstOf<Context, Found>(
  ways: readonly Way<Context, Found>[],
  context: Context,
): Found | undefined {
  for (const way of ways) {
    const found = way(context);
    if (found !== undefined) return found;
  }
  return undefined;
}
