/** Which language this is: what the root element says of the page, and how days and months are written. */

/** As browsers name it. */
export const LANGUAGE = 'en';
/** @type {'ltr' | 'rtl'} */
export const DIRECTION = 'ltr';

/** Which English, where the browser does not say so itself. @param {string} region the country */
export const locale = (region) => (region === 'US' ? 'en-US' : 'en-GB');
