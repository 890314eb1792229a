import { test } from "vitest";
import { baker } from "../support/ask.ts";
test("talk", async () => {
  const one = baker();
  const lines = [
    "what have you learned",
    "note: vanilla, 460 g batter, 72 shells, 34 macarons, filling 230 g, 4 % coffee, baked 16 min, rested 40 min, 9/10",
    "batter for 24 macarons",
    "note: coffee, 480 g batter, 80 shells, 36 macarons, filling 220 g, 4.2 % coffee, baked 17 min, rested 45 min, 8.5/10, 18 g batter left in the bowl",
    "what have you learned",
    "batter for 24 macarons",
    "why?",
    "how many macarons from 460 g of batter",
    "how much batter goes in one shell",
    "how much filling for 24 macarons",
    "note: mint, 470 g batter, 36 shells",
    "batter for 24 macarons",
    "how many trays for 40 macarons",
    "shell recipe for 36 macarons",
    "enough buttercream for 36 macarons",
    "dark chocolate ganache for 24 macarons",
    "I need 40 macarons by Monday 4 pm, lemon buttercream",
    "what do I need to buy for 40 macarons",
    "how much coffee flavor for 230 g buttercream",
    "my usual dose of coffee for 230 g buttercream",
    "my mat has 28 circles",
    "use the book",
    "batter for 24 macarons",
    "what have you learned",
    "use my own figures again",
    "batter for 24 macarons",
    "forget what you learned about the filling",
    "how much filling for 24 macarons",
    "undo",
    "how much filling for 24 macarons",
    "forget what you learned",
    "batter for 24 macarons",
    "undo",
    "forget everything you've learned about baking",
    "stop using my figures",
    "go back to my own numbers",
    "what did you learn from my notes",
    "what did you learn about the bake time",
    "what's my usual dose of coffee",
    "always pipe 4.5 cm shells",
    "how many shells from 460 g batter",
  ];
  for (const line of lines) {
    const got = await one.ask(line);
    console.log(`> ${line}`);
    for (const a of got) console.log(`   [${a.tool} ${a.status}] ${a.headline}\n      rule: ${a.rule?.basis}: ${a.rule?.text}\n      assumed ${JSON.stringify(a.assumed)} cautions ${JSON.stringify(a.cautions)}${a.items?.length ? ` items ${JSON.stringify(a.items).slice(0, 300)}` : ""}`);
  }
});
