/** Scripts that complete the options in a shell, made of the options table. A question is free text and stays alone. */
import { type Option, options, type Shell } from "./options.ts";

const all: readonly Option[] = options;

/** The whole script, to be read by the shell. */
export function completion(shell: Shell): string {
  return { bash, zsh, fish }[shell]();
}

const dashed = ({ name, short }: Option) => [`--${name}`, ...(short ? [`-${short}`] : [])];

/** In single quotes, as all three shells read them. */
const quoted = (text: string) => `'${text.replaceAll("'", `'\\''`)}'`;

function bash(): string {
  const values = all.flatMap(({ name, takes }) => {
    if (!takes) return [];
    const found =
      takes.of === "folder"
        ? "compopt -o filenames 2>/dev/null; IFS=$'\\n'; COMPREPLY=($(compgen -d -- \"$word\"))"
        : `COMPREPLY=($(compgen -W ${quoted(takes.of.join(" "))} -- "$word"))`;
    return [`    --${name}) ${found}; return ;;`];
  });
  return `_bowlside() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} IFS=$' \\n'
  COMPREPLY=()
  case $before in
${values.join("\n")}
  esac
  if [[ $word == -* ]]; then
    COMPREPLY=($(compgen -W ${quoted(all.flatMap(dashed).join(" "))} -- "$word"))
  fi
}
complete -F _bowlside bowlside
`;
}

function zsh(): string {
  // brackets and colons have a meaning in a specification
  const plain = (text: string) => text.replace(/[[\]:\\]/g, "\\$&");
  const specs = all.map((option) => {
    const { says, takes, short, name } = option;
    const value = !takes
      ? ""
      : `:${takes.name}:${takes.of === "folder" ? "_files -/" : `(${takes.of.join(" ")})`}`;
    const names = dashed(option);
    const rest = `[${plain(says)}]${value}`;
    return short
      ? `    ${quoted(`(${names.join(" ")})`)}{${names.join(",")}}${quoted(rest)}`
      : `    ${quoted(`--${name}${rest}`)}`;
  });
  return `#compdef bowlside
_bowlside() {
  _arguments \\
${specs.map((spec) => `${spec} \\`).join("\n")}
    '*:question:'
}
if [ "\${funcstack[1]}" = _bowlside ]; then _bowlside "$@"; else compdef _bowlside bowlside; fi
`;
}

function fish(): string {
  const lines = all.map(({ name, short, says, takes }) =>
    [
      `complete -c bowlside -l ${name}`,
      ...(short ? [`-s ${short}`] : []),
      ...(takes
        ? ["-x -a", takes.of === "folder" ? "'(__fish_complete_directories)'" : quoted(takes.of.join(" "))]
        : []),
      `-d ${quoted(says)}`,
    ].join(" "),
  );
  return ["complete -c bowlside -f", ...lines, ""].join("\n");
}
