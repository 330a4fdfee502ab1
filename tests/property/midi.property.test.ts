import { droneOf, quartersPerMinute, vampOf } from '@stillroot/core';
import { midiFile } from '@stillroot/notation';
import fc from 'fast-check';
import { parseMidi } from 'midi-file';
import { describe, expect, test } from 'vitest';
import { unwrap } from '../reference/in-core.ts';
import { type Played, pieces } from './any-piece.ts';
import { EXPORTS } from './export-count.ts';
import { type ReadKey, readMidi } from './read-midi.ts';

type Sounding = Pick<ReadKey, 'startTicks' | 'durationTicks' | 'midi'>;

const keysOf = (notes: readonly Sounding[]) =>
  notes.map(({ startTicks, durationTicks, midi }) => ({ startTicks, durationTicks, midi }));

function bytesOf({ piece, midiProgram }: Played): Uint8Array<ArrayBuffer> {
  const options = { title: 'Any ♯', trackName: 'neck 𝄫', midiProgram, drone: true, vamp: true };
  return unwrap(midiFile(piece, { ...options, remarks: ['one', 'two'] }));
}

describe('every MIDI file', () => {
  test('is read by another library as what core said', () => {
    fc.assert(
      fc.property(fc.noBias(pieces), (played) => {
        const { piece, midiProgram } = played;
        const { format, ticksPerQuarter, tracks } = readMidi(bytesOf(played));
        expect([format, ticksPerQuarter]).toEqual([1, 480]);
        const [conductor, melody, ...others] = tracks;
        const drone = others.at(-2);
        const vamp = others.at(-1);
        expect(conductor?.name).toBe('Any ♯');
        expect(conductor?.texts).toEqual([`Root ${piece.sections[0]?.scale.root.name}`, 'one', 'two']);
        expect(conductor?.keys).toEqual([]);
        expect(conductor?.markers).toEqual(
          piece.sections.map(({ startTicks, name }) => ({ ticks: startTicks, text: name })),
        );
        const { beats, unit } = piece.timing.meter;
        expect(conductor?.meters).toEqual([`${beats}/${unit} ${96 / unit} 8`]);
        expect(conductor?.tempi).toHaveLength(1);
        // Within half a microsecond a quarter of the tempo that was asked.
        const exact = 60e6 / quartersPerMinute(piece.timing);
        expect(Math.abs((conductor?.tempi[0] ?? Number.NaN) - exact)).toBeLessThanOrEqual(0.5);
        expect(melody?.name).toBe('neck 𝄫');
        expect([melody?.program, melody?.channels]).toEqual([midiProgram, [0]]);
        expect(keysOf(melody?.keys ?? [])).toEqual(keysOf(piece.notes));
        expect([drone?.name, drone?.channels]).toEqual(['Drone', [1]]);
        expect(keysOf(drone?.keys ?? [])).toEqual(keysOf(droneOf(piece)));
        expect([vamp?.name, vamp?.channels]).toEqual(['Vamp', [2]]);
        expect(keysOf(vamp?.keys ?? [])).toEqual(keysOf(vampOf(piece)));
        expect(others).toHaveLength(piece.countIn.length > 0 ? 3 : 2);
        if (piece.countIn.length > 0) {
          const [clicks] = others;
          expect(clicks?.channels).toEqual([9]);
          // General MIDI level 1: 76 high, 77 low wood block.
          expect(keysOf(clicks?.keys ?? [])).toEqual(
            piece.countIn.map(({ startTicks, durationTicks, isAccent }) => ({
              startTicks,
              durationTicks,
              midi: isAccent ? 76 : 77,
            })),
          );
        }
        for (const { endTicks } of tracks) expect(endTicks).toBe(piece.totalTicks);
      }),
      { numRuns: EXPORTS },
    );
  }, 600_000);

  test('is read by a second one with the same keys', () => {
    fc.assert(
      fc.property(fc.noBias(pieces), (played) => {
        const { header, tracks } = parseMidi(bytesOf(played));
        expect([header.format, header.ticksPerBeat]).toEqual([1, 480]);
        let ticks = 0;
        const pressed = (tracks[1] ?? []).flatMap((event) => {
          ticks += event.deltaTime;
          return event.type === 'noteOn' ? [[ticks, event.noteNumber]] : [];
        });
        expect(pressed).toEqual(played.piece.notes.map(({ startTicks, midi }) => [startTicks, midi]));
      }),
      { numRuns: EXPORTS / 2 },
    );
  }, 600_000);
});
