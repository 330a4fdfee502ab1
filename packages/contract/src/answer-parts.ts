/**
 * What several kinds of answers are made of.
 */
import * as z from 'zod';

export const Note = z.string().describe('a note, or a note with its octave, in ASCII');
export const Name = z.string().describe('its name, with ASCII accidentals');
export const Aliases = z.array(z.string()).describe('what else it is called');
export const Sources = z.array(z.string()).describe('where that is published: author, title, year');
export const Degree = z.int().min(1).max(7).describe('1 to 7, counted from the root');
export const Steps = z.array(z.int()).length(7).describe('semitones from each degree to the next');
export const Semitones = z.array(z.int()).length(7).describe('semitones of each degree above the root');
export const Formula = z.array(z.string()).length(7).describe('degrees against the major scale: b3, #4, bb7');
export const Notes = z.array(Note).length(7).describe('by degree, each of the seven letters once');
export const Common = z.int().describe('pitch classes in common');

export const Moved = z
  .object({ degree: Degree, by: z.int().describe('semitones, down below zero') })
  .meta({ id: 'Moved', description: 'A degree that lies elsewhere in another mode on the same root.' });

/** Where a part of a long list lies in it. */
export const page = {
  offset: z.int().describe('how many came before the first of these'),
  next: z.string().nullable().describe('the address of what comes after these'),
  previous: z.string().nullable().describe('the address of what comes before these'),
};
