/** The one clock. BOWLSIDE_NOW makes it stand, for trying a plan and for tests. */

export type Clock = { ok: true; now_ms: () => number } | { ok: false; message: string };

/** @param told a local moment like 2026-03-14T09:30:00, or nothing for the real time */
export function clockFrom(told: string | undefined, real_ms: () => number): Clock {
  if (!told) return { ok: true, now_ms: real_ms };
  const stands = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/.test(told)
    ? new Date(told).getTime()
    : Number.NaN;
  // the 30th of February would quietly become the 2nd of March
  if (Number.isNaN(stands) || new Date(stands).getDate() !== Number(told.slice(8, 10)))
    return { ok: false, message: `BOWLSIDE_NOW is "${told}"; it has to look like 2026-03-14T09:30:00.` };
  return { ok: true, now_ms: () => stands };
}
