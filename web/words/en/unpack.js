/** Where the one file is opened so that it cannot be unpacked. */

export const SAVE_FIRST = 'Save this file on the device and open it from there. Opened like this, it comes in changed.';
