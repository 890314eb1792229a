/** Words that open an order to the timers. */

export const leads =
  "(?:(?:please|pls|ok|okay|and|now|then|so|oh|also|just|can you|could you|would you|you can|you may|you could|go ahead and|lets) )*";
export const stops = new RegExp(
  `(?:^|, )${leads}(?:stop|cancel|kill|end|clear|delete|remove|dismiss|silence|quit|scrap|halt|turn off|switch off|shut off|get rid of)(?: |$)|(?:turn|switch|shut) (?:\\S+ ){1,5}off(?: |$)|(?:done|out|finished|ready),? (?:so )?(?:stop|cancel|kill) (?:it|that)$|(?:^| )out (?:of|from) (?:the )?\\S*oven\\S*(?: (?:now|already))*,? (?:so )?(?:stop|cancel|kill)(?: |$)|^(?:all )?timers? off$`,
);

export const isOrder =
  /(?:^| )(?:timers?|alarms?|set|start|begin|stop|cancel|kill|add|give|take|call|rename|pause|remind|ping|nudge|snooze|restart|reset|change|extend|shorten|how|hows|what|whats|which|when|why|who|where|note|log)(?: |$)|<time|<when/;

export const stopWords = new Set(
  "stop cancel kill end clear delete remove dismiss silence quit scrap halt off of turn switch shut".split(
    " ",
  ),
);
