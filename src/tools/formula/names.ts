/** Reads what a recipe is called: in an order to save it, behind "forget" or "show", in its file's name. */
import type { Draft } from "./draft.ts";

const patterns = [
  // "save it under the name cloud mix", "keep this under cloud mix", "the name is cloud mix"
  /(?:under|by|with) (?:the |a )?(?:name|title)(?: of)?[,:]? (.+?)(?: (?:my|this|the|our) (?:own )?recipe)?$/,
  /(?:save|store|keep|remember|file|put) (?:it|this|that|them|these) under (.+)$/,
  /(?:the |its |it'?s )?(?:name|title)(?:'?s| is| should be| will be)[,:]? (.+)$/,
  /(?:call(?:ed)? (?:it|this|that)?|name(?:d)? (?:it|this|that)?|(?:save|store|keep) (?:it|that|this|that recipe|this recipe) as|\bas) ?(.+)$/,
  /(?:my|our|the|her|his) (.+?) (?:recipe|formula)s?\b(?: is| are| takes| has| goes)?$/,
  /(?:recipe|formula)(?: for| of| called| named| is)?[,:-]? (.+)$/,
  // "this is cloud shells, please save", "cloud shells is"
  /^(?:(?:so|ok|and|here|right) )*(?:this|that|these|those|here|it)(?:'?s| is| are)(?: my| our| the)? (.+)$/,
  /^(?:please |ok |and )*(?:save|store|keep|remember|add|file) (?:this |a |another |my |the )?(?:new )?one[,:-]? (.+)$/,
  /^(?:please |ok )*(?:save|store|keep|remember|file) (?:this|that|it|these|them)(?: one)?(?: (?:please|for (?:me|later)))* ?, (?:please )?(.+?):?$/,
  /^(?:please |ok )*(?:save|store|keep|remember) (?:my|our|this|the) (.+?):?$/,
  /(?:my|our) (.+?) (?:are|is|take|takes|use|uses|have|has|=)$/,
  // "my garden shells: 110 g whites, ...", "the garden shells take"
  /^(?:(?:so|ok|and|here) )*(?:(?:my|our|the) )?((?:[a-z]+ ){0,3}(?:shells|macarons|mix|batter))(?: ?=| take| takes| use| uses| have| has| are| is)?$/,
  // "cloud shells is 120 g almond flour, ..., keep it"
  /^(?:(?:so|ok|and) )*(?!(?:the|my|our|a|mine|ours|it|this|that|there|here|what|list|recipe)\b)((?:[a-z]\S* ?){1,4}?) (?:is|are|goes|takes|uses|has)$/,
];

/** "new recipe for the book, plum smbc": where it goes. */
const place =
  /(?<=recipe|formula|one) (?:for|into|in|to) (?:the|my|our) (?:book|records?|files?|collection|notebook)(?= ?[,:-])/;

/** "save a recipe for me pls, cloud shells", "a recipe for my sister, cloud shells": for whom and how politely is no name. */
const beside = new RegExp(
  `(?<=\\b(?:recipe|formula|one))(?: ?,)?(?: (?:${[
    "for (?:me|us|myself|later|next time|safe keeping|the (?:book|record|collection))",
    "for (?:my|our|the) (?:sister|brother|mum|mom|mother|dad|father|gran|grandma|daughter|son|wife|husband|partner|friend|neighbou?r|class|shop)",
    "please|pls|plz|thanks|thank you|thx|ta|cheers|quickly|quick|real quick|now|today",
    "(?:if|when) you (?:can|could|would|will|like|dont mind)",
  ].join("|")}))+(?: ?[,:-] ?| (?=(?:called|named|its|it is|name) ))`,
);

export function nameIn(head: string): string | undefined {
  const said = head.replace(place, "").replace(beside, " ").trim();
  for (const pattern of patterns) {
    const name = cleaned(pattern.exec(said)?.[1] ?? "");
    if (name) return name;
  }
  return undefined;
}

/** "..., 110 g sugar, save that as puff": the name comes last. */
export const nameBehind = (text: string): string | undefined =>
  cleaned(
    /\d.*\b(?:(?:save|store|keep|remember) (?:it|that|this|them|that recipe|this recipe) (?:as|under(?: the name(?: of)?)?)|under the name(?: of)?|(?:and )?(?:call|name) (?:it|that|this|them))\s+(.+)$/.exec(
      text,
    )?.[1] ?? "",
  );

/** "new recipe to keep, plum smbc": what is to be done with it is no part of its name. */
const leadsToName =
  /^\s*(?:(?:(?:(?:that |which )?(?:i|we) (?:want|need|wanna|would like) )?to (?:keep|save|store|remember|file|hold on to|put by)|worth (?:keeping|saving|remembering)|the|my|a|another|new|recipe|formula|please|pls|for|called|named|it|its)(?:\s+|$))+/;

/** "a recipe to remember: plum smbc, 90 g whites": it stands between the colon and the lines. */
export function nameBeforeLines(
  text: string,
  isIngredient: (name: string) => boolean,
): { name: string; length: number } | undefined {
  const [whole = "", said = ""] = /^\s*([a-z][^:,;\d]*?)\s*(?:[:,;]|\s[-–—]\s)\s*/.exec(text) ?? [];
  const name = cleaned(said);
  return name && !isIngredient(name) ? { name, length: whole.length } : undefined;
}

/** Quotes, a "recipe" behind it and joining words taken off. */
export function cleaned(text: string): string | undefined {
  const name = text
    .replace(/["?!.,:]+|(?<![a-z])'|'(?![a-z])|\s-+(?=\s|$)/g, " ")
    .replace(leadsToName, "")
    .replace(/^(?:(?:to|for) )?(?:me|us)(?: (?:please|pls|plz|thanks))*$/, "")
    .replace(/^(?:as (?:it is |it was |i )?saved|again|that|this|it)$/, "")
    .replace(
      /(?:\s+and)?\s+(?:(?:please|pls) )?(?:save|keep|store|remember|file)(?: (?:it|that|this|them|please|pls|for (?:me|later)))*\s*$/,
      "",
    )
    .replace(/\s+(?:recipe|formula|please|pls|with|it'?s|they'?re|is|are|has|have|go(?:es)?)\s*$/g, "")
    .replace(/\s+/g, " ")
    .trim();
  return name.length > 0 &&
    name.length <= 60 &&
    !/^(?:recipe|formula|that|this|it|so|me|(?:new )?one)$/.test(name)
    ? name
    : undefined;
}

export const nameAfter = (text: string, lead: RegExp) =>
  cleaned(new RegExp(`${lead.source}\\s+(.+)$`).exec(text)?.[1] ?? "");

export function newName(text: string, saved: string): Draft {
  const behind = text.slice(text.indexOf(saved.toLowerCase()) + saved.length);
  const name = cleaned(
    behind
      .replace(
        /^\s*(?:(?:recipe|formula|should|shall|must|will|is|to|be|get|gets|now|called|named|renamed|as|into)\s+)+/,
        "",
      )
      .replace(/(?:,?\s+(?:from now on|now|instead|from here on|please|pls))+[\s.!]*$/, ""),
  );
  return name ? { new_name: name } : {};
}

/** "read recipe from shells.txt", "load my recipe out of \"shells one.txt\"": the path as it was typed. */
export function fileIn(said: string): string | undefined {
  const found =
    /\b(?:read|load|import|open|get|take|fetch|save|add)\b.*?\b(?:from|in|out of|file)\s+(?:the |my )?(?:file |text file )?(?:"([^"]+)"|'([^']+)'|((?:~|\.{0,2})\/\S+|\S+\.[a-z]{2,4}\b))/i.exec(
      said,
    );
  return (found?.[1] ?? found?.[2] ?? found?.[3])?.replace(/[?!,;]+$/, "");
}

export const nameOfFile = (said: string): Draft => {
  const name = cleaned(
    (/(?:\.[a-z]{2,4}|["'])\s+(?:as|and call it|called|named)\s+(.+)$/i.exec(said)?.[1] ?? "").toLowerCase(),
  );
  return name ? { name } : {};
};
