/** "What shall I note?" is answered by whatever is told: a fault in it asks for no cure, a time sets no timer. */
import type { Reading } from "../../tools/contract/index.ts";

const asks =
  /(?:^| )(?:how|whats|which|why|whos)(?: |$)|^(?:(?:and|so|ok|oh|but) )*(?:what|when|where|who|is|are|do|does|did|can|could|should|would|will|shall) |\?/;

/** An order of another matter, or no note at all. */
const orders =
  /^(?:(?:and|so|ok|okay|oh|no|actually|please|pls|just|now|first|wait|hold on|never ?mind|forget it|,) )*(?:set|start|stop|pause|cancel|put|show|list|read|find|open|tell|give|scale|split|convert|double|halve|save|delete|undo|forget|nothing|help|skip|leave|plan|label|export|import|print|remind|ping|pantry|timer|weigh|work out|calculate|never ?mind|nevermind|nope|quit|exit|bye)(?: |$)|^\S*<[^>]*step=[^>]*> timer|(?:^| )timer(?: |$)/;

/** A batch, a taste, a fault or how it was done: what notes are made of. */
const tells =
  /<[^>]*(?:taste=|symptom=|step=|count=)|<(?:temperature|time|when)|(?:^| )(?:batch|ones?|was|were|had|came|too|very|good|bad|sweet|next time|out of|tasted|looked|turned|piped|rested|baked|made|used)(?: |$)/;

export const isToldForNote = ({ mask }: Reading): boolean =>
  !asks.test(mask) && !orders.test(mask) && tells.test(mask) && mask.split(" ").length > 1;
