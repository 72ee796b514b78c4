/** What stands in the page before any script has run, and in its manifest: the build puts it there. */

export const DESCRIPTION =
  'Weighs cure for exactly this weight of wild game, judges the dose and says what to do next. Works offline.';
export const NO_SCRIPTS = 'Cure Reckoner needs JavaScript. Allow it for this page. Nothing leaves the device.';
