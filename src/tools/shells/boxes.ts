/** "how many boxes of 12 for 50 macarons": the boxes that a number of macarons fills, and what stays over. */
import type { Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { counted, plain } from "../lib/show.ts";
import type { ShellsInputs } from "./shells.ts";

/** Boxes, the last of them perhaps not full. */
export function inBoxes({ macarons: made, in_box, broken = 0 }: ShellsInputs): Outcome {
  const macarons = made === undefined ? undefined : made - broken;
  if (made === undefined || macarons === undefined) return asking("How many macarons are there?", "macarons");
  if (in_box === undefined) return asking("How many go into a box?", "in_box");
  if (macarons < 0)
    return {
      status: "impossible",
      headline: `${plain(broken)} can't be gone of ${counted(made, "macaron")}.`,
    };
  const full = Math.floor(macarons / in_box);
  const over = macarons - full * in_box;
  const all = full + (over > 0 ? 1 : 0);
  return {
    status: "answered",
    headline: `${counted(all, "box", "boxes")} for ${counted(macarons, "macaron")}${over > 0 ? `: ${plain(full)} full, ${plain(over)} in the last` : ", all full"}`,
    figures: [{ name: "boxes", value: all, unit: "boxes" }],
    rule: {
      text: `${plain(macarons)} / ${plain(in_box)}, up to a whole box`,
      basis: "arithmetic",
    },
    working: [
      ...(broken ? [`${plain(made)} − ${plain(broken)} = ${plain(macarons)} macarons`] : []),
      `${plain(full)} × ${plain(in_box)} = ${plain(full * in_box)}`,
      `${plain(over)} over`,
    ],
    leaves: { macarons: made },
  };
}
