/** What a turn begins with before it says anything: "one more thing:", "quick question,", "hi there,", "me again." */
import type { Phrase } from "./phrase.ts";

const joins = "(?:(?:ok|okay|so|and|oh|hey|hi|hello|right|um|uh|er|well|sorry|now),? )*";

export const leadIn = (): readonly Phrase[] => [
  // "plus what is 5/8 of 480": another question, and no sum
  {
    marks: [" plus "],
    from: /^plus,? (?=(?:what|whats|what's|how|can|do|does|is|are|which|when)\b)/g,
    to: "and ",
  },
  // "thats the whole bag, shells from that?": of what was just worked out, and nothing new
  {
    marks: ["the whole ", " all i ", " all we ", "the last of "],
    from: new RegExp(
      `^${joins}(?:that'?s|that is|its|it's|this is) (?:the whole (?:bag|lot|jar|tub|packet|box|thing)|all (?:i|we)(?:'ve| have|ve)?(?: got| have)?|the last of (?:it|the bag|the jar))(?: here| left| then)?[,.;] (?:so |and )?(?=(?:shells|batter|macarons|how many (?:shells|macarons)) (?:from|out of|of) (?:it|that))`,
      "g",
    ),
    to: "",
  },
  // "grr no, one oh five": a sound
  {
    marks: [
      " gr",
      " gah",
      " aar",
      " arr",
      " doh",
      " d'oh",
      " bah",
      " ack",
      " yikes",
      " crikey",
      " blimey",
      " geez",
      " gosh",
      " jeez",
      " ffs",
    ],
    from: /^(?:gr{2,}|ga+h|a{2,}r+g+h+|arr+g+h+|d'?oh|bah|ack|yikes|crikey|blimey|geez|gosh|jeez|ffs)\b[,.! ]+(?=\S)/g,
    to: "",
  },
  {
    marks: [" one ", " quick ", "question", " me again", " there", " thing", " another ", " a q"],
    from: new RegExp(
      `^${joins}(?:(?:(?:just|and) )?(?:one|another|a) (?:more |quick |last |final |small |little |other )*(?:thing|question|q|one)|quick (?:one|question|q)|(?:my )?(?:next )?question|(?:it'?s )?(?:just )?me again|(?:hi|hey|hello) (?:there|again|all)) ?[:,.!;-]+ ?(?=[a-z\\d]\\S* )`,
      "g",
    ),
    to: "",
  },
  // "let me see, 200 g ...", "let me see note rose 8/10"; "let me see my notes" asks for them
  {
    marks: ["let me see", "let me think", "lemme see", "lets see", "let's see"],
    from: new RegExp(
      `^${joins}(?:let me|lemme|let'?s) (?:see|think)(?:[,.]+ ?| (?!(?:my|the|your|our|all|what|what's|whats|that|it|those|these|them|how|if|when|which|any|some|every|an?|notes|last|where|who|one|this|you|about|again|please|then)\\b))(?=\\S+ )`,
      "g",
    ),
    to: "",
  },
];
