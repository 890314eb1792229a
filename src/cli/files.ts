/** Files that answers hand over: a calendar, a label. They go into the folder she stands in, never over another file. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";

/** Writes under a name of letters, digits and dashes; where it is taken a number is put behind. Gives the path. */
export function fileWriter(folder: string): (name: string, text: string) => Promise<string> {
  return async (name, text) => {
    const safe = name.replace(/[^a-z0-9.-]+/gi, "-").replace(/^[.-]+/, "") || "bowlside";
    const dot = safe.lastIndexOf(".");
    const [stem, end] = dot > 0 ? [safe.slice(0, dot), safe.slice(dot)] : [safe, ""];
    await mkdir(folder, { recursive: true });
    for (let n = 1; n < 1000; n++) {
      const path = join(folder, n === 1 ? safe : `${stem}-${n}${end}`);
      try {
        await writeFile(path, text, { flag: "wx", mode: 0o600 });
        return path;
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      }
    }
    throw new Error(`No free name for ${safe} in ${folder}`);
  };
}
