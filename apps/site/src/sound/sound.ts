/**
 * All that sounds, in one piece, fetched with the first press.
 */
export { Player, type Programme } from './player.ts';
export { renderWav } from './render.ts';
export { type Backing, soundEvents } from './sound-events.ts';
