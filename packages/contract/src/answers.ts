/**
 * What is answered. Notes, degrees and names are in ASCII: `F#`, `Bbb`, `b3`, `Locrian nat6`.
 */
export { Moved } from './answer-parts.ts';
export * from './answers-playing.ts';
export * from './answers-scales.ts';
export * from './answers-service.ts';
