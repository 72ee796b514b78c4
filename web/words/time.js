/** Clock times and days as the person's own country writes them, always with a day. */
import { TODAY } from './en/days.js';
import { HOUR12, LOCALE } from './locale.js';

const DAY_MS = 86_400_000;
/** @param {Intl.DateTimeFormatOptions} options */
const format = (options) => new Intl.DateTimeFormat(LOCALE, options);
const CLOCK = format(
  HOUR12
    ? { hour: 'numeric', minute: '2-digit', hour12: true }
    : { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
);
const WEEKDAY = format({ weekday: 'short' });
const LONG_DAY = format({ weekday: 'long', day: 'numeric', month: 'short' });
const SHORT_DAY = format({ weekday: 'short', day: 'numeric', month: 'short' });
const DAY = format({ day: 'numeric', month: 'short' });
const FAR_DAY = format({ weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' });
const WITH_YEAR = format({ day: 'numeric', month: 'short', year: 'numeric' });

/** @param {number} ms */
export function clock(ms) {
  // Between hour and half of the day some browsers put a narrow space that no keyboard has.
  return CLOCK.format(ms).replace(/\s/g, '\u00a0');
}

/** @param {number} ms @returns {string} `Wednesday 18 Nov`, `Wednesday Nov 18` */
export function longDay(ms) {
  return plain(LONG_DAY.format(ms));
}

/** @param {number} ms @returns {string} `Wed 18 Nov`, `Wed Nov 18` */
export function shortDay(ms) {
  return plain(SHORT_DAY.format(ms));
}

/** @param {number} ms @returns {string} `Wed` */
export function dayName(ms) {
  return WEEKDAY.format(ms);
}

/** @param {number} ms @returns {string} `Wed 18`, for the head of a narrow column */
export function weekDay(ms) {
  return `${WEEKDAY.format(ms)} ${new Date(ms).getDate()}`;
}

/** @param {number} ms @returns {string} `18 Nov`, `Nov 18` */
export function dayOf(ms) {
  return plain(DAY.format(ms));
}

/** @param {number} ms @returns {string} `18 Nov 2026`, `Nov 18, 2026` */
export function fullDate(ms) {
  return WITH_YEAR.format(ms).replace('Sept', 'Sep');
}

/**
 * The day as it stands over a clock time: `Today`, `Fri` within a week, `Fri 27 Nov` beyond it and in the past,
 * `Fri 4 Jun 2027` where the year might be another.
 * @param {number} ms
 * @param {number} now
 */
export function dayWord(ms, now) {
  const days = daysTo(ms, now);
  if (days === 0) return TODAY;
  return days > 0 && days < 7 ? WEEKDAY.format(ms) : dated(ms, now);
}

/** Whether the day of a time is written with its date. @param {number} ms @param {number} now */
export const isDated = (ms, now) => Math.abs(daysTo(ms, now)) >= 7;

/** @param {number} ms @param {number} now */
const daysTo = (ms, now) => Math.round((midnight(ms) - midnight(now)) / DAY_MS);

/** Beyond half a year a day and a month might be those of another year. @param {number} ms @param {number} now */
function dated(ms, now) {
  return Math.abs(daysTo(ms, now)) < 183 ? shortDay(ms) : plain(FAR_DAY.format(ms));
}

/**
 * Day and time in one: `Fri 07:00`, `Fri 27 Nov 07:00`.
 * @param {number} ms
 * @param {number} now
 */
export function dayTime(ms, now) {
  return `${isDated(ms, now) ? dated(ms, now) : WEEKDAY.format(ms)} ${clock(ms)}`;
}

/**
 * The time alone where the day is that of now, with its day where it is another.
 * @param {number} ms
 * @param {number} now
 */
export function nearTime(ms, now) {
  return midnight(ms) === midnight(now) ? clock(ms) : dayTime(ms, now);
}

/**
 * A forecast, up to the hour, as the crate takes it where meat comes out: a minute would say more than is known.
 * @param {number} ms
 * @param {number} now
 */
export function about(ms, now) {
  return dayTime(Math.ceil(ms / 3_600_000) * 3_600_000, now);
}

/** @param {number} ms @returns {number} the midnight before it */
export function midnight(ms) {
  return new Date(ms).setHours(0, 0, 0, 0);
}

/**
 * As a field for a day and a time takes it: `2026-11-27T07:00`.
 * @param {number} ms
 */
export function localTime(ms) {
  return new Date(ms - new Date(ms).getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
}

/** @param {number} ms @returns {string} `2026-11-14`, as a field for a day has it */
export function isoDay(ms) {
  const day = new Date(ms);
  const two = (/** @type {number} */ n) => String(n).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}

/**
 * @param {string} date `2026-11-14`
 * @returns {string} `Sat 14 Nov`, or what came in when it is no date
 */
export function dayOfDate(date) {
  const ms = new Date(`${date}T12:00`).getTime();
  return Number.isNaN(ms) ? date : shortDay(ms);
}

// Some browsers put a comma after the weekday, and "Sept" for September.
/** @param {string} text */
function plain(text) {
  return text.replace(',', '').replace('Sept', 'Sep');
}
