/**
 * Programs: the sounds of General MIDI level 1, counted from 0 as the bytes of MIDI count them.
 */
import { fail, type Result } from '@stillroot/core';

/** A refusal where there is no such program. */
export function refuseProgram(program: number, field = 'midiProgram'): Result<never> | undefined {
  if (Number.isInteger(program) && program >= 0 && program <= 127) return undefined;
  return fail(field, String(program), 'a whole number from 0 to 127: a program of General MIDI level 1');
}
