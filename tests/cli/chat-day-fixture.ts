/** The chat over a real session and a real record, with a clock that runs faster than the wall's. For tests. */
import { openChat } from "../../src/cli/chat/main.tsx";
import { openIn } from "../../src/cli/open-chat.ts";
import { startSession } from "../../src/cli/session.ts";
import { understanding } from "../../src/intents/understanding.ts";
import { openStore } from "../../src/store/open.ts";
import { tools } from "../../src/tools/registry.ts";

const speed = Number(process.env.FIXTURE_SPEED ?? 1);
const from_ms = Number(process.env.FIXTURE_NOW);
const began_ms = Date.now();
const now_ms = () => from_ms + (Date.now() - began_ms) * speed;
const real = globalThis.setTimeout;
// what waits for a timer waits less by as much; what ink needs to draw stays as it is
globalThis.setTimeout = ((run: () => void, ms = 0) =>
  real(run, ms >= 200 ? Math.max(20, ms / speed) : ms)) as typeof setTimeout;

const store = openStore(process.env.FIXTURE_HOME ?? "", { now_ms });
const session = startSession({ store, understanding: understanding(tools), now_ms });
const { stdin, stdout, env } = process;
await openIn({ session, store, now_ms, env, stdin, stdout, demo: false, speak: false }, async () => ({
  openChat,
}));
