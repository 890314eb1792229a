/** What can be asked, with examples that work, and the answers to thanks and small talk. */

import * as z from "zod/mini";
import { nodWords, praiseWords, thanksWords } from "../../data/words/small-talk.ts";
import { topics } from "../../data/words/topics.ts";
import { later, type Outcome, type Tool, tool } from "./contract/index.ts";
import { cues } from "./lib/cue.ts";
import { capital } from "./lib/show.ts";

const inputs = later(() =>
  z.strictObject({
    /** The calculator that help is wanted with. */
    topic: z.optional(z.string()),
    talk: z.optional(z.enum(["thanks", "hello", "who", "bye", "nod"])),
    /** One or a few examples, not all there is. */
    some: z.optional(z.boolean()),
    /** What was asked of, which is none of ours: "cupcakes", "nutrition". */
    elsewhere: z.optional(z.string()),
    kind: z.optional(z.enum(["bake", "matter", "guests"])),
    /** The calculator that comes nearest to it. */
    near: z.optional(z.string()),
  }),
);

type HelpInputs = z.infer<ReturnType<typeof inputs>>;

const thanks = `(?:${thanksWords.join("|")}|thank you|thank u|thankyou|much appreciated|bless you)`;
const praised = praiseWords.join("|");
const praise = `(?:ok|okay|oh|ah|and|that|thats|is|was|its|so|very|really|just|all|${praised}|good|nice|cool|got|it|youre|you|are|a|the|best|star|lifesaver|legend|gem|treasure|angel|marvel|wonder|godsend|champ|champion|hero|rock|diamond|delight|pearl|peach|pal|what|an|such|absolute|total|real|proper|little|genius|wow|yay|love|i|one|job|work|done|hun|darling|dear|mate|my|friend|,|!|[.])`;
/** What somebody is called who helps. */
const dear =
  "(?:star|lifesaver|legend|gem|treasure|angel|marvel|wonder|godsend|champ|champion|hero|diamond|delight|pearl|peach)";
const dearTo = new RegExp(`^(?:${praise} )*(?:${dear}|the best)(?: ${praise})*${"(?: [?!.,])*"}$`);
/** Heard, and nothing asked. */
const nod = `${nodWords.join("|")}|all right|i see|makes sense|fair enough|will do|good to know`;
const hello =
  "(?:hello|hi|hiya|hey|howdy|good (?:morning|afternoon|evening|day)|morning|evening|greetings|hru|wyd|sup|yo|bonjour|hallo|hola)";
const end = "(?: (?:please|pls|then|now|there|again|bowlside|everyone|chef|today|[?!.,]|{when}))*$";

/**
 * Help reads the others' purposes and examples, so that what it shows is what works. It is handed them as a function,
 * since it stands in the same list.
 */
export const helpWith = (tools: () => readonly Tool[]): Tool =>
  tool<HelpInputs>({
    name: "help",
    purpose: "What I can do, with examples that work",
    inputs,
    cues: cues(
      [
        6,
        "^(?:(?:can you|could you|please|pls|i need|some|more|give me|show me|ok) )*help (?:me )?(?:with|about|on) (?:the |my |a |some )?\\S+(?: \\S+)?(?: [?!.])*$",
      ],
      [
        4,
        `^(?:(?:please|pls|ok|i need|some|can you|could you|can u|oh|um) )*help(?: me)?(?: out)?${end}`,
        "help (?:me )?(?:with|on|for|about|using) (?:the |my |a |some )?\\S+(?: \\S+)?$",
        "(?:what|wat) (?:all |else |exactly |kinds? of things |sorts? of things |sort of stuff )?(?:can|could|do) (?:you|u|i|this|it|we) (?:actually |really |even )?(?:do|help|ask|answer|offer|know|calculate|work out|handle)(?: me)?(?: with| for me| about| here| in here)?(?: you)?(?: for)?" +
          end,
        // "what can you help me out with", "what u help with"
        `(?:what|wat|wot|wots|whats) (?:all |else |exactly |stuff |things |kinds? of things |sorts? of things |sort of stuff )?(?:can |could |do |does |will |would |is |are )?(?:you|u|this|it|the app|this thing)(?: actually| really| even| able to| here to| gonna)? (?:help|helping|be helpful)(?: (?:me|us|out|people))* (?:with|for|about)${end}`,
        "what (?:sorts?|kinds?|manner) of (?:things?|questions?|stuff|help|work|sums?) (?:can|do|could|would) (?:you|i)",
        "(?:how|in (?:what|which) ways?\\S*) (?:can|could|may|might|would|do) you (?:be of (?:help|use|service|assistance)|help)(?: (?:to |for )?(?:me|us))?(?: [?])?$",
        "^(?:(?:and|so|but|ok) )*what (?:youre|you are) (?:good|able|capable|meant|here|made|useful) (?:for|to|of)",
        "what (?:can|could|do) i ask(?: you)?(?: about| for)?$",
        "what (?:are|is) (?:you|this|it) (?:good )?for",
        "what (?:are|r) (?:you|u) (?:able|good|capable)",
        "what (?:\\S+ )?(?:things|questions|stuff|topics) (?:can|may|could|should|do) (?:i|we|you)",
        "(?:things|stuff|questions) (?:can|may|could) (?:you|i) (?:help|ask)",
        `what (?:does|do) (?:this|it|you) do${end}`,
        `how (?:does this|do you|does it|do i use (?:this|you|it))(?: thing| app| program)?(?: work)?${end}`,
        `(?:show|give) (?:me )?(?:some |the |a few |an |another )?(?:examples?|commands?|options)${end}`,
        `^(?:some |a few |any )?examples?${end}`,
        // "give me some examples of what i can ask", "any examples of what i can type", "example questions?"
        `^(?:(?:please|pls|ok|so|and|can you|could you|show|give|me|some|a|few|an|another|more|any|got|have|you|list|i need|the|tell|us|good) )*(?:examples?|ideas?|samples?|suggestions?|pointers?|hints?)(?: (?:of|for|on|about|as to|with))? (?:(?:what|which|how|things?|questions?|stuff|sorts?|kinds?|sort|kind|of|the) )*(?:(?:i|we|one|you|people) (?:can|could|may|might|should|are able to|get to)(?: actually| even)?|to) (?:ask|type|say|write|try|do|put in|help with|enter|ask for|use you for|use this for|answer|use it for)(?: (?:you|here|in here|about|for|next|first|with you))*${end}`,
        `^(?:(?:please|pls|ok|so|and|can you|could you|show|give|me|some|a|few|an|another|more|any|got|have|list|i need|the|us|good|your) )*(?:examples? (?:questions?|sentences?|commands?|orders?|sums?|of (?:questions?|sentences?|commands?|orders?|use))|sample (?:questions?|sentences?|commands?))${end}`,
        // "list things i could ask you", "tell me what i can ask here"
        `^(?:(?:please|pls|ok|so|and|can you|could you) )*(?:list|show|tell|give)(?: me| us)?(?: (?:some|a few|all|the|of|more))* (?:what|things?|stuff|questions?|sorts? of things?|kinds? of things?)(?: that)? (?:i|we|one) (?:can|could|may|might|should) (?:ask|type|say|try|do|write)(?: (?:you|here|in here|about|for|next|first))*${end}`,
        `^(?:please |can you |ok )*(?:list|show me|tell me) (?:me )?(?:all|everything|all the things|what) (?:that )?(?:you|it|this) (?:can|could|know\\S*)(?: how to)?(?: \\S+)?${end}`,
        // "run me through what all you do", "what all you got", "everything you can do"
        `^(?:please |can you |ok |just |so )*(?:(?:run|walk|take|talk) me (?:down |through )?|give me (?:a |the )?(?:rundown|run down|tour|lowdown|list) (?:of |on )?|show me |tell me |list )?(?:all|everything|all the things|all the stuff|what|what all) (?:of )?(?:that )?(?:you|it|this) (?:(?:can|could|know how to|know|got|have got|have|are able to) )?(?:do|help with|help me with|handle|offer|got|have|know)(?: how to do)?(?: (?:for me|in here|here|with))*${end}`,
        "(?:list|what are) (?:the |your )?(?:commands|options|features|calculators|tools)",
        `(?:who|what) are (?:you|u)${end}`,
        `whats your name${end}`,
        `^(?:${praise} )*${thanks}(?: ${praise})*${end}`,
        `^${thanks}`,
        `^\\S+ ${thanks}${end}`,
        `^(?:${praise} )*${thanks}(?: \\S+)?(?: \\S+)?${end}`,
        `^(?:${praise} )*${thanks} (?:${praise} |, )*(?:(?:thats|that|youve|you) )?(?:put my mind at (?:rest|ease)|a (?:weight|load) off|saved me|helped)`,
        // "it came together, thank you": told, and nothing asked
        `^(?!.*(?:how|what|when|why|which|can|could|is) )(?:\\S+ ){2,8}, ${thanks}${end}`,
        "what (?:is it|all) (?:that )?(?:you|u) (?:can|could) (?:help|do)",
        `^(?:phew|ok|okay|great|lovely|brilliant|yay|perfect) (?:\\S+ ){0,4}(?:, )?${thanks}${end}`,
        `^${hello}(?: ,)?(?: ${hello})?${end}`,
        `^(?:bye|goodbye|good night|goodnight|see you|see ya|nighty night)${end}`,
      ],
      [
        3,
        `^(?:${praise} )*(?:${praised}|legend|genius|lifesaver|nice one|good job|well done|got it)(?: ${praise})*${end}`,
        // "what a treasure you are", "you are a gem"
        `^(?:${praise} )*${dear}(?: ${praise})*${end}`,
        `^(?:${praise} )*(?:youre|you are) (?:simply |just |really |absolutely )?the best(?: ${praise})*${end}`,
      ],
      [3, `^(?:(?:${nod}) (?:, )?)*(?:${nod})${end}`],
      [
        9,
        `^${thanks} (?:, )?(?:you|youre|u) (?:are|were|have|ve|re|saved|rock|beauty|legend|star)?.*(?<! how)(?<! what)$`,
      ],
      [
        -4,
        "{weight}",
        "{volume}",
        "{percent}",
        "{temperature}",
        "{length}",
        "{time}",
        "{number}",
        "{base} .. {symptom}",
        "{symptom}",
        "(?:timer|timers) (?:for|on|at)",
      ],
    ),
    examples: [
      { say: "what can you do", inputs: {} },
      { say: "help", inputs: {} },
      { say: "help with ganache", inputs: { topic: "ganache" } },
      { say: "thanks", inputs: { talk: "thanks" } },
      { say: "hello", inputs: { talk: "hello" } },
      { say: "who are you", inputs: { talk: "who" } },
      { say: "ok good", inputs: { talk: "nod" } },
    ],
    elsewhere: [
      { say: "my buttercream went all soupy, help", tool: "trouble" },
      { say: "what can I make with 300 g almond flour", tool: "scale" },
      { say: "why?", tool: "explain" },
    ],
    rivals: [["topic", "talk", "some", "elsewhere"]],
    read: (reading) => read(reading.mask, tools()),
    compute: (given) => answer(given, tools()),
  });

function read(mask: string, tools: readonly Tool[]): HelpInputs {
  const plain = mask.replace(/<[^>]*>/g, "").replaceAll("_", " ");
  if (new RegExp(`(?:^| )${thanks}(?= |$)`).test(plain)) return { talk: "thanks" };
  if (dearTo.test(plain)) return { talk: "thanks" };
  if (new RegExp(`^${hello}(?= |$)`).test(plain)) return { talk: "hello" };
  if (/(?:who are|what are) (?:you|u)(?! for)|your name/.test(plain)) return { talk: "who" };
  if (new RegExp(`^(?:(?:${nod}) (?:, )?)*(?:${nod})${end}$`).test(plain)) return { talk: "nod" };
  if (/^(?:bye|goodbye|good ?night|see y|nighty)/.test(plain)) return { talk: "bye" };
  const wanted = /help (?:me )?(?:(?:with|on|for|about|using) )?(?:the |my |a |some )?(.+?)(?: [?!.])*$/.exec(
    plain,
  )?.[1];
  if (!wanted)
    return /(?:^| )example(?= |$)/.test(plain)
      ? { some: true }
      : /help|what|which|how|show|list|give|tell|run|walk|everything|option|command|example/.test(plain)
        ? {}
        : { talk: "thanks" };
  const named = tools.find(
    (each) =>
      each.name === wanted ||
      topics[each.name]?.some((word) => word === wanted || wanted.split(" ").includes(word)),
  );
  return named ? { topic: named.name } : {};
}

function answer({ topic, talk, some, ...none }: HelpInputs, tools: readonly Tool[]): Outcome {
  if (none.elsewhere !== undefined) return notOurs(none, tools);
  if (talk) return { status: "answered", headline: small[talk] };
  if (some)
    return {
      status: "answered",
      headline: 'Type one of these as it stands, or with your own numbers. "help" shows more.',
      items: tools
        .filter((each) => first.includes(each.name))
        .map((each) => ({ say: each.examples[0]?.say })),
    };
  const one = tools.find((each) => each.name === topic);
  if (one) {
    const says = one.examples.map((each) => each.say);
    return {
      status: "answered",
      headline: `${one.purpose}. Try: "${says[0]}"`,
      items: says.map((say) => ({ say })),
    };
  }
  return {
    status: "answered",
    headline:
      "I weigh flavor, scale, fill, convert, time, note and plan for macarons. Ask in plain words, one or several things at once.",
    items: tools
      .filter((each) => each.name !== "help")
      .map((each) => ({ tool: each.name, text: capital(each.purpose), say: each.examples[0]?.say })),
    cautions: [
      '"help with ganache" shows more of one, "why?" the rule behind an answer, "undo" takes a change back.',
    ],
  };
}

/** Turned down by name, with the nearest thing that can be asked. */
function notOurs({ elsewhere = "", kind, near }: HelpInputs, tools: readonly Tool[]): Outcome {
  if (kind === "guests")
    return {
      status: "declined",
      headline:
        'I have no rule for how many macarons a guest eats, so I give no figure. Say how many each: "30 guests, 2 macarons each, how much batter".',
    };
  const say = (tools.find((each) => each.name === near) ?? tools.find((each) => each.name === "dose"))
    ?.examples[0]?.say;
  const rule =
    kind === "matter"
      ? `I keep to filled macarons; ${elsewhere} I leave to others.`
      : `I have no rule for ${elsewhere}, so I give no figure: my rules are of filled macarons.`;
  return { status: "declined", headline: `${rule} Try "${say}" or "help".` };
}

/** Whose examples are shown to somebody who asks for one. */
const first = ["dose", "shells", "timer", "note", "day"];

const small: Record<NonNullable<HelpInputs["talk"]>, string> = {
  thanks: "You're welcome.",
  hello: 'Hello. Ask me something like "230 g buttercream, how much flavor?"',
  who: 'I am bowlside: I weigh flavor, batter and filling, convert, keep time and notes for macarons. "help" shows what to ask.',
  bye: "Until the next batch.",
  nod: "All right. Ask on when you like.",
};
