/** Why: the rule of the last answer, its sum a line a step, what was assumed, and how the question was read. */

import * as z from "zod/mini";
import { opening } from "../../data/words/openers.ts";
import { later, type Outcome, tool, type World } from "./contract/index.ts";
import { cues } from "./lib/cue.ts";

const inputs = later(() =>
  z.strictObject({
    /** The sum behind the answer, or how the sentence was understood. */
    about: z.optional(z.enum(["rule", "reading"])),
  }),
);

type ExplainInputs = z.infer<ReturnType<typeof inputs>>;

const it =
  "(?:that|it|this|those|these|there|them|the (?:number|answer|figure|amount|result)s?|your (?:number|answer|figure)s?)";
const lead = `${opening}(?:(?:yes|just) )*`;
/** What there is to explain of an answer. */
const sum =
  "(?:the|your|that|this|those|these|them|its) (?:math|maths|sums?|workings?|working out|arithmetic|calculations?|numbers?|figures?|logic|reasoning|reckoning|steps)";

/** What a rule may rest on: "is there any study behind that", "is that science or just habit". */
const proof =
  "(?:study|studies|research|evidence|proof|science|papers?|tests?|trials?|experiments?|data|facts?)";
const proven =
  "(?:proven|proved|tested|backed|scientific|scientifically|researched|studied|documented|verified|official|tradition|traditional|folklore|habit|custom|convention|guesswork|(?:what|how) (?:people|bakers|everyone|everybody|they) do)";
const ruled =
  "(?:that|it|this|those|these|(?:(?:that|this|the|those|these|your|a|such) )?(?:real )?(?:rules?|limits?|ratios?|ranges?|shares?|percentages?|percents?<unit=%>|percent<unit=%>|percents?|numbers?|figures?|amounts?))";

export const explain = tool<ExplainInputs>({
  name: "explain",
  purpose: "Why: the rule behind the last answer, step by step with its numbers",
  inputs,
  cues: cues(
    [
      4,
      `^${lead}(?:tell me |say |but )*(?:why|whyy+|how come)(?: (?:that|so|is|its|it|the|much|many|little|few|this|exactly|not|alright|ok|okay|fine|enough|right|wrong|within|over|under|though|tho|those|these|are|high|low|long|early|late|soon|short|big|small|thats|would|be|please|{weight}|{number}|{percent}|{time}))*(?: [?.!])*$`,
      `how(?:d| did| do| would| have) (?:you|u|ya) (?:get|got|work|worked|come|figure|figured|calculate|calculated|arrive|arrived|reach|reached|know|compute|computed|do) (?:to |at |up with |up to |up |with |out )?${it}`,
      `how (?:you|u) (?:calculated?|computed?|worked out|got|get|arrived? at|come to) (?:at |to )?${it}`,
      `hows ${it} (?:worked out|calculated|computed|figured|done)`,
      `how (?:is|was|were|are) ${it} (?:worked out|calculated|computed|figured|done)`,
      `where (?:do|did|does|is|are|have) (?:you|u|${it}) .. (?:get|got|come|from|getting)`,
      "where (?:do|does|did) .. come from",
      "wheres? (?:is )?(?:that|this|the|it) (?:number |figure )?(?:come|comes|coming|from)",
      `(?:explain|explian) (?:${it}|yourself|how you)`,
      `^${lead}(?:explain|explian)(?: please| pls)?(?: [?.!])*$`,
      "(?:show|give|walk) (?:me )?(?:through )?(?:the|your) (?:working|workings|math|maths|sums?|steps|calculation|calculations|reasoning)",
      "(?:whats|what is|wheres) (?:the|your) (?:rule|reasoning|math|maths|working|source)(?: (?:for|behind) \\S+)?(?: [?])*$",
      `(?:which|what) (?:rule|formula|source) (?:is|was|are|does) ${it}(?: (?:from|by|use|come from))?(?: [?])*$`,
      `(?:which|what) (?:rules?|formula|source|ratio|table) (?:did|do|have|are|were) (?:you|u) (?:use|used|using|go by|go on|going by|apply|applied|follow|take|work by|work from)(?: (?:there|here|for ${it}|on ${it}|now|then|again))*(?: [?.!,])*$`,
      `(?:whats|what is|what was|which was) the (?:rule|formula|basis|reason)(?: (?:there|here|for ${it}|behind ${it}|of ${it}|you used|used|again))*(?: [?.!,])*$`,
      `^${lead}(?:only|just|tell me|give me|show me|say|name|i want|the) (?:(?:only|just|tell me|give me|show me|the|your|want) )*rules?(?: (?:there|here|for ${it}|behind ${it}|of ${it}|you used|used|again|please|pls))*(?: [?.!,])*$`,
      // "is that your own invention or published", "whose rule is that"
      `^${lead}(?:(?:is|was|are|were) )?(?:${it}|(?:that|this|the) (?:limit|rule|ratio|number|figure|range|share)) (?:\\S+ ){0,2}(?:your own|yours|made up|invented|published|official|from memory|a guess|guessed|an estimate|proven|from (?:a|the|some) (?:book|source|table))(?: .*)?$`,
      `^${lead}(?:did|have) you (?:make|made|invent|invented|guess|guessed) ${it}(?: up)?(?: .*)?$`,
      `^${lead}(?:whos|whose|who made) (?:the |that |this )?(?:rule|limit|number|ratio)(?: is (?:that|this|it))?(?: .*)?$`,
      `(?:whats|what is) ${it} based on`,
      "based on what",
      "^(?:basis|reason|source|rule|formula)(?: [?.!])*$",
      "why .. (?:this|that) (?:number|figure|amount)",
      "explain (?:to )?me",
      "on what (?:basis|grounds|footing|authority)",
      `^${lead}by what (?:reasoning|logic|reckoning|rule|method|sums?)(?: (?:is|was) (?:that|this|it))?(?: [?.!])*$`,
      "^(?:says who|who says|prove it|source)(?: \\S+)?(?: [?])*$",
      "how (?:did|have) (?:you|u) (?:read|understand|understood|take|taken|parse) (?:that|it|me|this)",
      `what did you (?:assume|read|understand|take ${it})`,
      `(?:take|talk|walk|run) me through ${it}`,
      `(?:explain|explian|justify|unpack) ${sum}`,
      `(?:take|talk|walk|run) me through ${sum}`,
      `(?:break|go|run|step|talk|walk) (?:down |through |over )?${sum}(?: (?:down|through|over))?(?: (?:for|with) me)?(?: (?:please|pls|again|slowly))*(?: [?.!])*$`,
      `^${lead}(?:so )?how (?:does|do|did) ${sum} (?:work|go|come out|add up)(?: out)?(?: [?.!])*$`,
    ],
    [
      9.5,
      // "any study behind those percents", "is there science behind that or just habit"
      `^${lead}(?:(?:is|was|are|were|has|have) there |(?:do|did|have) you (?:have |got )?|is |got )?(?:been )?(?:any|some|a|an|actual|real|the|much) (?:(?:actual|real|hard|proper|scientific) )?${proof} (?:behind|in|on|for|about|of|to back|that backs?|supporting|into|under) ${ruled}(?: .*)?$`,
      `^${lead}(?:is|was) there ${proof} (?:behind|for|on|in) ${ruled}(?: .*)?$`,
      // "is that backed by anything scientific", "are those percents proven"
      `^${lead}(?:is|was|are|were|has|have) ${ruled} (?:\\S+ ){0,3}?${proven}(?: .*)?$`,
      `^${lead}(?:did|has|have) (?:anyone|anybody|someone|somebody|people|they) (?:ever |actually |really )*(?:test|tested|study|studied|check|checked|prove|proved|proven|measure|measured|research|researched|try|tried out) ${ruled}(?: .*)?$`,
      `^${lead}who (?:came up with|invented|decided|decides|set|sets|thought up|thought of|fixed|chose|worked out|says?) ${ruled}(?: .*)?$`,
      `^${lead}(?:is|was|are|were) ${ruled} (?:\\S+ ){0,2}?(?:real|actual|true|hard) (?:rules?|facts?|limits?|thing)(?: .*)?$`,
      // "how do you know its the whites that run out", "why is it the almond flour that runs out"
      `^${lead}how (?:do|did|can|could|would) (?:you|u) (?:know|tell|be sure) (?:that |so )?(?:its|it is|thats|the|it was|how much|how many|which|why) .*`,
      `^${lead}(?:why|how come)(?: (?:is|was|its))?(?: it)? (?:(?:the|my) )?{ingredient} (?:(?:that|which) )?(?:runs?|ran|running|gives?|is|are|goes?|end|ends) (?:out|short|up first|gone|first)(?: .*)?$`,
      `(?:show|tell|explain to) me how ${it} (?:is|was|were|got|comes?|came) (?:worked out|calculated|computed|figured|done|about)`,
      "what (?:did|do|are|were) you (?:base|basing|go|going) (?:it|that|this|by|off|on)",
      "^(?:and |but |so |ok )*why (?:is|was|are) (?:it|that|this|the \\S+) (?:only |just )?(?:{weight}|{percent}|{volume})(?: of)?(?: (?:the |my )?\\S+)?(?: (?:and|not) .*)?(?: [?.!])*$",
      "^(?:and |but |so |ok )*why (?:that|this|those|these) (?:ratio|share|percentage|percent|weight|time|temperature|size|dose)(?: [?.!])*$",
    ],
    [
      5,
      "^(?:and |but |so |ok )*why (?:so|that|this|such|the|only|not|a|an|two|three|half|twice|{number}|{factor}|{fraction}) .. (?:{ingredient}|{base}|{dose}|{taste}|{chocolate}|{weight}|butter|much|many|little|more|less)",
    ],
    [2, "step by step", "(?:show|see) (?:the |your )?working", "reason behind"],
    [-3, "{symptom}", "(?:wont|doesnt|didnt|keep|keeps|went|gone|going)"],
  ),
  examples: [
    { say: "why?", inputs: { about: "rule" } },
    { say: "how did you get that", inputs: { about: "rule" } },
    { say: "where does that number come from", inputs: { about: "rule" } },
    { say: "explain that step by step", inputs: { about: "rule" } },
    { say: "how did you read that", inputs: { about: "reading" } },
  ],
  elsewhere: [
    { say: "why are my shells hollow", tool: "trouble" },
    { say: "why have my tops gone wrinkly", tool: "trouble" },
    { say: "how do you fold the batter", tool: "method" },
  ],
  read: (reading) => ({
    about: /(?:read|understand|understood|parse|take that|assume)/.test(reading.mask) ? "reading" : "rule",
  }),
  compute: ({ about }, world) => (about === "reading" ? howRead(world) : because(world)),
});

const nothing: Outcome = {
  status: "declined",
  headline: 'Nothing has been answered yet. Ask something, then "why?" shows the rule and the sum.',
};

function because({ last }: World): Outcome {
  if (!last) return nothing;
  const { answer, question } = last;
  const rule = answer.rule;
  const source = rule?.source ? `, ${rule.source}` : "";
  if (!rule)
    return {
      status: "answered",
      headline: `"${question}" was answered without a rule: ${answer.headline}`,
      ...(answer.cautions ? { cautions: answer.cautions } : {}),
    };
  return {
    status: "answered",
    headline: `${answer.headline.replace(/[.]$/, "")}, because: ${rule.text} (${rule.basis}${source})`,
    ...(answer.figures ? { figures: answer.figures } : {}),
    rule,
    working: [
      `asked: ${question}`,
      ...(answer.working ?? []),
      ...(answer.assumed ?? []).map((each) => `assumed: ${each}`),
    ],
    ...(answer.assumed ? { assumed: answer.assumed } : {}),
    ...(answer.cautions ? { cautions: answer.cautions } : {}),
  };
}

function howRead({ last, unread }: World): Outcome {
  if (unread)
    return {
      status: "answered",
      headline: `I read "${unread.question}" piece by piece, and found no question that I can answer:`,
      items: unread.readings.map((text) => ({ text })),
    };
  if (!last) return nothing;
  return {
    status: "answered",
    headline: `I read "${last.question}" piece by piece:`,
    items: last.readings.map((text) => ({ text })),
    ...(last.answer.assumed ? { assumed: last.answer.assumed } : {}),
  };
}
