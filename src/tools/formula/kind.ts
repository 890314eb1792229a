/** Tells what a recipe makes. */

/** What a recipe makes, by its lines: shells, a ganache, a buttercream; else nothing is said. */
export function kindOf(lines: readonly { name: string }[]): string | undefined {
  const has = (...names: string[]) => names.some((name) => lines.some((each) => each.name === name));
  if (
    has("almond flour", "hazelnuts", "pistachios") &&
    has("whites", "pasteurised whites", "egg white powder")
  )
    return "shells";
  if (lines.some((each) => each.name.endsWith("chocolate")) && has("cream", "light cream", "milk", "butter"))
    return "ganache";
  if (
    has("butter", "salted butter") &&
    (has("whites", "pasteurised whites") || (has("powdered sugar") && !has("egg", "egg yolk", "flour")))
  )
    return "buttercream";
  return undefined;
}

/** A recipe that fills shells: a ganache, a buttercream, or a cream, curd or jam, which has no whites to whip. */
export const isFilling = (lines: readonly { name: string }[]): boolean => {
  const kind = kindOf(lines);
  if (kind !== undefined) return kind !== "shells";
  return !lines.some(({ name }) => /^(?:whites|pasteurised whites|egg white powder)$/.test(name));
};
