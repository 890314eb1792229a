/** Files that answers hand over: a calendar, a label, a table. They go into the folder she stands in, never over another file. */
import { promises as disk } from "node:fs";
import { join, resolve } from "node:path";

/** Writes under a name of letters, digits and dashes; where it is taken a number is put behind. Gives the path. */
export function fileWriter(folder: string): (name: string, content: string | Uint8Array) => Promise<string> {
  return async (name, content) => {
    const safe = name.replace(/[^a-z0-9.-]+/gi, "-").replace(/^[.-]+/, "") || "bowlside";
    const dot = safe.lastIndexOf(".");
    const [stem, end] = dot > 0 ? [safe.slice(0, dot), safe.slice(dot)] : [safe, ""];
    await disk.mkdir(folder, { recursive: true });
    for (let n = 1; n < 1000; n++) {
      const path = join(folder, n === 1 ? safe : `${stem}-${n}${end}`);
      try {
        await disk.writeFile(path, content, { flag: "wx", mode: 0o600 });
        return path;
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
      }
    }
    throw new Error(`No free name for ${safe} in ${folder}`);
  };
}

/** How large a file may be, and what a larger one can't be. */
export interface Limit {
  bytes: number;
  why: string;
}

/** More than this is no recipe. */
const recipe: Limit = { bytes: 100_000, why: "larger than 100 kB; a recipe is a few lines of text." };

/**
 * Reads plain text that she named by its path, against the folder she stands in. Says why where it can't: not there,
 * not a file, larger than the limit, not text. Control characters are taken out by whoever reads the lines.
 */
export function fileReader(
  folder: string,
  home: string,
): (path: string, limit?: Limit) => Promise<{ ok: true; text: string } | { ok: false; why: string }> {
  return async (path, { bytes: mostBytes, why: tooLarge } = recipe) => {
    const place = resolve(folder, path.replace(/^~(?=\/|$)/, home));
    try {
      const found = await disk.stat(place);
      if (!found.isFile()) return { ok: false, why: `${path} is not a file.` };
      if (found.size > mostBytes) return { ok: false, why: `${path} is ${tooLarge}` };
      const file = await disk.open(place, "r");
      try {
        const { buffer, bytesRead } = await file.read(Buffer.alloc(mostBytes + 1), 0, mostBytes + 1, 0);
        if (bytesRead > mostBytes) return { ok: false, why: `${path} is ${tooLarge}` };
        const bytes = buffer.subarray(0, bytesRead);
        if (bytes.includes(0)) return { ok: false, why: `${path} is not plain text.` };
        return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
      } finally {
        await file.close();
      }
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      const why: Record<string, string> = {
        ENOENT: `There is no ${path} in ${folder}.`,
        EACCES: `${path} may not be read.`,
        ERR_ENCODING_INVALID_ENCODED_DATA: `${path} is not plain text (UTF-8).`,
      };
      return { ok: false, why: why[code ?? ""] ?? `${path} can't be read.` };
    }
  };
}
