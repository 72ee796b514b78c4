/** Days that have a name of their own. */
export const TODAY = 'Today';
