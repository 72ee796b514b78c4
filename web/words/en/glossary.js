/** Words of the trade, each in a sentence. */
import { degrees } from '../degrees.js';
import { E } from './english.js';

/** Heads that the page does not use itself say which word it has for them. @type {() => [string, string][]} */
export const glossary = () => [
  ['Bloom', `The ${E.colour} that comes to smoked meat as it rests and chills.`],
  ['Carry-over', 'Here “rise after it is out”: the middle still warms once the meat has left the heat.'],
  ['Case hardening', 'A dry skin that shuts the wet in: too hot, too dry, too soon.'],
  ['Cold smoke, hot smoke', `Cold smoke ${E.flavours} and does not cook. Hot smoke cooks as it ${E.flavours}.`],
  ['Come-up', `Here “warm-up”: the time the middle takes from ${degrees('4 to 60', '40 to 140')}.`],
  ['Cover brine', 'Water with salt and cure in which the meat lies under the surface. Also called a pickle.'],
  [E.cures, `Salt with nitrite. ${E.second} has nitrate too, for meat hung for months. The % is on the bag.`],
  [E.equalise, 'Here “even out”: to leave it until salt and cure are even all through.'],
  ['Green weight', 'Here “trimmed weight”: the base of every %.'],
  ['Ingoing, residual', 'What is put in; what can be found afterwards. Limits here are mostly for what goes in.'],
  ['Nitrite, nitrate', 'What makes cure cure. Poisonous by the spoonful; weighed, never guessed.'],
  ['Overhaul', 'Here “turn”: to turn or restack the pieces in the cure.'],
  ['Pellicle', 'Here “dry and tacky”: the skin that forms when the meat dries uncovered, and takes the smoke.'],
  ['Pick-up', 'Here “brine it takes up”: in % of trimmed weight.'],
  ['ppm', 'Parts in a million by weight: milligrams in a kilogram.'],
  ['Pump', 'Here “inject”: to put brine into the meat with a needle.'],
  ['Purge', 'The juice that stands in the bag.'],
  ['Salt box', 'Meat dredged in a tray of cure: what it takes up is not measured, so no verdict is given.'],
  ['Soak out', 'Here “soak”: to draw out salt in cold water. It is no way to put a wrong dose right.'],
  ['Stall', 'The hours in which the middle hardly rises, because the meat gives off water.'],
  ['Test fry', 'A thin slice fried, to taste for salt before the fire.'],
  ['Water activity', 'How much of the water is free for what would grow in it, from 0 to 1.'],
  ['Yield', 'What is left of the trimmed weight at the end.'],
];
