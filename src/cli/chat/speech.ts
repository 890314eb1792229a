/** Reads aloud through the system's own speech program, where there is one. One text after the other. */
import { spawn } from "node:child_process";
import { access, constants } from "node:fs/promises";
import { delimiter, isAbsolute, join } from "node:path";

/** A program and how it is told to read its standard input, on which nothing can be taken for an option. */
interface Program {
  name: string;
  args: readonly string[];
}

const programs: Readonly<Record<string, readonly Program[]>> = {
  darwin: [{ name: "say", args: ["-f", "-"] }],
  linux: [
    { name: "espeak-ng", args: ["--stdin"] },
    { name: "espeak", args: ["--stdin"] },
  ],
};

export interface Voice {
  /** Says a text when those before it are said. */
  say(text: string): void;
  /** Falls silent at once, and drops what waits. */
  hush(): void;
}

export type Found = { ok: true; voice: Voice } | { ok: false; why: string };

interface Around {
  platform: string;
  env: Readonly<Record<string, string | undefined>>;
  /** The program couldn't be run, or gave up. */
  trouble(error: Error): void;
}

/** Looks for a speech program in the folders of PATH. Nothing is run before there is something to say. */
export async function findVoice({ platform, env, trouble }: Around): Promise<Found> {
  const known = programs[platform] ?? programs.linux ?? [];
  for (const { name, args } of known)
    for (const folder of (env.PATH ?? "").split(delimiter)) {
      // a relative one would mean whatever lies in the folder that she stands in
      if (!isAbsolute(folder)) continue;
      const file = join(folder, name);
      if (await mayRun(file)) return { ok: true, voice: voiceOf(file, args, trouble) };
    }
  const names = known.map((each) => each.name).join(" or ");
  const hint = platform === "linux" ? " On Debian it is in the package espeak-ng." : "";
  return { ok: false, why: `There is no speech program here: ${names} isn't in your PATH.${hint}` };
}

const mayRun = (file: string) =>
  access(file, constants.X_OK).then(
    () => true,
    () => false,
  );

function voiceOf(file: string, args: readonly string[], trouble: (error: Error) => void): Voice {
  const waiting: string[] = [];
  let child: ReturnType<typeof spawn> | undefined;

  function next(): void {
    const text = child ? undefined : waiting.shift();
    if (text === undefined) return;
    // no shell: the text is never part of a command
    const mine = spawn(file, args, { stdio: ["pipe", "ignore", "ignore"], shell: false });
    child = mine;
    const over = (error?: Error) => {
      if (child !== mine) return;
      child = undefined;
      if (!error) return next();
      waiting.length = 0;
      trouble(error);
    };
    mine.on("error", over);
    mine.on("close", (code, signal) =>
      over(code || signal ? new Error(`${file} ended with ${signal ?? code}.`) : undefined),
    );
    // a program that ends early closes its input
    mine.stdin?.on("error", () => {});
    mine.stdin?.end(`${text}\n`);
  }

  return {
    say(text) {
      if (text !== "") waiting.push(text);
      next();
    },
    hush() {
      waiting.length = 0;
      const mine = child;
      child = undefined;
      mine?.kill();
    },
  };
}
