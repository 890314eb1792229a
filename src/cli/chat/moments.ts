/** Times and lengths of time for the eye. */

const days = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** "Sat 14 Mar" of a local ISO time; nothing is converted, so no time zone can shift it. */
export function dayOf(iso: string): string {
  const [year = 0, month = 1, day = 1] = iso.slice(0, 10).split("-").map(Number);
  return `${days[new Date(Date.UTC(year, month - 1, day)).getUTCDay()]} ${day} ${months[month - 1]}`;
}

/** "14 Mar" of a local ISO day. */
export function shortDay(iso: string): string {
  return dayOf(iso).replace(/^\S+ /, "");
}

/** "09:30" of a local ISO time. */
export function timeOf(iso: string): string {
  return iso.slice(11, 16);
}

/** "09:30" on the clock at the wall, of a moment in ms. */
export function clockOf(ms: number): string {
  const date = new Date(ms);
  return `${String(date.getHours()).padStart(2, "0")}:${String(date.getMinutes()).padStart(2, "0")}`;
}

/** "40 s", "12 min", "2 h 5 min", "3 days": rounded down, at most two parts. */
export function minutes(count: number): string {
  const seconds = Math.max(0, Math.floor(count * 60 + 1e-6));
  if (seconds < 60) return `${seconds} s`;
  const whole = Math.floor(seconds / 60);
  if (whole < 60) return `${whole} min`;
  const hours = Math.floor(whole / 60);
  if (hours >= 48) return `${Math.floor(hours / 24)} days`;
  return whole % 60 === 0 ? `${hours} h` : `${hours} h ${whole % 60} min`;
}

/** Time left as it counts down: "4:05", "1:04:05". Rounded up, so that 0:00 means due. */
export function countdown(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  const two = (value: number) => String(value).padStart(2, "0");
  const [hours, rest] = [
    Math.floor(seconds / 3600),
    `${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`,
  ];
  return hours > 0 ? `${hours}:${rest}` : rest.replace(/^0/, "");
}
