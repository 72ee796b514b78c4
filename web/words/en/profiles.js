/** Whose rule holds. @type {Record<import('../../app/types').ProfileKey, string>} */
export const PROFILES = {
  'us-home': 'US, home curing',
  'us-plant': 'US, inspected plants (reference)',
  ca: 'Canada',
  uk: 'United Kingdom (and EU before October 2025)',
  eu: 'EU from October 2025',
  codex: 'Codex Alimentarius',
  anz: 'Australia and New Zealand',
};
