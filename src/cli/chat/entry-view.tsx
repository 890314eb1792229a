import { Box, Text } from "ink";
import type { ReactNode } from "react";
import { type Line, styleOf } from "./tones.ts";

/** Something finished that stays on the screen: a turn, a ring, a word from the chat. */
export interface Entry {
  id: number;
  lines: Line[];
}

/** One line; a blank one keeps its height. */
export function LineView({ line, color }: { line: Line; color: boolean }): ReactNode {
  return <Text {...styleOf(line.tone, color)}>{line.text || " "}</Text>;
}

/** An entry and the empty line after it. */
export function EntryView({ entry, color }: { entry: Entry; color: boolean }): ReactNode {
  return (
    <Box flexDirection="column" marginBottom={1}>
      {entry.lines.map((line, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: an entry never changes
        <LineView key={at} line={line} color={color} />
      ))}
    </Box>
  );
}
