/** The unit table's names as cue alternatives. */
import { units } from "../../../data/words/units.ts";

/** Units of a kind, as a cue's facet wants them: "g|mg|kg|oz|lb". The longer of two that begin alike comes first. */
export const unitsOf = (dim: string): string =>
  units
    .filter((row) => row.dim === dim)
    .map((row) => row.unit.replaceAll(" ", "_"))
    .sort((a, b) => b.length - a.length)
    .join("|");
