/** Words around a timer's name: what never begins or ends one, where one stops, what points at one. */
const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

/** Articles, pronouns, orders and talk: they never begin or end a name. */
export const nameEdges = list(`
a an the my our your their this that these those some just please pls me us you now new another of on in
at to for from with and or so then also too as well it its them they theyre all one ones go going get up
off by until till again back there here is are be was been has have had got will would could can may might do does
did left still yet done ready doing running start set begin put run make give time timed need needs want
wants id like i im ive hey ok okay right take takes call timer timers alarm alarms reminder reminders
actually sorry oops wait top label countdown clock minute minutes more extra longer less instead about around how long much hows whats what
when which think add cancel stop kill end thats because cause both ping nudge wake remind ring alert buzz
let lemme know konw tell shout something somthing anything count counting down reminding each apiece
sharp shorter later earlier sooner we passed over elapsed gone once soon hits says strikes reaches gets shows reads
`);

/** An errand keeps its verb: "take the butter out". */
export const errandEdges = list("a an the please pls and me then");

/** A name for a new timer ends before these. */
export const nameStops = list(`
timer timers alarm alarms reminder countdown one ones please pls because cause cos thats when while so
then now would could can but at in on until till by for too as instead if they theyre and or called named went gone just
`);

/** An errand runs on to these: "flip the tray in 7 minutes". */
export const errandStops = list("in at by please pls and when because for");

/** Behind these stands the name of a timer that runs: "how long on tray 1", "stop the oven one". */
export const pointers = list(`
on for to off from with does will is has have hows whens stop cancel kill end clear delete remove dismiss silence pause
resume hold freeze restart reset extend stretch shorten snooze change give finish quit make
`);

/** The words that point at a running timer end before these, or where a new name would. */
export const pointerStops = list(`
left nearly almost done doing finished ring rings go off up to by due ready still running got over again back please a
another from more with finish end
`);
