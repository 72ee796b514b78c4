/** Words of the trade, each in a sentence. */
import { E } from './english.js';

/** @type {[string, string][]} */
export const GLOSSARY = [
  ['Bloom', `The ${E.colour} that comes to smoked meat as it rests and chills.`],
  ['Carry-over', 'The rise in the middle after the meat has left the heat.'],
  ['Case hardening', 'A dry skin that shuts the wet in: too hot, too dry, too soon.'],
  ['Cold smoke, hot smoke', 'Cold smoke flavours and does not cook. Hot smoke cooks while it flavours.'],
  ['Come-up', 'The time from the refrigerator to the temperature that counts.'],
  ['Cover brine', 'Water with salt and cure in which the meat lies under the surface. Also called a pickle.'],
  [
    'Cure no. 1, no. 2',
    'Salt with nitrite; no. 2 holds nitrate too, for what hangs for months. The per cent is on the packet.',
  ],
  ['Equalise', 'To leave it until salt and cure are even all through.'],
  ['Green weight', 'The weight of the trimmed raw meat: the base of every per cent.'],
  ['Ingoing, residual', 'What is put in; what can be found afterwards. Limits here are mostly for what goes in.'],
  ['Nitrite, nitrate', 'What makes cure cure. Poisonous by the spoonful; weighed, never guessed.'],
  ['Overhaul', 'To turn or restack the pieces in the cure.'],
  ['Pellicle', 'The tacky skin that forms when the meat dries uncovered, and takes the smoke.'],
  ['Pick-up', 'How much brine the meat has taken up, in per cent of green weight.'],
  ['ppm', 'Parts in a million by weight: milligrams in a kilogram.'],
  ['Pump', 'To put brine into the meat by a needle, a stitch at a time or through the artery.'],
  ['Purge', 'The juice that stands in the bag.'],
  ['Salt box', 'Meat dredged in a tray of cure: what it takes up is not measured, so no verdict is given.'],
  ['Soak out', 'To draw out salt in cold water. It is no way to put a wrong dose right.'],
  ['Stall', 'The hours in which the middle hardly rises, because the meat gives off water.'],
  ['Test fry', 'A thin slice fried, to taste for salt before the fire.'],
  ['Water activity', 'How much of the water is free for what would grow in it, from 0 to 1.'],
  ['Yield', 'What is left of the green weight at the end.'],
];
