/** How an amount is told behind an answer: settled on, of everything together, of what there is. Words for patterns. */

/** They bring in an amount that stands instead of the one before: "call it 160", "lets say 160". */
export const settling =
  "(?:(?:id|ill|lets|let us|i want to|just|better|rather) )*(?:call (?:it|that)|say|make (?:it|that)|round (?:it |that )?(?:up |down |off )?to|go (?:with|for)|put it at|do|take)";

/** All of it together: "465 g all in all", "the whole lot". */
const together =
  "all in all|in all|in total|altogether|all together|all told|overall|in sum|in the end|combined|total";
const lot =
  "(?:everything|all of (?:it|them|that)|it all|them all|they all|the (?:whole )?(?:lot|thing|batch|mix|bowl|recipe|total|sum|end weight|result)|the whole|(?:it|that|this)(?= (?:all |both )?(?:come|comes|adds?|amounts?|sums?) ))";
const amounts =
  "(?:weighs?|weighing|is|are|be|to be|should be|makes?|gives?|(?:come|comes|coming) (?:out |up )?(?:to|at)|adds? up to|amounts? to|sums? (?:up )?to|down to|up to|to)";

/** What stands right before an amount that is of everything: "so that the lot weighs". Over the text. */
export const ofAllBefore = new RegExp(
  `(?:^|[ ,])(?:(?:a |in )?total (?:of|is|weight|weight of|weight is)?|(?:${together}),?|${lot}(?: (?:together|combined|taken together|in total))?(?: (?:should|must|would|will|has to|needs to|can|could|all|then|now|only|just))* ${amounts}) (?:about |around |only |just |exactly |roughly )?$`,
);

/** What stands right behind one: "all in all", "for the whole lot". Over the text. */
export const ofAllBehind = new RegExp(
  `^ ?(?:g |grams? )?(?:(?:${together})\\b|(?:of|for) ${lot}(?= |$|[,.?!]))`,
);

/** Words that may stand between a thing and the amount that there is of it: "the powdered sugar is down to 130 g". */
export const betweenThingAndAmount: ReadonlySet<string> = new Set(
  `is are was were its it at to down only just about around roughly barely still now and but i we im ive weve have
  has had got of on by that thats what whats which the a my our last one thing first here there theres instead actually
  sits stands run runs running gone out left short low scarce tight missing limited limiting limit problem issue bottleneck
  today sorry no all theyre they came come comes coming weigh weighs weighed weighing reads read says reading show shows showing
  scale bowl turned turns worked works out to be so far`
    .split(/\s+/)
    .filter(Boolean),
);

/** What was reckoned by before is set aside: "forget the whites", "never mind that". */
export const settingAside = "(?:forget|never ?mind|ignore|scrap|leave|skip|disregard|drop|not)(?: about)?";

/** A thing is what there is too little of: "almond flour is whats short". */
export const short =
  "(?:short|low|scarce|tight|missing|limited|limiting|the limit|the problem|the issue|the bottleneck|running (?:out|low|short)|runs (?:out|low|short)|run (?:out|low|down|short))";
