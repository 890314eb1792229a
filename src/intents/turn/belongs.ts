/** Parts that say nothing by themselves: what is in a bowl before the flavor asked for, "weights?" behind the mix. */
import { vessel, vessels } from "../../../data/words/vessels.ts";
import { asks, carriesAmount, type Ear, type Part } from "./part.ts";

/** "160 g chocolate, 128 g cream, 24 g butter": what is in the bowl, part by part, and no question. */
export const tellsMix = (part: Part, ear: Ear): boolean =>
  !asks(part, ear) &&
  ((ear.mask(part).match(/<(?:weight|number)> (?:of )?\S*<ingredient=/g) ?? []).length > 1 ||
    (ear.mask(part).match(/<ingredient=\S* \S*<(?:weight|number)>/g) ?? []).length > 1);

/** "640 g batter for the shells": a bowl, and nothing asked of it. */
export const tellsBowl = (part: Part, ear: Ear): boolean =>
  !asks(part, ear) &&
  (/^(?:i have |ive got |theres )?\S*<weight> (?:of )?\S*<base=\S+(?: (?:for|to pipe) (?:the |my )?\S*<count=\S+)?$/.test(
    ear.mask(part),
  ) ||
    weighsBowl(part));

/** Words that a bowl is told with, and none that order one: "white ganache weighing 130 g", "smbc, 500 g in all". */
const bowlTold = new Set(
  "a an the my our this that of with weighing weighs weighed is it its it's comes came to at makes made in on all total altogether there here have has i ive we got theres bowl pot tub scale scales ready finished done plain about roughly exactly just only now sits stands holds waiting".split(
    " ",
  ),
);

function weighsBowl(part: Part): boolean {
  const amounts = part.filter((item) => item.is === "amount");
  const things = part.filter((item) => item.is === "thing" && item.thing.unit === undefined);
  return (
    amounts.length === 1 &&
    amounts[0]?.is === "amount" &&
    amounts[0].amount.dim === "weight" &&
    things.filter((item) => item.is === "thing" && item.thing.base !== undefined).length === 1 &&
    things.every(
      (item) => item.is === "thing" && (item.thing.base !== undefined || item.thing.chocolate !== undefined),
    ) &&
    part.every(
      (item) =>
        item.is === "amount" ||
        (item.is === "thing" && !item.thing.dose && !item.thing.taste) ||
        (item.is === "sign" && /^[,:-]$/.test(item.text)) ||
        (item.is === "word" && bowlTold.has(item.text)),
    )
  );
}

/** "thats how much butter i have": of the answer before, and no question. */
export const tellsThat = (part: Part, ear: Ear): boolean =>
  /^(?:(?:so|and|well|ok) )*(?:thats|that is) (?:how much|how many|all the|the) (?:\S+ )?\S*<(?:ingredient|base)=\S+ (?:i|we|ive|theres)(?: (?:have|got|ve|ve got|own))?(?: left| here)?$/.test(
    ear.mask(part),
  );

const ofBowls = `\\S*count=bowls\\S*|${vessel}|${vessels}`;
/** "in one bowl comes matcha, how much". */
const forOneFirst = new RegExp(
  `^(?:and |so )*(?:for|in|into) (?:just |only )?(?:one\\S*|each)(?: (?:one|of (?:them|those)|${ofBowls}))? .*how ?much`,
);
const forOneLast = new RegExp(
  `(?:for|in|into|per) (?:just |only )?(?:each|every|one\\S*|a|that|${vessel})(?: single)?(?: (?:one|of (?:them|those|(?:the |those |these )?(?:${ofBowls}))|${ofBowls}))?(?: \\?)?$`,
);

/** "gel color for one bowl?", behind a split: what goes into each of its parts. */
export const asksForOne = (part: Part, ear: Ear): boolean =>
  part.some((item) => item.is === "thing" && Boolean(item.thing.dose ?? item.thing.color)) &&
  (forOneFirst.test(ear.mask(part)) || forOneLast.test(ear.mask(part)));

/** "how much rum should go in?": it stands for nothing without a bowl. */
export const asksFlavorOf = (part: Part, ear: Ear): boolean =>
  !carriesAmount(part) &&
  (asks(part, ear) ||
    wants.test(ear.mask(part)) ||
    part.some((item) => item.is === "thing" && item.thing.unit === "g")) &&
  ["dose", undefined].includes(ear.claimed(part)?.name) &&
  part.some((item) => item.is === "thing" && (item.thing.dose || item.thing.taste)) &&
  !part.some((item) => item.is === "thing" && item.thing.base);

/** "how much plain buttercream do i add?": to what was told before. */
const morePlain = "(?:(?:more|plain\\S*|extra|additional|stuff|of) )";
const forPlain = new RegExp(
  `^(?:(?:so|and|now) )*(?:(?:how|hw) (?:much|many)|what) (?:${morePlain}+(?:do|should|must|can|to|needed)|${morePlain}*\\S*<base=(?:buttercream|ganache|filling)>) .*(?:add|stir|mix|beat|need|save|fix|bring|rescue|mend|tame|dilute|weaken|calm|balance|put right|correct|go in|go into|get in|even out)`,
);

/** "SMBC, 750 g in total. Weights?": asks nothing but of what stands before it. */
const tail =
  /^(?:(?:and|so|the|what|whats|all) )*(?:weights?|amounts?|quantities|grams\S*|how much (?:of|from) each(?: (?:do |should |must )?i (?:make|need|weigh|have to make))?|recipe|else(?: (?:do i need|goes in|with (?:it|that|them)))?)(?: (?:please|pls))?(?: \?)?$/;

/** "i want strawberry flavor in it", "grams of rum". */
const wants =
  /^(?:(?:and|so|now|then|,) )*(?:(?:i|we) (?:want|need|would like)|id like|grams|weight|amount) /;

/** "160 °C for a conventional oven; what should i set my fan oven to?" */
export const asksOven = (told: Part, part: Part, ear: Ear): boolean =>
  !asks(told, ear) &&
  told.some((item) => item.is === "amount" && item.amount.dim === "temperature") &&
  !carriesAmount(part) &&
  /\bwhat .*(?:set|use|bake)\b.* oven|\bwhat (?:is|would|s) (?:that|it) .*(?:oven|fan|conventional)/.test(
    ear.mask(part),
  );

/** "250 g buttercream is to taste of rum. how much of that goes in": of the flavor that was told. */
export const asksOfIt = (told: Part, part: Part, ear: Ear): boolean =>
  !asks(told, ear) &&
  told.some((item) => item.is === "thing" && Boolean(item.thing.dose ?? item.thing.taste)) &&
  told.some((item) => item.is === "amount" && item.amount.dim === "weight") &&
  !carriesAmount(part) &&
  /^(?:(?:and|so|then) )*how much of (?:that|it|this)(?: (?:goes|go|should|do|would|must|can|is|does|will|may|might) ?.*)?$/.test(
    ear.mask(part),
  );

/** "put 16 g flavor in 250 g buttercream and it tastes like shampoo": what was done, though it sounds like an order. */
export const tellsPutIn = (part: Part, ear: Ear): boolean => {
  const mask = ear.mask(part);
  if (fellIn.test(mask) && !/(?:^| )(?:how|what|whats|which|\?)(?: |$)/.test(mask)) return true;
  return wasPutIn.test(mask) && !/(?:^| )(?:how|what|whats|which|too|ok|okay|\?)(?: |$)/.test(mask);
};
const wasPutIn =
  /^(?:(?:i|we|ive|weve|oh|no|so|ok|just|accidentally|oops) )*(?:put|added|add|dumped|tipped|poured|stirred|dropped|spilled|spilt|knocked) (?:in )?\S*<weight> .*(?:in|into|to) (?:the |my )?\S*<weight>/;
/** "wanted 8 g banana flavor in my 250 g buttercream and 18 g fell in". */
const fellIn =
  /<base=\S+.*(?: |, )(?:and|but|then|so) (?:(?:about|a whole|all of|instead|now) )*\S*<weight>(?: of (?:it|that))? (?:(?:just|has|have|all) )*(?:fell|slipped|went|landed|ended up|slid|dropped|splashed|got|poured|tipped) (?:in|into)(?: (?:it|there|by accident|by mistake))*$/;

export const asksForPlain = (part: Part, ear: Ear): boolean => forPlain.test(ear.mask(part));
export const isBareTail = (part: Part, ear: Ear): boolean =>
  tail.test(ear.mask(part)) || listed.test(ear.mask(part));
/** "list the ingredients in grams", "every ingredient by weight, please": of the mix before, part by part. */
const listed =
  /^(?:(?:and|so|then|please|now|ok|can you|could you|just) )*(?:(?:list|give|show|tell|write|break|spell|lay|state|weigh|i need|i want|id like|what are|whats|what is) (?:(?:me|us|it|them|out|down|for) )*)?(?:(?:the|all|of|every|each|their|its|my|full|whole|single) )*(?:ingredients?|weights?|amounts?|quantities|everything|parts|proportions|breakdown|recipe|ingredient list)(?: (?:and|with|in|by|as|the|their|its|of|for|each|every|all|it|them|one|weights?|amounts?|ingredients?|\S*<unit=(?:g|oz)>))*(?: (?:please|pls))?(?: \?)?$/;

/** "whites are 170 g, what about the rest": of what stands before it. */
export const asksOthers = (part: Part, ear: Ear): boolean =>
  /^(?:so |and )*(?:what about|whats|what is|what are|how about) (?:the )?(?:rest|others?|remainder|remaining)\S*(?: \?)?$/.test(
    ear.mask(part),
  );

/** "can i still put salt in? its 260 g of caramel buttercream, how much": the bowl of the question before. */
export const givesBowl = (question: Part, part: Part, ear: Ear): boolean =>
  !carriesAmount(question) &&
  question.some((item) => item.is === "thing" && Boolean(item.thing.dose ?? item.thing.taste)) &&
  !question.some((item) => item.is === "thing" && item.thing.base !== undefined) &&
  /^(?:its|it is|theres|there is|i have|ive got|i have got|the bowl is|the bowl has) (?:about |roughly |only )?\S*<weight>.*<base=/.test(
    ear.mask(part),
  );

const rightsBowl =
  /^(?:(?:ok|okay|so|no|and|fine|right|then|oh|actually) )*make (?:it|that) \S*<weight> (?:of )?(?:\S+ )?\S*<[^>]*base=[^>]*>(?: (?:then|instead|please))*$/;
const asksDoseAlone =
  /^(?:(?:and|so|then|how much|what|whats|the) )*(?:\S*<dose=flavor>|\S*<[^>]*taste=[^>]*>)(?: (?:then|now|for it|for that))*(?: \?)?$/;

/** "make it 120 g ganache. flavor?": one question of one bowl. */
export const asksOfRighted = (bowl: Part, part: Part, ear: Ear): boolean =>
  rightsBowl.test(ear.mask(bowl)) && asksDoseAlone.test(ear.mask(part));

/** "the recipe on the packet: 80 g whites, 100 g almond flour, ..." */
export const listsRecipe = (part: Part, ear: Ear): boolean =>
  /(?:^| )(?:recipe|formula) /.test(ear.mask(part)) &&
  !/(?:^| )(?:save|store|keep|remember|new) /.test(ear.mask(part)) &&
  part.filter((item) => item.is === "amount" && item.amount.dim === "weight").length >= 3;

/** "my whites weigh 100 g, what do the rest become": asked of the recipe before it. */
/** "rest of shell mix to match?", behind what is left of one ingredient. */
export const asksToMatch = (part: Part, ear: Ear): boolean =>
  !carriesAmount(part) &&
  /^(?:(?:so|and|whats|what is|what|the) )*rest\S* (?:of )?(?:the |my |a )?\S*(?:shell|batter|recipe|mix|house)/.test(
    ear.mask(part),
  );

export const asksRest = (part: Part, ear: Ear): boolean =>
  /<weight>/.test(ear.mask(part)) &&
  /(?:^| )(?:what|how much)(?: |$).*(?:rest|others?|remaining|become|everything|need|else)/.test(
    ear.mask(part),
  );
