/** Days, months and the words for moments, with the misspellings that hands full of batter make. */
export const weekdays: Readonly<Record<string, number>> = {
  sunday: 0, monday: 1, tuesday: 2, wednesday: 3, thursday: 4, friday: 5, saturday: 6, wensday: 3, wednsday: 3,
  thurday: 4, saterday: 6, saturdy: 6, tuseday: 2, firday: 5, satuday: 6, sundays: 0, wedensday: 3, thrusday: 4,
};

/** Short forms are common words too: they count only behind "on", "next", "last", "by" and their like. */
export const shortWeekdays: Readonly<Record<string, number>> = {
  sun: 0, mon: 1, tue: 2, tues: 2, wed: 3, weds: 3, thu: 4, thur: 4, thurs: 4, fri: 5, sat: 6,
};

export const months: Readonly<Record<string, number>> = {
  january: 1, february: 2, march: 3, april: 4, may: 5, june: 6, july: 7, august: 8, september: 9, october: 10,
  november: 11, december: 12, jan: 1, feb: 2, mar: 3, apr: 4, jun: 6, jul: 7, aug: 8, sep: 9, sept: 9, oct: 10,
  nov: 11, dec: 12, febuary: 2,
};

export const dayWords: Readonly<Record<string, number>> = {
  today: 0, tonight: 0, tomorrow: 1, tomorow: 1, tommorow: 1, tommorrow: 1, tmrw: 1, tmr: 1, tomoro: 1, tmrrw: 1,
  tomorrows: 1, todays: 0, tomarrow: 1, tomorro: 1, tomrrow: 1, yesterday: -1, yestrday: -1, yesterdays: -1, yestrdays: -1, yeserday: -1,
  yesturday: -1, yesterdy: -1,
};

export const dayParts: Readonly<Record<string, "morning" | "afternoon" | "evening" | "night">> = {
  morning: "morning", mornin: "morning", afternoon: "afternoon", arvo: "afternoon", evening: "evening", eve: "evening",
  night: "night", tonight: "night", lunchtime: "afternoon", teatime: "afternoon", afternon: "afternoon",
};

/** Moments with a time of their own, in minutes after midnight. */
export const namedTimes: Readonly<Record<string, number>> = { noon: 720, midday: 720, midnight: 1440, lunchtime: 720 };
