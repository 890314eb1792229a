/** Whether an answer is written in color. */

/**
 * NO_COLOR with anything in it: none, whatever else is set. FORCE_COLOR with anything in it: color, into a file too;
 * "0" and "false" in it: none. Else color belongs to terminals that aren't "dumb".
 */
export function wantsColor(
  { NO_COLOR, FORCE_COLOR, TERM }: Readonly<Record<string, string | undefined>>,
  isTerminal: boolean,
): boolean {
  if (NO_COLOR) return false;
  if (FORCE_COLOR) return !/^(?:0|false)$/i.test(FORCE_COLOR);
  return isTerminal && TERM !== "dumb";
}
