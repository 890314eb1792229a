/** "My cousin's having a go tomorrow and she asks how long I usually rest them": who asks it, and when, is no part of it. */
import { wordOf } from "../found/items.ts";
import { carriesAmount, type Ear, longest, type Part } from "./part.ts";

const head =
  /^(?:(?:and|but|so|well|oh|now) )*(?:my|our|his|her|the|a|an|one|some|someone|somebody|everyone|everybody|people|she|shes|he|hes|they|theyre|aunt|auntie|uncle|granny|grandma|nan|mum|mom|mother|dad|father)(?: |$)/;
const asksIt =
  /(?:^| )(?:asks?|asked|asking|(?:wants?|wanted|wanting|needs?|needed|dying|keen|curious|d like|would like|would love|is itching) to know|wonders?|wondered|wondering|enquires|inquires|curious)(?: (?:me|us|again|once more|nicely|about))*$/;
const question = new Set("how what whats which when where why whether".split(" "));
const usual =
  /(?:^| )(?:usually|normally|generally|typically|as a rule|on average|by default|mostly|tend to|always) /;

/** The question alone, where somebody else is said to ask it; all of the items where nobody is. Pure. */
export function withoutAsker(items: Part, ear: Ear): Part {
  if (items.length > longest) return items;
  const at = items.findIndex((item, i) => {
    if (i < 2 || !question.has(wordOf(item))) return false;
    const lead = ear.mask(items.slice(0, i));
    return head.test(lead) && asksIt.test(lead);
  });
  const [lead, rest] = [items.slice(0, at), items.slice(at)];
  if (at > 0 && isOfSomeone(lead, rest, ear)) return rest;
  // "my sister is baking tomorrow, how long do i usually rest the hazelnut ones"
  const comma = items.findIndex(
    (item, i) =>
      item.is === "sign" && /^[,.!;]$/.test(item.text) && i > 2 && question.has(wordOf(items[i + 1])),
  );
  const [before, asked] = [items.slice(0, comma), items.slice(comma + 1)];
  return comma > 0 && before.some((item) => item.is === "when") && isOfSomeone(before, asked, ear)
    ? asked
    : items;
}

/** Nothing of the trade in it; a day only where what is usual is asked, whatever the day. */
const isOfSomeone = (lead: Part, rest: Part, ear: Ear): boolean =>
  head.test(ear.mask(lead)) &&
  !carriesAmount(lead) &&
  ear.claimed(rest) !== undefined &&
  lead.every(
    (item) =>
      item.is === "word" ||
      (item.is === "sign" && item.text !== "?") ||
      (item.is === "when" && item.when.minute === undefined && usual.test(`${ear.mask(rest)} `)) ||
      (item.is === "thing" &&
        !(
          item.thing.taste ||
          item.thing.dose ||
          item.thing.ingredient ||
          item.thing.base ||
          item.thing.symptom ||
          item.thing.chocolate ||
          item.thing.formula
        )),
  );
