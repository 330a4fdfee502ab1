import { fingeringsOf, type Round, roundOf, spell } from '@stillroot/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Question, questions } from './anyone.ts';
import { expectSound, midiAt } from './sound.ts';

const FINGERINGS = 3000;
const ROUNDS = 1000;

function optionsOf({ style, fret, reachMm, openStrings }: Question) {
  return { style, reachMm, openStrings, ...(fret !== undefined && { fret }) };
}

/** Whether a round begins every mode on one and the same note. */
function isFromOneNote({ sharing }: Question, { style }: Round): boolean {
  return style !== 'whole-range' && !(style === 'position' && sharing === 'own-areas');
}

function expectSoundRound(question: Question, round: Round): void {
  const { area } = round;
  expect(round.modes).toHaveLength(7);
  const played = round.modes.filter(({ fingering }) => fingering !== undefined);
  expect(played.length > 0).toBe(area !== undefined);
  if (played.length < 7) expect(round.reason).toBeTruthy();
  const firsts = new Set<number | undefined>();
  for (const { scale, fingering, reason } of round.modes) {
    expect(scale.root).toBe(question.root);
    if (fingering === undefined) {
      if (area) expect(reason).toBeTruthy();
      continue;
    }
    expectSound(question, scale, round.style, fingering);
    firsts.add(fingering.notes[0]?.midi);
    expect(fingering.area.from).toBeGreaterThanOrEqual(area?.from ?? Number.NaN);
    expect(fingering.area.to).toBeLessThanOrEqual(area?.to ?? Number.NaN);
  }
  if (area && isFromOneNote(question, round)) expect(firsts.size).toBe(1);
  if (round.alternative) expect(area).toBeUndefined();
}

describe('whatever is asked of whatever neck', () => {
  test(`the neck sounds as its tuning, short strings and capo say`, () => {
    fc.assert(
      fc.property(fc.noBias(questions), (question) => {
        for (const string of question.neck.strings) {
          expect(string.openMidi).toBe(midiAt(question, string.number, 0));
          for (const [slot, midi] of string.midiBySlot.entries()) {
            const fret = question.neck.slots[slot]?.fret ?? Number.NaN;
            if (slot > string.startSlot) expect(midi).toBe(midiAt(question, string.number, fret));
            if (slot < string.startSlot) expect(midi).toBe(-1);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('every fingering is sound, or a reason is given and the alternative is sound', () => {
    const seen = { playable: 0, refused: 0, alternatives: 0 };
    fc.assert(
      fc.property(fc.noBias(questions), (question) => {
        const scale = spell(question.mode, question.root);
        const { style, limit } = question;
        const answer = fingeringsOf(question.neck, scale, { ...optionsOf(question), limit });
        if (style !== 'across-the-neck') expect(answer.fingerings.length).toBeLessThanOrEqual(limit);
        expect(answer.fingerings.length > 0).toBe(answer.reason === undefined);
        for (const fingering of answer.fingerings) {
          expectSound(question, scale, style, fingering);
          const stopped = fingering.notes.map(({ fret }) => fret).filter((fret) => fret > 0);
          const begins = style === 'three-per-string' ? stopped.slice(0, 1) : stopped;
          if (fingering.notes[0]?.fret !== 0 && style !== 'across-the-neck')
            expect(Math.min(...begins)).toBeGreaterThanOrEqual(question.fret ?? 0);
        }
        if (answer.alternative) {
          const { style: otherStyle, fingering } = answer.alternative;
          expect(answer.fingerings).toEqual([]);
          expectSound(question, scale, otherStyle, fingering);
        }
        seen.playable += Number(answer.fingerings.length > 0);
        seen.refused += Number(answer.reason !== undefined);
        seen.alternatives += Number(answer.alternative !== undefined);
      }),
      { numRuns: FINGERINGS },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(FINGERINGS / 50);
  }, 30_000);

  test('every round is sound in all its modes, or a reason is given and the alternative can be played', () => {
    const seen = { played: 0, refused: 0, alternatives: 0 };
    fc.assert(
      fc.property(fc.noBias(questions), (question) => {
        const { neck, mode, root, order, sharing } = question;
        const options = { ...optionsOf(question), order, sharing };
        const round = roundOf(neck, mode, root, options);
        expectSoundRound(question, round);
        if (round.alternative) {
          const { style, fret } = round.alternative;
          const other = roundOf(neck, mode, root, { ...options, style, fret });
          expect(other.area).toBeDefined();
          expectSoundRound(question, other);
        }
        seen.played += Number(round.area !== undefined);
        seen.refused += Number(round.area === undefined);
        seen.alternatives += Number(round.alternative !== undefined);
      }),
      { numRuns: ROUNDS },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(ROUNDS / 50);
  }, 30_000);
});
