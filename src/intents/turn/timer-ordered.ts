/** How one asks to be given a timer, with its time or without: a whole order, wherever it stands in a turn. */

export const lead = "(?:(?:and|then|also|plus|so|ok|now|please|pls|after that|,) )*";
const ones = "(?:(?:a|an|the|my|our|one|another|new|next|quick|short) )*";
/** How one asks to be given a timer. */
const wants =
  "(?:(?:kick|whack|chuck|bung|throw|slap|count|time|set|start|put|begin|run|make|give|get|grab|pop|stick|bring|do|add|let|ill|i|we|can|could|may|might|would|will|want|need|needs|have|take|use|like|also|id|you|us|me|to|do|with|love|on|off|up|down|going) )+";
const length = "(?:(?:of|for|on|at) )?\\S*<time[^ ]*";

/** "i set a timer of 20 min but they needed 25", "we have one on": what was done and what there is. */
const notDone =
  "(?!(?:i|we|he|she|they) (?!(?:(?:also|still|just|do|really) )*(?:need|want|could|can|may|might|would|will|d|ll|like)(?: |$)))";
/** "give me a 20 min timer for the next tray", "i need another timer, 15 min", "timer 14 min please". */
const timer = new RegExp(
  `^${lead}${notDone}(?:${wants}${ones}(?:\\S+ ){0,4}?(?:timers?|alarm|countdown)(?: |$)|${wants}(?:on )?${ones}${length} (?:(?:on|more|from now|now) )*(?:(?:on|for) )?${ones}(?:\\S+ )?(?:timer|alarm|clock)|${ones}${length}(?: \\S+){0,3} (?:timers?|alarm|countdown)(?: |$)|${ones}${length} (?:more )?on the clock(?: |$)|${ones}(?:\\S+ )?(?:timer|alarm|countdown) (?:on )?${length}|${ones}(?:timer|alarm|countdown) (?:(?:for|of) )?\\S*<number>(?: (?:min|minutes|please|pls))*$|${ones}(?:timer|alarm|countdown) (?:for|on) (?:\\S+ ){1,4}\\S*<time|(?:can you |could you |will you |would you |you can )?(?:remind|ring|ping|buzz|wake|nudge|alert|call|beep|warn) (?:me|us) .*<(?:time|when)|(?:(?:can|could|will|would) you )?(?:count me down|time(?: me)?|let me know (?:when|in|after)|tell me (?:when|in|after)) ${length}(?: (?:for (?:me|the|my).*|please|pls|now|are up|is up|is over|have passed|has passed|are over))*$|(?:stop|cancel|pause|kill|end|turn off|reset) (?:the|my|that|all|all the) (?:\\S+ ){0,2}timers?(?: (?:please|pls|now|too))*$|${ones}\\S*<[^>]*step=[^>]*> timer(?: (?:please|pls|now|too|on|as well))*$|${ones}\\S*(?:<step=[^>]*timer[^>]*>|rest\\S* timer)(?: (?:please|pls|now))*$)`,
);

/** In nearly no other order is one of these: looking for them spares the long pattern. */
const mayRing =
  /timer|alarm|countdown|count me|clock|remind|ring|ping|buzz|wake|nudge|alert|call|beep|warn|let me|tell me|(?:^| )time(?: |$)/;
const isTimer = (mask: string): boolean => mayRing.test(mask) && timer.test(mask);

/** Said for a bake to come, or of one that is over. */
const toldThere =
  /(?:^| )(?:next time|in future|another time|in the future|from now on|always|never|would have|should have|could have|shouldve|helped|went off|rang|was|were|had)(?: |$)/;

/** In the clause itself: "..., the last one was too short" is only why. */
export const told = (mask: string): boolean =>
  toldThere.test(mask.split(/ (?:,|because|since|so|but) /, 1)[0] ?? "");

const timed = /<time[,>]/;
/** An order for a timer that says how long. */
export const timerOrdered = (mask: string): boolean => timed.test(mask) && isTimer(mask) && !told(mask);
/** An order for any timer. */
export const timerWanted = (mask: string): boolean => isTimer(mask) && !told(mask);
/** "... spread flat 20 min timer": behind what is told with nothing between. */
export const timerAtEnd = (mask: string): boolean =>
  /^(?:an? )?\S*<time[^ ]* timer(?: (?:please|pls|now|too|for (?:the )?(?:next|second|other|last) \S+))*$/.test(
    mask,
  );
