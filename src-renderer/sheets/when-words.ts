/** A moment as a person says it. */

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** "12 minutes ago", "today at 9:05", "on 3 May 2027 at 16:40". A time that cannot be read is given as it came. */
export function whenWords(at: string, now: Date): string {
  const then = new Date(at);
  if (Number.isNaN(then.getTime())) return at;
  const ago = now.getTime() - then.getTime();
  if (ago >= 0 && ago < MINUTE_MS) return 'less than a minute ago';
  if (ago >= 0 && ago < HOUR_MS) {
    const minutes = Math.floor(ago / MINUTE_MS);
    return minutes === 1 ? 'a minute ago' : `${minutes} minutes ago`;
  }
  const clock = `${then.getHours()}:${String(then.getMinutes()).padStart(2, '0')}`;
  if (then.toDateString() === now.toDateString()) return `today at ${clock}`;
  const day = then.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
  return `on ${day} at ${clock}`;
}
