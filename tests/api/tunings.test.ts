/**
 * Tunings as players type them, and necks as they set them up, over a real socket.
 */
import type { answers } from '@stillroot/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { ask, type Served, serve } from './server.ts';

type Fretboard = z.infer<typeof answers.Fretboard>;
type Fingerings = z.infer<typeof answers.Fingerings>;
type Instruments = z.infer<typeof answers.Instruments>;

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

async function body<T>(path: string): Promise<T> {
  const answer = await ask<T>(served.origin, path);
  expect(answer.status).toBe(200);
  return answer.body;
}

const fretboard = (query: string) => body<Fretboard>(`/v1/modes/dorian/A/fretboard?${query}`);

describe('a tuning typed by hand', () => {
  // Open strings: common practice, no source.
  test.each([
    ['tuning=E2-A2-D3-G3-B3-E4', 'E2 A2 D3 G3 B3 E4', 'scientific', false],
    ["tuning=E A d g b e'", 'E2 A2 D3 G3 B3 E4', 'helmholtz', false],
    ['tuning=DADF%23AD', 'D2 A2 D3 F#3 A3 D4', 'letters', true],
    ['tuning=B E A D G B E', 'B1 E2 A2 D3 G3 B3 E4', 'letters', true],
    ['instrument=bass-4&tuning=B E A D', 'B0 E1 A1 D2', 'letters', true],
    ['instrument=bass-4&tuning=E, A, D G', 'E1 A1 D2 G2', 'helmholtz', false],
    ['instrument=ukulele-soprano&tuning=GCEA', 'G4 C4 E4 A4', 'letters', true],
  ])('%s is %s, read as %s', async (query, strings, notation, guessed) => {
    const { tuning, reading } = await fretboard(query.replaceAll(' ', '%20').replaceAll("'", '%27'));
    expect(tuning.join(' ')).toBe(strings);
    expect(reading).toMatchObject({ notation, guessed });
  });

  test('is recognised where the instrument or another has it under a name', async () => {
    const guitar = await fretboard('tuning=D2-A2-D3-G3-A3-D4');
    expect([guitar.tuningId, guitar.tuningName]).toEqual(['dadgad', expect.stringContaining('DADGAD')]);
    const four = await fretboard('instrument=guitar-tenor&tuning=D3-G3-B3-E4');
    expect(four.alsoTuned.map(({ instrument }) => instrument)).toContain('ukulele-baritone');
  });

  test('is not read where it is named by its id', async () => {
    const { reading, tuningId } = await fretboard('tuning=dadgad');
    expect([reading, tuningId]).toEqual([undefined, 'dadgad']);
  });

  test('goes down as a whole', async () => {
    const down = await fretboard('transpose=-2');
    expect(down.tuning).toEqual(['D2', 'G2', 'C3', 'F3', 'A3', 'D4']);
    const low = await fretboard('instrument=guitar-7&transpose=-1');
    expect(low.tuning).toEqual(['Bb1', 'Eb2', 'Ab2', 'Db3', 'Gb3', 'Bb3', 'Eb4']);
  });
});

describe('a neck set up by hand', () => {
  test('may have a capo over some strings only, which leaves the others as they are', async () => {
    const { places, capoStrings } = await fretboard('capo=2&capoStrings=3,4,5');
    const open = places.filter(({ fret }) => fret === 0).map(({ string, midi }) => [string, midi]);
    expect(capoStrings).toEqual([3, 4, 5]);
    // A Dorian has E, B and F sharp; strings 3, 4, 5 sound A, E and B above the capo.
    expect(open).toEqual([
      [1, 64],
      [2, 59],
      [3, 57],
      [4, 52],
      [5, 47],
      [6, 40],
    ]);
  });

  test('may have a capo at a dulcimer’s added fret', async () => {
    const { capo } = await fretboard('instrument=dulcimer-mountain&capo=6.5');
    expect(capo).toBe(6.5);
  });

  test('may have fanned frets, and is then measured on its longest string', async () => {
    const fanned = await fretboard('instrument=guitar-7&scaleLength=686-648');
    expect(fanned.scaleLengthMm).toBe(686);
    expect(fanned.scaleLengthsMm).toHaveLength(7);
    expect([fanned.scaleLengthsMm[0], fanned.scaleLengthsMm.at(-1)]).toEqual([686, 648]);
  });
});

describe('a hand', () => {
  const widest = ({ fingerings }: Fingerings) => Math.max(...fingerings.map(({ reachMm }) => reachMm));

  test('of another size opens no wider than it can, and says what it reaches', async () => {
    for (const [size, reachMm] of [
      ['small', 106],
      ['medium', 120],
      ['large', 135],
    ] as const) {
      const answer = await body<Fingerings>(
        `/v1/modes/ionian/F/fingerings?instrument=bass-4&style=two-octaves&handSize=${size}`,
      );
      expect(answer.handReachMm).toBe(reachMm);
      expect(widest(answer)).toBeLessThanOrEqual(reachMm);
    }
  });

  test('goes across the neck by shifts that lead from area to area', async () => {
    const { fingerings, shifts = [] } = await body<Fingerings>(
      '/v1/modes/ionian/G/fingerings?style=across-the-neck',
    );
    expect(fingerings.length).toBeGreaterThan(3);
    expect(shifts).toHaveLength(fingerings.length - 1);
    expect(fingerings.every(({ cost }) => cost.outOfReach === 0 && cost.travelMm === 0)).toBe(true);
  });

  test('has several answers, each with its cost, the least first', async () => {
    const { fingerings } = await body<Fingerings>('/v1/modes/ionian/G/fingerings?style=two-octaves&limit=5');
    const looks = fingerings.map(({ notes }) =>
      notes.map((n) => `${n.string}:${n.fret}/${n.finger}`).join(' '),
    );
    expect(new Set(looks).size).toBe(5);
    const travel = fingerings.map(({ cost }) => cost.travelMm);
    expect(travel).toEqual(travel.toSorted((a, b) => a - b));
  });
});

describe('an instrument', () => {
  test.each([['bass'], ['five strings'], ['low B'], ['5-string'], ['five string bass, low B'], ['BEADG']])(
    'the bass of five strings with a low B is found by typing %s',
    async (words) => {
      const { instruments } = await body<Instruments>(`/v1/instruments?q=${encodeURIComponent(words)}`);
      expect(instruments.map(({ id }) => id)).toContain('bass-5');
    },
  );

  test.each([
    ['guitar-7', 'Drop A', 'drop-a'],
    ['guitar-6', 'Drop-D', 'drop-d'],
    ['guitar-6', 'open g', 'open-g'],
    ['guitar-6', 'drop c#', 'drop-c-sharp'],
  ])('a tuning of %s is known by its name, too: %s', async (instrument, name, id) => {
    const { body } = await ask<{ tuningId: string }>(
      served.origin,
      `/v1/rounds/major/A?instrument=${instrument}&tuning=${encodeURIComponent(name)}`,
    );
    expect(body.tuningId).toBe(id);
  });

  test('those that cannot be served are listed with the reason', async () => {
    const { total, instruments, notServed } = await body<Instruments>('/v1/instruments');
    expect(total).toBeGreaterThanOrEqual(45);
    expect(instruments).toHaveLength(total);
    expect(instruments.flatMap(({ tunings }) => tunings).length).toBeGreaterThanOrEqual(130);
    expect(notServed.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['oud', 'guitarron', 'bass-fretless']),
    );
  });
});
