/**
 * Every endpoint, over a real socket, answers what the contract says it answers.
 */
import { type answers, ENDPOINTS, type EndpointName } from '@stillroot/contract';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { ask, type Served, serve } from './server.ts';

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

/** Addresses of each endpoint, ordinary and odd. */
const ADDRESSES: Readonly<Record<EndpointName, readonly string[]>> = {
  families: ['/v1/families'],
  family: ['/v1/families/harmonic-minor', '/v1/families/2212221', '/v1/families/Neapolitan%20minor'],
  modes: [
    '/v1/modes',
    '/v1/modes?name=dominant',
    '/v1/modes?contains=b2,%234&limit=5',
    '/v1/modes?name=zzzz',
  ],
  mode: [
    '/v1/modes/2131212',
    '/v1/modes/dorian-sharp4',
    '/v1/modes/Dorian%20%E2%99%AF4',
    '/v1/modes/6111111',
  ],
  scale: [
    '/v1/modes/phrygian-dominant/A',
    '/v1/modes/6111111/Cb',
    '/v1/modes/altered/F%23',
    '/v1/modes/altered/Fs',
  ],
  related: ['/v1/modes/dorian/A/related', '/v1/modes/6111111/E%23/related?shared=5&limit=500'],
  fretboard: [
    '/v1/modes/dorian/A/fretboard',
    '/v1/modes/dorian/D/fretboard?instrument=dulcimer-mountain',
    '/v1/modes/dorian/A/fretboard?instrument=banjo-5&capo=2',
    '/v1/modes/dorian/A/fretboard?tuning=B1-E2-A2-D3-G3-B3-E4&frets=24',
    '/v1/modes/dorian/A/fretboard?tuning=BEADGBE&transpose=-2&scaleLength=686-648',
    '/v1/modes/dorian/D/fretboard?instrument=dulcimer-mountain&capo=6.5',
    '/v1/modes/dorian/A/fretboard?capo=2&capoStrings=1,2,3,4,5',
  ],
  fingerings: [
    '/v1/modes/dorian/A/fingerings',
    '/v1/modes/ionian/F/fingerings?instrument=bass-4&style=three-per-string&fret=1',
    '/v1/modes/dorian/A/fingerings?instrument=ukulele-soprano&style=three-per-string',
    '/v1/modes/dorian/A/fingerings?style=one-string&limit=2&reach=90',
    '/v1/modes/dorian/A/fingerings?style=across-the-neck&handSize=small',
    '/v1/modes/dorian/A/fingerings?style=two-octaves&open=never&fret=5',
    '/v1/modes/dorian/A/fingerings?style=whole-range&instrument=pipa&open=anywhere',
  ],
  round: [
    '/v1/rounds/harmonic-minor/A',
    '/v1/rounds/harmonic-minor/A?instrument=bass-4&order=brightness&tempo=96&pattern=up-and-down',
    '/v1/rounds/major/D?instrument=dulcimer-mountain',
    '/v1/rounds/major/Eb?instrument=dulcimer-mountain',
    '/v1/rounds/major/Eb?instrument=charango&sharing=own-areas&handSize=large',
    '/v1/rounds/major/Eb?style=across-the-neck',
    '/v1/rounds/melodic-minor/Fs?tuning=B1-E2-A2-D3-G3-B3-E4&order=fewest-moves&style=three-per-string',
  ],
  compare: ['/v1/compare?a=dorian&b=phrygian&root=A', '/v1/compare?a=dorian&b=dorian'],
  route: ['/v1/routes?from=dorian&to=phrygian-dominant&root=D', '/v1/routes?from=6111111&to=1111116'],
  search: [
    '/v1/search?notes=A,B,C,D,E,F,G%23',
    '/v1/search?notes=C,Db,D,Eb,E&limit=5',
    '/v1/search?notes=A&root=A',
    '/v1/search?chords=Am,E7',
    '/v1/search?chords=Dm7%20G7(b9,b13)&notes=F%23&limit=3',
  ],
  instruments: ['/v1/instruments', '/v1/instruments?q=five%20string%20bass,%20low%20B&limit=3'],
  instrument: ['/v1/instruments/bass-4', '/v1/instruments/dulcimer-mountain', '/v1/instruments/tres-cubano'],
  health: ['/health'],
  ready: ['/ready'],
};

describe('answers fit the contract', () => {
  const rows = (Object.keys(ENDPOINTS) as EndpointName[]).flatMap((name) =>
    ADDRESSES[name].map((address) => [name, address] as const),
  );

  test.each(rows)('%s at %s', async (name, address) => {
    const { status, type, body } = await ask(served.origin, address);
    expect(status).toBe(200);
    expect(type).toBe('application/json; charset=utf-8');
    const checked = ENDPOINTS[name].answer.safeParse(body);
    expect(checked.error?.issues ?? []).toEqual([]);
  });
});

describe('the fields that others rely on', () => {
  test('all 66 families and 462 different modes are listed', async () => {
    const { body } = await ask<z.infer<typeof answers.Families>>(served.origin, '/v1/families');
    expect(body.total).toBe(66);
    expect(body.families).toHaveLength(66);
    expect(new Set(body.families.flatMap(({ modes }) => modes.map(({ id }) => id))).size).toBe(462);
    for (const slug of ['major', 'harmonic-minor', 'melodic-minor', 'harmonic-major', 'double-harmonic']) {
      expect(body.families.map((family) => family.slug)).toContain(slug);
    }
  });

  test('A Phrygian dominant is spelled, named and placed', async () => {
    const { body } = await ask<z.infer<typeof answers.Scale>>(served.origin, '/v1/modes/phrygian-dominant/A');
    expect(body).toMatchObject({
      id: '1312122',
      slug: 'phrygian-dominant',
      name: 'A Phrygian dominant',
      systematicName: 'Phrygian nat3',
      steps: [1, 3, 1, 2, 1, 2, 2],
      semitones: [0, 1, 4, 5, 7, 8, 10],
      formula: ['1', 'b2', '3', '4', '5', 'b6', 'b7'],
      notes: ['A', 'Bb', 'C#', 'D', 'E', 'F', 'G'],
      readable: ['A', 'Bb', 'C#', 'D', 'E', 'F', 'G'],
      family: { slug: 'harmonic-minor', name: 'harmonic minor', degree: 5 },
      base: { name: 'Phrygian', moved: [{ degree: 3, by: 1 }] },
      parent: { name: 'D harmonic minor', root: 'D', mode: 'harmonic-minor' },
      kindest: 'A',
    });
  });

  test('the names of the harmonic minor family follow from the rule and are the trade’s own', async () => {
    const { body } = await ask<z.infer<typeof answers.Family>>(served.origin, '/v1/families/harmonic-minor');
    expect(body.modes.map(({ name }) => name)).toEqual([
      'harmonic minor',
      'Locrian nat6',
      'Ionian #5',
      'Dorian #4',
      'Phrygian dominant',
      'Lydian #2',
      'Locrian b4 bb7',
    ]);
    const systematic = await Promise.all(
      body.modes.map(
        async ({ id }) => (await ask<z.infer<typeof answers.Mode>>(served.origin, `/v1/modes/${id}`)).body,
      ),
    );
    expect(systematic.map((mode) => mode.systematicName)).toEqual([
      'Aeolian nat7',
      'Locrian nat6',
      'Ionian #5',
      'Dorian #4',
      'Phrygian nat3',
      'Lydian #2',
      'Locrian b4 bb7',
    ]);
  });

  test('instruments carry their tunings low to high', async () => {
    const { body } = await ask<z.infer<typeof answers.Instruments>>(served.origin, '/v1/instruments');
    const guitar = body.instruments.find(({ id }) => id === 'guitar-6');
    expect(guitar?.tunings[0]?.strings).toEqual(['E2', 'A2', 'D3', 'G3', 'B3', 'E4']);
    const ids =
      'guitar-6 guitar-7 guitar-8 guitar-baritone bass-4 bass-5 bass-6 ukulele-soprano mandolin banjo-5 banjo-tenor dulcimer-mountain';
    expect(body.instruments.map(({ id }) => id)).toEqual(expect.arrayContaining(ids.split(' ')));
  });

  test('seven notes find the seven modes that hold them, the first note’s own first', async () => {
    const { body } = await ask<z.infer<typeof answers.Matches>>(
      served.origin,
      '/v1/search?notes=A,B,C,D,E,F,G%23',
    );
    expect(body.matches).toHaveLength(7);
    expect(body.matches[0]).toMatchObject({ name: 'A harmonic minor', root: 'A', missing: [], extra: [] });
  });

  // The tonic and the dominant seventh of A minor: both minors with a raised seventh hold them (Kostka and Payne,
  // Tonal Harmony, chapter 4).
  test('chords find the scales that hold their notes, however they are parted', async () => {
    const bodies = await Promise.all(
      ['Am,E7', 'Am%20E7', 'Am,%20E7'].map((chords) =>
        ask<z.infer<typeof answers.Matches>>(served.origin, `/v1/search?chords=${chords}`),
      ),
    );
    for (const { body } of bodies) {
      expect(body.asked).toEqual(['A', 'C', 'E', 'G#', 'B', 'D']);
      expect(body.chords).toEqual([
        { symbol: 'Am', notes: ['A', 'C', 'E'] },
        { symbol: 'E7', notes: ['E', 'G#', 'B', 'D'] },
      ]);
      expect(body.matches.slice(0, 2).map(({ name }) => name)).toEqual([
        'A harmonic minor',
        'A melodic minor',
      ]);
    }
  });

  test('a scale is found by the chords that stand on its degrees', async () => {
    const { body: scale } = await ask<z.infer<typeof answers.Scale>>(served.origin, '/v1/modes/enigmatic/C');
    const chords = encodeURIComponent(scale.chords.triads.map(({ name }) => name).join(','));
    const { body } = await ask<z.infer<typeof answers.Matches>>(
      served.origin,
      `/v1/search?chords=${chords}&root=C`,
    );
    expect(body.matches.map(({ mode }) => mode)).toEqual([scale.slug]);
  });

  test('where no scale holds them all, the missing ones are named as they were asked', async () => {
    const { body } = await ask<z.infer<typeof answers.Matches>>(
      served.origin,
      '/v1/search?notes=C,C%23,D,Eb,E,F,F%23,G&limit=3',
    );
    for (const match of body.matches) {
      expect(match.missing).toHaveLength(1);
      expect(body.asked).toContain(match.missing[0]);
    }
  });
});

describe('rounds', () => {
  test.each([
    ['guitar-6', ''],
    ['bass-4', ''],
    ['guitar-7', ''],
    ['guitar-6', '&tuning=B1-E2-A2-D3-G3-B3-E4'],
  ])('harmonic minor from A on %s%s holds each mode’s own notes in one area', async (instrument, more) => {
    const { body } = await ask<z.infer<typeof answers.Round>>(
      served.origin,
      `/v1/rounds/harmonic-minor/A?instrument=${instrument}${more}`,
    );
    expect(body.reason).toBeUndefined();
    expect(body.modes).toHaveLength(7);
    const starts = new Set(body.modes.map(({ fingering }) => fingering?.notes[0]?.midi));
    expect(starts.size).toBe(1);
    for (const { notes, fingering } of body.modes) {
      expect(notes[0]).toBe('A');
      expect(fingering).not.toBeNull();
      const played = fingering?.notes ?? [];
      expect(new Set(played.map(({ note }) => note))).toEqual(new Set(notes));
      for (const { fret } of played) {
        expect(fret).toBeGreaterThanOrEqual(body.area?.from ?? Number.NaN);
        expect(fret).toBeLessThanOrEqual(body.area?.to ?? Number.NaN);
      }
    }
  });

  test('one note a beat lasts as long as the tempo says, every mode in whole bars', async () => {
    const { body } = await ask<z.infer<typeof answers.Round>>(
      served.origin,
      '/v1/rounds/harmonic-minor/A?tempo=120&pattern=up-and-down',
    );
    // 15 notes up and 14 down are 29 beats, in 8 bars of 4.
    for (const { sequence } of body.modes) expect(sequence).toHaveLength(29);
    expect(body.modes.map(({ startSeconds }) => startSeconds)).toEqual([0, 16, 32, 48, 64, 80, 96]);
    expect(body.durationSeconds).toBe((7 * 8 * 4 * 60) / 120);
  });
});
