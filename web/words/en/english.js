/** What the two Englishes say differently. Which one it is goes by the person's own browser. */
import { REGION } from '../locale.js';

const BRITISH = {
  colour: 'colour',
  coloured: 'coloured',
  colourHead: 'Colour',
  grey: 'grey',
  mince: 'mince',
  mouldy: 'mouldy',
  labelled: 'labelled',
  litre: 'litre',
  heaped: 'heaped',
  judgement: 'judgement',
  throwAway: 'throw it away',
  cure1: 'cure no. 1',
  cure2: 'cure no. 2',
  Saltpetre: 'Saltpetre',
};

/** @type {typeof BRITISH} */
const AMERICAN = {
  colour: 'color',
  coloured: 'colored',
  colourHead: 'Color',
  grey: 'gray',
  mince: 'ground meat',
  mouldy: 'moldy',
  labelled: 'labeled',
  litre: 'liter',
  heaped: 'heaping',
  judgement: 'judgment',
  throwAway: 'throw it out',
  cure1: 'Cure #1',
  cure2: 'Cure #2',
  Saltpetre: 'Saltpeter',
};

export const E = REGION === 'US' ? AMERICAN : BRITISH;
