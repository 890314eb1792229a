/** The hours in which a baker is awake, as a span in a sentence. */

/** "in the kitchen from 9 am till midnight". */
function untilMidnight(text: string): { wake_min?: number; sleep_min?: number } {
  const said =
    /(?:^| )(?:awake|up|work|bake|kitchen|here|around|free) (?:from |between )(\d{1,2})(?::(\d\d))? ?(am|pm)? ?(?:to|-|until|till|til|and) ?(midnight|noon)\b/.exec(
      text,
    );
  if (!said) return {};
  const [, hour, min, half, end] = said;
  const from = ((Number(hour) % 12) + (half === "pm" ? 12 : 0)) * 60 + Number(min ?? 0);
  return { wake_min: from, sleep_min: end === "noon" ? 720 : 1440 };
}

/** "i sleep 10 to 6", "i'm up from 6 till 11", "bed at 9 pm": minutes of the day; nothing where no hours are said. */
export function hoursSaid(text: string): { wake_min?: number; sleep_min?: number } {
  const span =
    /(?:^| )(sleep|asleep|in bed|awake|up|work|bake) (?:from |between )?(\d{1,2})(?::(\d\d))? ?(am|pm)? ?(?:to|-|until|till|and) ?(\d{1,2})(?::(\d\d))? ?(am|pm)?(?![\d:%])/.exec(
      text,
    );
  if (!span) return untilMidnight(text);
  const [, verb = "", hour, min, half, hour2, min2, half2] = span;
  const at = (
    said: string | undefined,
    minutes: string | undefined,
    of: string | undefined,
    late: boolean,
  ) => {
    const h = Number(said);
    const isLate = of ? of === "pm" : late && h < 12 && h >= 5;
    return ((h % (of || isLate ? 12 : 24)) + (isLate ? 12 : 0)) * 60 + Number(minutes ?? 0);
  };
  const sleeps = /sleep|bed/.test(verb);
  const [first, second] = [at(hour, min, half, sleeps), at(hour2, min2, half2, !sleeps)];
  return sleeps ? { sleep_min: first, wake_min: second } : { wake_min: first, sleep_min: second };
}
