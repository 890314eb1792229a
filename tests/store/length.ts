/** How long the tests with random and real processes run: short in the suite, long in `npm run check:endurance`. */
const long = process.env.ENDURANCE === "1";

const own = (name: string, short: number, whole: number) =>
  Number(process.env[name] ?? (long ? whole : short));

/** Processes killed at random instants. */
export const kills = own("STORE_KILLS", 30, 1200);
/** Processes that write at once, and how often each does. */
export const writers = own("STORE_WRITERS", 4, 12);
export const writes = own("STORE_WRITES", 50, 200);
/** Random sequences of commands against the model. */
export const sequences = own("STORE_SEQUENCES", 25, 600);
export const minutes = 60_000 * own("STORE_MINUTES", 1, 30);
/** Notes that the growth is measured with. */
export const manyNotes = own("STORE_NOTES", 4000, 20_000);
export const isLong = long;
