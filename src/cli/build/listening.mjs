/** In place of waiting.mjs while the build looks at what regular expressions are put together from. */
globalThis.patternsHeard ??= new Map();

export function waiting(make, place) {
  const pattern = make();
  globalThis.patternsHeard.set(place, { pattern: pattern.source, flags: pattern.flags });
  return pattern;
}
