/** Scenes told beside a question: hands full of flour, what somebody would like to know, what nobody knows. */
import type { Ear, Part } from "./part.ts";

/** No scene is told in a longer sentence; without a limit a long line would cost the square of its length. */
const longest = 50;

const plainWords = (part: Part): boolean =>
  part.length <= longest &&
  part.every(
    (item) =>
      item.is === "word" ||
      item.is === "sign" ||
      // "full of egg", "sticky with sugar": hands, and no fault
      (item.is === "thing" && (!item.thing.symptom || !/ /.test(item.thing.text))),
  ) &&
  !part.some((item) => item.is === "sign" && item.text === "?");

const body =
  "(?:hands?|fingers?|thumbs?|elbows?|arms?|wrists?|sleeves?|hair|apron|shirt|jumper|cardigan|blouse|dress|trousers|jeans|glasses|face|nose|cheeks?|ears?|eyebrows?|phone|screen|keyboard|tablet|laptop|floor|ceiling|walls?|shoes?|slippers|shoulder|lap)";
const soiled = new RegExp(
  `^(?:(?:and|but|sorry|well|oh|as) )*(?:i|im|i am|ive|i have|ive got|theres|there is|theres still|weve|my ${body}|both my ${body}|my) (?:.* )?(?:up to|up (?:my|the)|on|over|in|across|down|with|of|under) (?:.* )?(?:my |the |your |both )?(?:\\S+ )?${body}(?:<\\S*>)?(?: |$)|^(?:(?:and|but|sorry|well|oh|as) )*(?:my |both my |these )${body} (?:are|is|were|was|have|has)(?: all| both| rather| completely| absolutely)? (?:covered|coated|caked|full|sticky|deep|smothered|plastered|in|dusted|busy|wet|greasy|floury|filthy)(?:<\\S*>)?(?: |$)`,
);

/** "I've flour up to my elbows", "there's butter all over the phone": nothing of what is in a bowl. */
export const isSoiled = (part: Part, ear: Ear): boolean => plainWords(part) && soiled.test(ear.mask(part));

const heads =
  "(?:my|our|the|his|her|everyone|everybody|everyones|someone|somebody|she|shes|he|hes|they|theyre|people|nobody|half)";
const wants =
  "(?:asks?|asked|asking|wants? to know|wanted to know|wonders?|wondering|enquir\\S*|knows?|told|tells|decides?|decided)";
const errands =
  "(?:bring|send|order|buy|get|fetch|pick|collect|take|wear|say|tell|expect|come|leave|arrive|give|have|write|put|choose|cook|lay|do|be|start|help)";
/** "my brother in law wants to know what to send over": for the question behind it. */
const errand = new RegExp(
  `^(?:(?:and|but|so|well|oh) )*${heads} (?:.* )?${wants} (?:.* )?(?:what|when|where|which|how many|who|why|if|whether) (?:(?:to|she|he|they|i|we|it|can|could|should|must|may|might|will|is|are) )*${errands}(?: |$)`,
);
/** "i dont know how i got roped into this", "i forget what day it is": nothing that could be answered. */
const nobodyKnows =
  /(?:^| )(?:no idea|not an idea|dont know|do not know|not sure|couldnt tell you|havent a clue|have not a clue|not a clue|no clue|(?:goodness|heaven|god|lord) knows|who knows|cant think|cannot think|dont ask me|(?:i|you) know) (?:how|why|what|where|when) (?:i|im|ive|id|ill|we|weve|wed|it is with|the time|possessed|came over|got into)(?: |$)/;
/** "i've forgotten what i saved with you": what is asked behind it. */
const slipped =
  /(?:^| )(?:forget|forgot|forgotten|cant remember|never remember|dont remember|dont recall|cant recall|lost track of|muddled up|cant think) (?:what|whats|which|where|who) (?:is |all )?(?:i|ive|we|weve|what|which|in here|in there)(?: (?:have|saved|kept|told|given|gave|put|left|got|said|asked|wrote|written|down|with|to|you|here|in|there|away|up|so far|is|what|which|already|before))*$/;
/** "which is how all this started", "let's see what you're made of". */
const leadsUp =
  / , which is (?:how|why|where|when|what) |^(?:(?:now|then|right|so|well|ok|and|,) )*(?:lets|let us|let me|we will|well|ill) (?:see|find out|try|test) (?:what|how|if|whether) (?:you|youre|your|youve|good|clever|it|this)(?: |$)|^(?:(?:and|so|well|but) )*(?:you know|you can imagine|you should see) (?:how|what) /;

/** A question word within a scene, and nothing asked. */
export const isToldAsked = (part: Part, ear: Ear): boolean =>
  (plainWords(part) && slipped.test(ear.mask(part).replace(/(?: [,.;!-])+$/, ""))) || isUnclaimed(part, ear);

const isUnclaimed = (part: Part, ear: Ear): boolean =>
  plainWords(part) &&
  part.every(
    (item) => item.is !== "thing" || !(item.thing.ingredient || item.thing.taste || item.thing.dose),
  ) &&
  [errand, nobodyKnows, leadsUp].some((each) => each.test(ear.mask(part))) &&
  ear.claimed(part) === undefined;

/** "isn't it hot today?", "where do the years go?", "how are you keeping?": asked, and no answer wanted. */
const rhetorical = [
  /^.* , (?:isnt|hasnt|arent|wasnt|werent|doesnt|dont|didnt|wont|wouldnt|havent|hadnt|aint|is|has|does|do|did|will) (?:it|that|they|he|she|you|we|i|there) \?$/,
  /^(?:do|dont|did|didnt|can|could|would|have|havent) (?:you|i) (?:ever |not |just )?(?:remember|tell you|mention|believe|imagine|see|seen|hear|heard|know|known|notice|noticed|guess) (?!how |what |if |whether |when |where |which |why )\S+ .*\?$/,
  /^remember (?:(?:that|how|when) )?(?:i|we|my|our|the time) .*\?$/,
  /^how (?:are|have|is) (?:you|things|everyone|the family|life|yourself)(?: (?:been|keeping|doing|getting on|today|this morning|going|all|then|my dear|dear|love|these days|treating you))* \?$/,
  /^where (?:do|does|did|has|have|is|are) (?:(?:the|all|my) )*(?:years?|time|days?|weeks?|months?|mornings?|summer|winter|hours?)(?:<\S*>)? (?:\S+ )?(?:go|gone|going|went|to) ?\?$/,
  /^why (?:do|does|did|is|am|are|must|cant|wont) (?:i|we|he|she|it|they|men|children|people|nobody|everyone|my \S+) (?:always|never|ever|bother|insist|let|put up|get myself) .*\?$/,
  /^(?:isnt|wasnt|arent|aint|doesnt) (?:it|the|this|that|they|my) (?:\S+ ){0,3}(?:hot|cold|warm|wet|dark|early|late|quiet|noisy|lovely|awful|dreadful|grim|funny|odd|strange|typical|ridiculous|busy|exciting|time|day|weather|week|morning|evening|look|looks)(?: \S+){0,3} \?$/,
  /^(?:who(?:d| would| else would) (?:have|a) (?:thought|believed|guessed)|what (?:would|did|will) i (?:ever )?(?:do|without)|what can you do|whats not to like|what (?:was|am) i (?:thinking|like)|who am i kidding|where was i|whose idea was (?:this|that|it))(?: .*)?\?$/,
];

/** Such a question by itself, of nothing that any calculator is for. */
export const isRhetorical = (part: Part, ear: Ear): boolean => {
  if (part.length > longest) return false;
  const said = ear.mask(part);
  return (
    said.endsWith("?") &&
    part.every(
      (item) =>
        item.is === "word" ||
        item.is === "sign" ||
        (item.is === "when" && item.when.minute === undefined) ||
        (item.is === "thing" && Boolean(item.thing.unit) && !item.thing.ingredient),
    ) &&
    rhetorical.some((each) => each.test(said)) &&
    (ear.claimed(part) === undefined || /^remember /.test(said))
  );
};

/** "what shall I tell her?" behind a question: for whom it is. */
export const asksWhatToSay = (part: Part, ear: Ear): boolean =>
  part.length <= longest &&
  /^(?:(?:so|and|now|then|please|oh) )*what (?:do|shall|should|can|could|would|will|am|must|might) i (?:to |going to |supposed to )?(?:tell|say|answer|reply|write|report)(?: (?:back|to|her|him|them|it|my|the|our|lad|lady|poor|dear|[a-z]+ in law|mother|mum|mom|dad|father|sister|brother|aunt|uncle|cousin|niece|nephew|friend|neighbou?r|boss|girl|boy|lot|then|please))*(?: \?)?$/.test(
    ear.mask(part),
  );
