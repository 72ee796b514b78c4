/** Words on labels and tags for keys of the core. */

/** How a pack is kept, before its date; `date` is true where there is one. @type {Record<import('../types').KeepWord, (date: boolean) => string>} */
export const KEEP = {
  in_cure: (date) => `Keep at 2 to 4 °C (36 to 40 °F).${date ? ' In the cure until' : ' In the cure.'}`,
  cold: (date) => `Keep cold, 4 °C (40 °F) or colder.${date ? ' Use by' : ''}`,
  cold_vacuum: (date) => `Vacuum pack: keep at 3 °C (38 °F) or colder.${date ? ' Use by' : ''}`,
  frozen: (date) => `Keep frozen, −18 °C (0 °F).${date ? ' Best by' : ''}`,
  not_yet: () => 'Do not eat it yet.',
  do_not_eat: () => 'DO NOT EAT.',
};
