/** Patterns over the mask: more and less of a timer, what is put back, another length called out, and a new one. */
import { opening } from "../../../data/words/openers.ts";

export const fewer =
  /(?:^| )- \S*<time|(?:^| )(?:take|knock|shave|cut|lop|trim|chop|shed|dock|strip|reduce|shorten|drop|lose|less|shorter|minus|fewer|off|earlier|sooner)(?: |$)/;
export const isChange =
  /(?:^| )(?:put|stick|pop) \S*<(?:number|time)\S* (?:more )?on (?:to )?(?:it|that|this)(?: |$)|(?:^| )(?:tack|stick|pop|bung|chuck|whack|slap) \S*<(?:number|time)\S* (?:more )?(?:on|onto)(?: |$)|(?:^| )(?:another|extra) \S*<number\S* on(?: to)?(?: (?:it|that|this|the))?(?: |$)|(?:^| )(?:give|extend|stretch|lengthen|shorten|reduce|increase|snooze|plus) |^(?:(?:and|the|ok|now) )*(?:(?!timers?|alarms?|set|start)[a-z0-9]+(?:<\S*>)? ){0,2}minus[ _]\S*<|(?:^| )add \S*(?:<time|<number)|(?:take|knock|shave|cut|lop|trim|chop|shed|dock|drop|pull|strip) .*(?:off|from|away)(?: |$)|(?:^| )[+-] \S*<time|^[+-] \S*<number>$|^(?:(?:and|now|ok|then) )*\S*<(?:number|time)\S* off(?: (?:it|that|this))?$|(?:push|move|put|shift) (?:it|that|this)(?: (?:back|on|out|forward))? by|(?:^| )(?:bump|push|kick|nudge|crank) (?:it|that|this|the \S+(?: one| timer)?) (?:up|out|on)(?: by)? (?:another )?\S*<(?:number|time)|(?:^| )on top (?:of (?:it|that|this) )?\S*<(?:time|number)[^ ]*(?: (?:min|minutes|please|then))*$|\S*<number[^ ]* (?:min |minutes )?on top(?: of (?:it|that|this))?(?: (?:please|then|now))*$|<time> (?:on top|later|earlier|sooner)(?: |$)|(?:less|longer|shorter|more|extra)(?: |$)|(?:^|_| )(?:more|extra|another|additional)[_ ]\S*<time|(?:needs?|wants?|gets?|takes?|do with) (?:another|extra|a further)[_ ]\S*<number[^ ]*(?: (?:please|pls|now|then|i think))*$/;
/** "put 5 back on", "put those 3 back", "add back 2", "put 3 on again": what was taken off, or more. */
const puts = "(?:^| )(?:put|stick|pop|add|give|slap|whack|bung|chuck|tack|throw|get)";
const those = "(?:(?:me|it|us|the|those|that|these|another|my|your) )*";
const some_min = "\\S*<(?:number|time)[^ ]*(?: (?:more|extra|min|mins|minutes|of them|of those))*";
export const putsBack = new RegExp(
  `${puts} ${those}${some_min} back(?: (?:on|again|to|onto)(?= |$)|$)|${puts} ${those}${some_min} back please$|${puts} ${those}${some_min} (?:on )?again(?: please)?$|${puts} ${those}back (?:on )?${those}${some_min}(?: (?:on|please))*$`,
);
/** "drop 2": minutes less, where a timer was spoken of. */
export const drops = new RegExp(
  `^${opening}(?:drop|lose|shed|trim|dock) \\S*<(?:number|time)[^ ]*(?: (?:off )?(?:it|that))?$`,
);
/** "push it back by 5": so many minutes, and no hour of the clock. */
export const pushes =
  /(?:^| )(?:push|move|put|shift|nudge|bump|knock|extend|stretch|lengthen|increase|shorten|reduce|cut(?:<\S*)?|bring)(?: (?:it|that|this|them|the timer|(?:the )?\S+(?: one| timer)?))?(?: (?:back|on|out|along|down|forward))? by (\S+)<when>(?: (?:please|pls|then|now))*$/;
/** They take minutes off: "shorten by 4". */
export const shortens = /(?:^| )(?:shorten|reduce|cut(?:<\S*)?|bring .* (?:down|forward))(?: |$)/;
/** "extend it to 30": its whole length from when it was set. */
export const remeasures = new RegExp(
  `^${opening}(?:extend|stretch|lengthen|increase|shorten|reduce|cut(?:<\\S*)?|bring) (?:(?:it|that|this|the timer|(?:the |my )?\\S+(?: one(?:<number>)?| timer| \\S*<number>| [a-z])?) )?(?:up |down |out |back )?to (?:about )?\\S*<(?:number|time)[^ ]*(?: (?:min|mins|minutes|then|please|pls|in all|altogether|total))*$`,
);
export const calls = new RegExp(
  `^${opening}(?:(?:lets|just|we can|you can|better) )*(?:call|name) (?:it|that|this) (?:(?:an?|about|around|even|roughly|just) )*\\S*<(?:number|time)[^ ]*(?: (?:min|mins|minutes|then|instead|please|pls))*$`,
);
export const isNew =
  /(?:^|(?:^| )(?:and|,|then|also|plus|set|start|make|want|need|add) )(?:one|another|a second|a third)(?: more| other| extra| new)?(?: timer| one| alarm)? (?:of|for|at|with|,) (?:about |around )?\S*<time|(?:^| )(?:one|a) more \S*<time\S* for |(?:^| )(?:a|an|another|new|\S*<time[^ ]*) (?:\S+ )?(?:timers?|alarm|reminder|one)(?: |$)|(?:set|start|begin|run) (?:a|an|another|me)(?: |$)|give me |(?:remind|ping|nudge|wake|buzz|tell) me/;
/** "stick 22 min on": of a timer that runs so much more, and where none does a new one. */
export const putsOn =
  /^(?:(?:and|now|ok|okay|please|then|right|so) )*(?:put|stick|pop|bung|chuck|whack|slap|lob|throw|tack) \S*<time\S* on(?: (?:please|pls|now|for me))*$/;
