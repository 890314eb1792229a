/** "from a blog: 110 g whites, ...": what stands before a list says that it is somebody's recipe, and no stock. */
import type { Reading } from "../contract/index.ts";

const source =
  /\b(?:blogs?|bloggers?|websites?|web ?page|site|page|post|video|vid|reel|clip|magazine|mag|newspaper|(?:cook)?books?|booklet|online|internet|web|forum|course|class|workshop|recipes?|formula|card|leaflet|packet|package)\b/;

/** People have recipes and things in their cupboards: a word has to say that it is the first. */
const person =
  /\b(?:grand(?:ma|mother|mum)|gran|granny|nan|nana|oma|aunt(?:ie|y)?|mum|mom|mother|sister|friend|mate|neighbou?r|teacher|chef|colleague|boss|cousin)s?\b/;
const asSaid =
  /\b(?:says?|said|gives?|gave|uses?|used|reads?|calls? for|called for|swears? by|goes|lists?|listed|told me|wrote|makes (?:it|them) with)[ :,-]*$/;
const leadsIn =
  /(?:[:-]|\b(?:says?|said|gives?|gave|has|had|uses?|used|reads?|calls? for|called for|goes|lists?|listed|takes?|wants?|asks? for|is|are|wrote|with))[ ,:-]*$/;

/** What tells of a cupboard, whoever speaks. */
const stock =
  /\b(?:cupboard|pantry|shelf|fridge|stock|left ?overs?|left|bought|buy|i have|ive|i got|we have|weve|at home)\b/;

/** @param from where the list of weights begins */
export function isFromSource({ text }: Reading, from: number): boolean {
  const lead = text.slice(0, from);
  if (stock.test(lead)) return false;
  return (
    (source.test(lead) && leadsIn.test(lead)) ||
    (person.test(lead) && (asSaid.test(lead) || /:[ -]*$/.test(lead)))
  );
}
