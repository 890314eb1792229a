/** The unit table's names as cue alternatives, and how a conversion is asked for once more. */
import { units } from "../../../data/words/units.ts";

/** Units of a kind, as a cue's facet wants them: "g|mg|kg|oz|lb". The longer of two that begin alike comes first. */
export const unitsOf = (dim: string): string =>
  units
    .filter((row) => row.dim === dim)
    .map((row) => row.unit.replaceAll(" ", "_"))
    .sort((a, b) => b.length - a.length)
    .join("|");

/** "can you do the same for", "i need that for": what leads up to the other thing. */
export const askingAgain =
  "can you|could you|would you|will you|i need|i want|i also need|id like|please|do|run|repeat|work out|tell|give|show|me|also|lets|the|very|exact|exactly";
