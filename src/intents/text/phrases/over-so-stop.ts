/** "custard's off already, cancel custard only": that it is over is why, and its timer is what is stopped. */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:ok|okay|right|oh|so|and|now|well|hey),? )*(?:the |my )?";
const over =
  "(?:off|done|out|ready|cooked|finished|over|boiled|baked|cooled|drained)(?: (?:already|now|early|just now|the heat|the hob|the stove|the boil|of the oven|the oven))*";
const stop =
  "(?:(?:please|just|only|so|you can|can you) )*(?:cancel|stop|kill|end|clear)(?: only| just)?(?: the| my)?";

export const overSoStop = (): readonly Phrase[] => [
  {
    marks: ["cancel ", "stop ", "kill ", "end ", "clear "],
    from: new RegExp(
      `^${lead}([a-z]{3,}?)(?:'?s|s? is|s? are) (?:all )?${over}(?:,|;|\\.| -| so| and)+ ${stop} \\1s?(?: timer| one)?(?: (?:only|please|then|now))*[ .!]*$`,
      "g",
    ),
    to: "stop the $1 timer",
  },
];
