/** Tastes and their forms: which row of the dose table a flavor names, and tastes that no table lists. */
import { describe, expect, it } from "vitest";
import { read } from "./reading.ts";

/** "pistachio: nut paste" for each flavor in a sentence; "-" where a part isn't set. */
const flavors = (said: string) =>
  read(said)
    .things.filter((thing) => thing.taste || thing.dose)
    .map((thing) => `${thing.taste ?? "-"}: ${thing.dose ?? "-"}`);

describe("a form names its row of the dose table", () => {
  it.each([
    ["pistachio paste", "pistachio: nut paste"],
    ["hazelnut paste", "hazelnut: nut paste"],
    ["vanilla extract", "vanilla: extract"],
    ["almond extract", "almond: extract"],
    ["coffee extract", "coffee: extract"],
    ["vanilla bean paste", "vanilla: vanilla paste"],
    ["vanilla paste", "vanilla: vanilla paste"],
    ["peppermint oil", "peppermint: oil"],
    ["super strength peppermint oil", "peppermint: oil"],
    ["freeze-dried raspberry powder", "raspberry: fruit powder"],
    ["freeze dried strawberry powder", "strawberry: fruit powder"],
    ["strawberry powder", "strawberry: fruit powder"],
    ["raspberry puree", "raspberry: purée"],
    ["passion fruit purée", "passion fruit: purée"],
    ["strawberry jam", "strawberry: purée"],
    ["lemon zest", "lemon: zest"],
    ["zest of lime", "lime: zest"],
    ["earl grey tea powder", "tea: tea powder"],
    ["instant coffee", "coffee: coffee powder"],
    ["espresso powder", "espresso: coffee powder"],
    ["lemon flavor", "lemon: flavor"],
    ["lemon flavouring", "lemon: flavor"],
    ["lemon concentrate", "lemon: flavor"],
    ["concentrated lemon flavor", "lemon: flavor"],
    ["salted caramel flavoring", "salted caramel: flavor"],
    ["flavor", "-: flavor"],
    ["citric acid", "-: citric acid"],
    ["salt", "-: salt"],
    ["gel color", "-: gel color"],
    ["gel colour", "-: gel color"],
    ["powder color", "-: powder color"],
  ])("%s", (said, expected) => {
    expect(flavors(`how much ${said} for 300 g`)).toEqual([expected]);
  });

  it.each([
    ["matcha", "tea powder"],
    ["cocoa powder", "cocoa powder"],
    ["rum", "spirit"],
    ["kirsch", "spirit"],
    ["limoncello", "spirit"],
  ])("%s has a row of its own without a form", (said, row) => {
    const [found] = read(`how much ${said} for 300 g buttercream`).things;
    expect(found?.dose ?? usual(found?.taste)).toBe(row);
  });
});

/** A taste's row where it isn't a concentrated flavor, as the taste table has it. */
const usual = (taste: string | undefined) =>
  ({ matcha: "tea powder", rum: "spirit", kirsch: "spirit", limoncello: "spirit" })[taste ?? ""];

describe("a bare taste has no row: whoever asks decides", () => {
  it.each([
    "pistachio",
    "coffee",
    "vanilla",
    "rose",
    "salted caramel",
    "passion fruit",
    "orange blossom",
    "yuzu",
  ])("%s", (taste) => {
    const [found] = read(`${taste} for 230 g buttercream`).things;
    expect(found?.taste).toBe(taste);
    expect(found?.dose).toBeUndefined();
  });
});

describe("a taste that no table lists", () => {
  it.each([
    ["damson flavor", "damson: flavor"],
    ["damson flavouring", "damson: flavor"],
    ["popcorn flavor", "popcorn: flavor"],
    ["root beer flavoring", "root beer: flavor"],
    ["smoked paprika flavor", "smoked paprika: flavor"],
    ["bacon extract", "bacon: extract"],
    ["cloudberry puree", "cloudberry: purée"],
    ["sea buckthorn flavor", "sea buckthorn: flavor"],
  ])("%s", (said, expected) => {
    expect(flavors(`how much ${said} for 300 g buttercream`)).toEqual([expected]);
    expect(flavors(`i want ${said} in 300 g buttercream`)).toEqual([expected]);
  });

  it.each([
    "how much flavor",
    "how much flavoring do i need",
    "add the flavor",
    "too much flavor",
    "more flavor",
    "less flavoring please",
    "what flavor amount",
    "is that enough flavor",
    "put some flavor in",
    "which flavor",
    "the right flavor dose",
  ])('none is heard in "%s"', (said) => {
    expect(read(said).things.map((thing) => thing.taste)).not.toContainEqual(expect.anything());
  });
});

it("takes tastes apart where each has its own form, and together where one form is shared", () => {
  expect(flavors("lemon zest and vanilla extract for 200 g")).toEqual(["lemon: zest", "vanilla: extract"]);
  expect(flavors("rose flavor and lychee flavor for 200 g")).toEqual(["rose: flavor", "lychee: flavor"]);
});

it("takes an ingredient that is no flavor for none", () => {
  for (const said of ["300 g almond flour", "300 g milk chocolate", "230 g butter", "4 egg whites"])
    expect(read(said).things.map((thing) => thing.dose)).not.toContainEqual(expect.anything());
});

it("hears a taste in front of what is flavored, which stays what it is", () => {
  const things = read("24 pistachio macarons with lemon buttercream").things;
  expect(things.map((thing) => thing.count ?? thing.base ?? thing.taste)).toEqual([
    "pistachio",
    "macarons",
    "lemon",
    "buttercream",
  ]);
});
