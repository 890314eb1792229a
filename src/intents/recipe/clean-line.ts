/** A recipe's line without what stands around it on a page. */
import { normalise, sanitise } from "../text/normalise.ts";

/** Bullets, boxes, numbering, table bars and dotted leaders taken off. */
export function cleanLine(said: string): string {
  return normalise(sanitise(said.replaceAll("\t", " ")))
    .replace(/\|/g, " ")
    .replace(/\.{3,}|…|·{3,}|_{3,}/g, " ")
    .replace(/^\s*(?:[-*+•◦▪‣·○●☐☑✓>]|\[[ x]?\])+\s+/, "")
    .replace(/^\s*\d{1,2}[.)]\s+(?=\S)/, "")
    .replace(/^\*+|\*+$|(?<=[a-z])\*+/g, "")
    .replace(/[~≈]\s*/g, "about ")
    .replace(/(\d)\s*(?:or|to)\s+(?=\d)/g, "$1-")
    .replace(/\bx\s*(\d+)\s*$/, "$1")
    .replace(/^(\d+)\s*x\s+(?=[a-z])/, "$1 ")
    .replace(
      /\b(?:egg )?(whites?|yolks?) (?:of|from) (\S+) (?:(?:large|medium|small|fresh) )?eggs?\b/,
      "$2 egg $1",
    )
    .replace(/^(\S+) (?:large |medium |small )?eggs?,? (whites?|yolks?) only\b/, "$1 egg $2")
    .replace(/\bzest of (?:an?|one|\d+) (lemon|lime|orange)s?\b/, "a little $1 zest to taste")
    .replace(/\s+/g, " ")
    .trim();
}
