// All tours: the screens one after the other, and what each of them can say besides.
import { throughCards } from './tour-cards.mjs';
import { throughDoses } from './tour-doses.mjs';
import { throughFaults } from './tour-faults.mjs';
import { throughHouse } from './tour-house.mjs';
import { throughStates } from './tour-states.mjs';
import { tour } from './tour.mjs';

/** Each begins in a browser that has nothing stored. */
export const TOURS = {
  screens: tour,
  states: throughStates,
  cards: throughCards,
  house: throughHouse,
  doses: throughDoses,
  faults: throughFaults,
};
