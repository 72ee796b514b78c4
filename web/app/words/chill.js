/** What follows where the chill was too slow, or nobody read it. The rule is that of the published options. */
export const LOST = 'Throw it out. Heating it again does not take away what grew.';
export const UNSEEN =
  'If a reading was taken in time, log it at its hour. Else throw it out: heating it again mends nothing.';
/** How it is in time. */
export const IN_TIME =
  'Missed: throw it out. Heating it again does not take away what grew. One layer, no stacking, a fan or an ice bath.';
