/** Where the record lives when nothing else is said. */
import { posix, win32 } from "node:path";

/**
 * The folder of the record: what `--home` names, else what BOWLSIDE_HOME names, else the place that the operating
 * system has for such data. Pure: environment, platform and home directory come in. A relative name stays relative;
 * "~" at its start is the home directory, as a shell would have it.
 */
export function recordHome(
  env: Readonly<Record<string, string | undefined>>,
  flag: string | undefined,
  platform: string,
  homedir: string,
): string {
  const { join, isAbsolute } = platform === "win32" ? win32 : posix;
  const named = flag || env.BOWLSIDE_HOME;
  if (named) return /^~($|[\\/])/.test(named) ? join(homedir, named.slice(1)) : named;
  if (platform === "win32") return join(env.LOCALAPPDATA || join(homedir, "AppData", "Local"), "bowlside");
  if (platform === "darwin") return join(homedir, "Library", "Application Support", "bowlside");
  // The convention has relative values ignored.
  const data = env.XDG_DATA_HOME && isAbsolute(env.XDG_DATA_HOME) ? env.XDG_DATA_HOME : undefined;
  return join(data ?? join(homedir, ".local", "share"), "bowlside");
}
