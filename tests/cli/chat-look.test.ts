import { it } from "vitest";
import { bundleChat, openScreen } from "./chat-pty.ts";
const sleep = (ms: number) => new Promise((r) => setTimeout(r, ms));
it("look", async () => {
  const b = await bundleChat();
  const show = (t: string, s: any) => console.log(t + "\n" + s.lines().map((l: string) => "|" + l).join("\n"), s.cursor());
  {
    const s = openScreen(b.file, 120, 30);
    await s.sees("help");
    s.type("I have 230 g buttercream, how much flavor?\rtimer shells 3\rtimer ganache_in_the_fridge_tray_2 4000\r");
    await s.sees("tray_2: 4000");
    s.type("some draft text that is quite a bit longer than one row of forty");
    await s.sees("forty");
    show("120", s);
    s.resize(40, 30);
    await s.sees("onger than");
    await sleep(300);
    show("40", s);
    s.resize(60, 30);
    await sleep(300);
    show("60", s);
    await s.sees("Ring");
    await sleep(300);
    show("ring", s);
    s.resize(120, 8);
    await sleep(300);
    s.resize(40, 8);
    await sleep(1300);
    show("8 high", s);
    s.resize(40, 4);
    await sleep(1300);
    show("4 high", s);
    s.type("\x01\x15\x0bbye\r");
    console.log(await s.ended(), s.cursor(), await s.log());
    show("end", s);
  }
  for (const sig of ["SIGTERM", "SIGHUP", "SIGINT"]) {
    const s = openScreen(b.file, 60, 10, { CI: "1", NO_COLOR: "1" });
    await s.sees("help");
    s.type("I have 230 g buttercream, how much flavor?\r");
    await s.sees("limit");
    s.type("draft");
    await s.sees("draft");
    console.log(JSON.stringify(s.raw()));
    s.pty.kill(sig);
    console.log(sig, await s.ended(), JSON.stringify(s.raw().slice(-150)), s.cursor());
    show("end", s);
  }
  await b.remove();
});
