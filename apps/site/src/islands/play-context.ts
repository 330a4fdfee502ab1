/**
 * The context of the sound: one for the page.
 */

let context: AudioContext | undefined;

/** The context of the sound; undefined in a browser without one. To be asked for in a press. */
export function soundContext(): AudioContext | undefined {
  if (typeof AudioContext !== 'undefined') context ??= new AudioContext({ latencyHint: 'interactive' });
  return context;
}
