/** What a turn may be about, by its words: a number that could belong to it is no aside. */

/** Patterns over the text around such a number. */
export const matters = {
  /** Words that are kept as they are, numbers and all. */
  words:
    /\b(?:writ(?:e|ten)|put (?:that|this|it) down|not(?:e|es|ed|ing)(?! to self i)|log(?:ged)?|jot(?:ted)?|diary|journal|record(?:ed)?|memo|sav(?:e|ed|ing)|store it|rename|delete|remove|undo|call(?:ed)? (?:it|this|that)|name (?:it|this))\b/,
  money:
    /\b(?:costs?|costing|prices?|priced|pricing|charg(?:e|ed|ing)|sell(?:s|ing)?|sold|profit|margin|mark ?-?up|worth|break ?even|spend|budget|money|cheap(?:er)?|expensive|pay|paid|bill|receipt|bought|buy|earn|make on|take[- ]home|comes? to|per (?:macaron|piece|box|shell))\b|[£$€]|\d ?(?:pounds|quid|dollars?|euros?|bucks|pence|cents)\b/,
  /** The same where it is plain that something was bought. */
  cost: /\b(?:costs?|costing|prices?|priced|pricing|charg(?:e|ed|ing)|sell(?:s|ing)?|sold|profit|margin|mark ?-?up|worth|break ?even|money|cheap(?:er)?|expensive|bill|receipt|earn|make on|take[- ]home|comes? to|per (?:macaron|piece|box|shell))\b|[£$€]/,
  stock: /\b(?:shelf|stock|pantry|larder|cupboard|inventory|bought|buy|shopping|list|remember|set|add to)\b/,
  clock:
    /\b(?:when|what time|starts?|begin|timers?|alarms?|rings?|remind|plan|schedule|timetable|how long|in time|on time|by then|deadline|o'?clock|make it ready|wake)\b/,
  heat: /\b(?:temp(?:erature)?s?|celsius|fahrenheit|fan|convection|conventional|gas(?: mark)?|degrees?|hotter|cooler|oven|set (?:it )?to|in f|in c)\b/,
  baking:
    /\b(?:how long|timers?|brown(?:ed|ing)?|burn(?:t|ed)?|raw|under ?(?:baked|done|cooked)|over ?(?:baked|done)|hollows?|crack(?:ed|s|ing)?|sticky|stick|feet|lopsided|wrong|why|plan|when|ready|minutes more)\b/,
  keeping:
    /\b(?:still (?:good|ok|okay|fine|safe|usable|edible)|go(?:ne|es)? off|keep|keeps|safe|shelf life|too old|fridge|freezer|frozen|froze|thaw\w*|out of date|allowed|label|eat|is it (?:ok|okay|fine) to use|can i (?:still )?use)\b/,
  /** How warm it is counts for what stands in it. */
  out: /\b(?:out|outside|stood|sat|standing|sitting|left|safe|bin|toss|chuck\w*|throw\w*|thrown|dump\w*|eat|keep|fridge|car|van|boot|trunk|counter|worktop|stall|porch|patio|terrace|garden|picnic|sun|melt\w*|sweat\w*|rest|resting|dry|skin|soft|how long)\b/,
  unit: /\b(?:convert|in (?:f|c|g|ml|grams?|ounces?|oz|cups?|fahrenheit|celsius|pounds|kilos?)|into (?:grams?|ounces?|oz|ml|f|c)|how (?:much|many g|many grams) (?:is|does|are|do) (?:a|an|one|the|this|that|it)\b)/,
  /** The whole of a container is meant, or how far it goes. */
  whole:
    /\b(?:enough|whole|entire|all of|all the|last of|empt(?:y|ied)|covers?|how far|go far|use up|using up|tipped|poured|put|went|goes|added|add|emptied|stirred|mixed in|squeezed|already|left(?: in)?|how many (?:bottles?|jars?|tubs?|pots?|tins?|packs?|bags?|tubes?|cartons?)|(?:is|was) (?:that|it|this) (?:ok|okay|fine|too))\b/,
  /** Weights of a recipe: another one may be what there is of one of them. */
  recipe: /\b(?:calls for|scale)\b|(?:\d ?(?:g|gr|grams?|oz)\b[\s\S]*){3}/,
  /** Pieces that are counted on from those there are. */
  counted:
    /\b(?:how many|are left|remain(?:s|ing)?|to go|timers?|rings?|in all|altogether|in total|them|those|that|each|per)\b/,
  timers: /\b(?:timers?|alarms?|rings?|remind|minutes?|mins?|min|cancel|stop)\b/,
  /** Something that runs or stands by itself, and has a name to be called by. */
  called:
    /\b(?:timers?|alarms?|rings?|remind|minutes?|mins?|min|split|divide|into|rest(?:s|ed|ing)?|bak(?:e|es|ed|ing)|cool(?:s|ed|ing)?|dry(?:ing)?|in the oven|cancel|stop)\b/,
  /** They are counted by who comes. */
  each: /\b(?:each|apiece|per|every(?:one|body)?|a head|how many (?:macarons|macs|do|will|for))\b/,
  /** Another share, of which it may be the rest. */
  shares:
    /\d ?(?:%|percent|per cent|pct)|\bsplit\b|\bshare\b|\bratio\b|\bdivide\b|\b(?:in (?:all|total)|total|altogether|the rest)\b/,
} as const;
