import { expect, test } from "vitest";
import { recordHome } from "../../src/store/home.ts";

type Env = Record<string, string | undefined>;

test.each<[string, Env, string | undefined, string, string, string]>([
  ["the flag before all", { BOWLSIDE_HOME: "/b", XDG_DATA_HOME: "/x" }, "/f", "linux", "/home/ann", "/f"],
  [
    "the variable before the system's place",
    { BOWLSIDE_HOME: "/b", XDG_DATA_HOME: "/x" },
    undefined,
    "linux",
    "/home/ann",
    "/b",
  ],
  [
    "the data folder that Linux names",
    { XDG_DATA_HOME: "/x" },
    undefined,
    "linux",
    "/home/ann",
    "/x/bowlside",
  ],
  [
    "the usual one where it names none",
    {},
    undefined,
    "linux",
    "/home/ann",
    "/home/ann/.local/share/bowlside",
  ],
  [
    "also where it names none that counts",
    { XDG_DATA_HOME: "x" },
    undefined,
    "linux",
    "/home/ann",
    "/home/ann/.local/share/bowlside",
  ],
  [
    "empty names as none",
    { BOWLSIDE_HOME: "", XDG_DATA_HOME: "" },
    "",
    "linux",
    "/home/ann",
    "/home/ann/.local/share/bowlside",
  ],
  ["macOS's place", {}, undefined, "darwin", "/Users/ann", "/Users/ann/Library/Application Support/bowlside"],
  [
    "Windows's place",
    { LOCALAPPDATA: "D:\\Data" },
    undefined,
    "win32",
    "C:\\Users\\ann",
    "D:\\Data\\bowlside",
  ],
  [
    "Windows's usual one",
    {},
    undefined,
    "win32",
    "C:\\Users\\ann",
    "C:\\Users\\ann\\AppData\\Local\\bowlside",
  ],
  [
    "the home directory's sign, which a shell leaves in --home=~/x",
    {},
    "~/m",
    "linux",
    "/home/ann",
    "/home/ann/m",
  ],
  ["another's home left as it is", {}, "~bob/m", "linux", "/home/ann", "~bob/m"],
])("%s", (_, env, flag, platform, homedir, expected) => {
  expect(recordHome(env, flag, platform, homedir)).toBe(expected);
});
