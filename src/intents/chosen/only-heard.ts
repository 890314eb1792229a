/**
 * "the dog ate one", where no number of macarons stands that it would be one less of; "never mind that": heard, and
 * nothing asked.
 */
import { praise } from "../../../data/words/symptoms.ts";
import type { Reading } from "../../tools/contract/index.ts";

const lead = "(?:(?:oh|no|and|so|but|well|ugh|argh|damn|ha|haha|sorry|ok|,) )*";
const who = "(?:i|we|he|she|they|it|someone|somebody|(?:the|my|our|his|her|their) (?:\\S+ ){1,2}?|\\S+ )";
const took =
  "(?:(?:just|has|have|had|already|then|also) )*(?:ate|eaten|got|stole|nicked|pinched|scoffed|dropped|broke|smashed|crushed|squashed|licked|sat on|took)";
const some =
  "(?:the |a |my |all |half |both )*(?:\\S+<(?:number|fraction)[^>]*>|one|ones|few|couple|some|lot|them|it|all|most|several|macarons?|macs|shells?)";
const gone =
  "(?:(?:has|have|was|were|is|are|just|already|got|been) )*(?:eaten|broken|dropped|smashed|crushed|squashed|stolen|gone|lost)";
const tail =
  "(?: (?:of|the|them|those|these|my|macarons?|macs|shells?|already|again|now|sadly|lol|haha|sorry|[.!,]))*";

const loses = new RegExp(`^${lead}${who} ?${took} ${some}${tail}$`);
const isGone = new RegExp(`^${lead}${some}(?: of (?:them|those|these|the \\S+))? ${gone}${tail}$`);

const letGo =
  /^(?:(?:oh|ok|no|well|ah|hm|so|but|,) )*(?:never ?mind|nvm|doesnt matter|it doesnt matter|no matter)(?: (?:that|it|then|thanks|now|about it|about that|sorry|[.!,]))*$/;

/** Pure. @param reading that no calculator took */
export const onlyHeard = ({ mask }: Reading): boolean => {
  const said = mask.replace(/<(?!number|fraction)[^>]*>/g, "");
  return loses.test(said) || isGone.test(said) || letGo.test(said);
};

const asks =
  /(?:^| )(?:how|what|whats|why|which|when|where|who|can|could|should|would|is|are|do|does|did|fix|help|but|still|though|however|except|\?)(?: |$)/;

/** "no cracks this time, so happy": all that is said of them is good, and nothing is asked. */
export const onlyPraised = ({ mask, things, amounts }: Reading): boolean => {
  // "the full amount" praises nothing
  const said = things.flatMap((each) => (each.symptom && each.text !== "full" ? [each.symptom] : []));
  return (
    amounts.length === 0 && said.length > 0 && said.every((id) => praise.includes(id)) && !asks.test(mask)
  );
};
