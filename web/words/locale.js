/** What the browser says of the place: words for times, and the units and the rule of a page that has none yet. */
import { LANGUAGE, locale } from './en/language.js';

/** @typedef {import('../app/types').Settings} Settings */

/** Countries under the rules of the Union, and those that have taken them over. */
const UNION = 'AT BE BG HR CY CZ DK EE FI FR DE GR HU IE IT LV LT LU MT NL PL PT RO SK SI ES SE IS LI NO'.split(' ');
/** @type {Record<string, string>} */
const RULES = { US: 'us-home', CA: 'ca', GB: 'uk', EU: 'eu', AU: 'anz', NZ: 'anz' };

// Words are asked without a browser too, in tests.
const language = globalThis.navigator?.language || 'en-GB';
const own = known();
/** The country, where the browser names it or its language is mostly of one. */
export const REGION = own?.maximize().region ?? '';
/**
 * Where the device is, as far as its clock and its language tell: whom to call and whose rule holds go by it. Many a
 * browser in London speaks the English of the States.
 */
export const PLACE = place();
/** Days and months are in the language of the page; which kind of it is the person's own, where the browser says so. */
export const LOCALE = own?.language === LANGUAGE && own.region ? language : locale(REGION);
/** Twelve hours or twenty-four, by the person's own language. */
export const HOUR12 = new Intl.DateTimeFormat(own ?? LOCALE, { hour: 'numeric' }).resolvedOptions().hour12 ?? false;

/**
 * Settings of a new page in this place.
 * @param {Settings} settings the core's own
 * @param {{ key: string }[]} profiles rules that there are
 * @returns {Settings}
 */
export function localSettings(settings, profiles) {
  const wanted = RULES[PLACE] ?? settings.profile;
  const profile = profiles.some(({ key }) => key === wanted) ? wanted : settings.profile;
  return { ...settings, profile, units: REGION === 'US' ? 'us' : 'metric' };
}

/** What browsers call a language is no rule of theirs: some say `C`, where the machine speaks none. */
function known() {
  try {
    return new Intl.Locale(language);
  } catch {
    return null;
  }
}

function place() {
  const { timeZone = '' } = Intl.DateTimeFormat().resolvedOptions();
  /** @type {[string, string][]} */
  const zones = [
    ['Europe/London', 'GB'],
    ['Europe/Belfast', 'GB'],
    ['Europe/Jersey', 'GB'],
    ['Europe/Guernsey', 'GB'],
    ['Europe/Isle_of_Man', 'GB'],
    ['Europe/', [...UNION, 'US', 'GB'].includes(REGION) ? 'EU' : REGION],
    ['Australia/', 'AU'],
    ['Pacific/Auckland', 'NZ'],
  ];
  const here = zones.find(([zone]) => timeZone.startsWith(zone))?.[1];
  return here ?? (UNION.includes(REGION) ? 'EU' : REGION);
}
