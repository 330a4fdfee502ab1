/**
 * Bad input gets a problem document that names the field and what would be right (RFC 9457); nothing is
 * ever answered with a 500.
 */
import { connect } from 'node:net';
import { answers } from '@stillroot/contract';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type * as z from 'zod';
import { ask, type Served, serve } from './server.ts';

type Problem = z.infer<typeof answers.Problem>;

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.close());

async function refused(path: string, status: number): Promise<Problem> {
  const answer = await ask<Problem>(served.origin, path);
  expect(answer.status).toBe(status);
  expect(answer.type).toBe('application/problem+json; charset=utf-8');
  expect(answers.Problem.safeParse(answer.body).error).toBeUndefined();
  expect(answer.body.status).toBe(status);
  return answer.body;
}

describe('names that nothing has', () => {
  test.each([
    ['/v1/modes/dorain/A', 'mode', 'dorian'],
    ['/v1/modes/phrigian-dominent', 'mode', 'phrygian-dominant'],
    ['/v1/modes/dorain/A/fretboard', 'mode', 'dorian'],
    ['/v1/families/harmonic-minro', 'family', 'harmonic-minor'],
    ['/v1/rounds/harmonic-minro/A', 'family', 'harmonic-minor'],
    ['/v1/instruments/mandolyn', 'instrument', 'mandolin'],
    ['/v1/compare?a=dorain&b=phrygian', 'a', 'dorian'],
    ['/v1/routes?from=dorian&to=phrigian', 'to', 'phrygian'],
    ['/v1/modes/constructor', 'mode', ''],
    ['/v1/modes/__proto__/A', 'mode', ''],
    ['/v1/rounds/dorian/C', 'family', 'a family, and Dorian is a mode; the nearest names are major'],
  ])('%s says that %s is unknown and suggests %s', async (path, field, suggestion) => {
    const problem = await refused(path, 404);
    expect(problem.errors[0]?.field).toBe(field);
    expect(problem.errors[0]?.expected).toContain('the nearest names are');
    expect(problem.errors[0]?.expected).toContain(suggestion);
  });

  test.each([['oud'], ['saz'], ['guitarron'], ['fretless-bass']])(
    'an instrument that cannot be served, %s, is told why',
    async (name) => {
      const problem = await refused(`/v1/instruments/${name}`, 404);
      expect(problem.errors[0]?.expected).toMatch(/cannot be served\. .{20}/);
    },
  );

  test('an address that is none of ours points at the description of those that are', async () => {
    const problem = await refused('/v1/nothing', 404);
    expect(problem.errors[0]?.expected).toContain('/v1/openapi.json');
  });
});

describe('a file of what cannot be played', () => {
  test.each([
    ['/v1/modes/locrian/A/fingerings.mid?style=one-string&fret=20', 'style=one-string&fret=10'],
    ['/v1/rounds/harmonic-minor/A.musicxml?style=across-the-neck', 'style=position'],
  ])('%s names what can be, which then is', async (path, instead) => {
    const { errors } = await refused(path, 422);
    const style = errors.find(({ field }) => field === 'style');
    expect(style?.expected).toContain(instead);
    const [query = ''] = style?.expected.split(/[ ,]/) ?? [];
    const { status } = await ask(served.origin, `${path.split('?')[0]}?${query}`);
    expect(status).toBe(200);
  });
});

const FORTY_STRINGS = Array.from({ length: 40 }, () => 'E2').join('-');

describe('parameters that are not what they should be', () => {
  test.each([
    ['/v1/modes/dorian/H', 'root', 'one of the 21 roots'],
    ['/v1/modes/dorian/Abb', 'root', 'one of the 21 roots'],
    ['/v1/rounds/major/A.pdf', 'root', 'a form may follow where there are any: .svg, .txt, .mid, .musicxml'],
    ['/v1/modes/dorian/A.svg', 'root', 'a form may follow where there are any'],
    ['/v1/modes/dorian/A/fretboard?instrument=theremin', 'instrument', 'an instrument of /v1/instruments'],
    ['/v1/modes/dorian/A/fretboard?tuning=H9', 'tuning[0]', 'a note and its octave'],
    ['/v1/modes/dorian/A/fretboard?tuning=E2-A2-X3', 'tuning[2]', 'a note and its octave'],
    ['/v1/modes/dorian/A/fretboard?tuning=-', 'tuning', '1 to 14 open strings'],
    [`/v1/modes/dorian/A/fretboard?tuning=${FORTY_STRINGS}`, 'tuning', '1 to 14 open strings'],
    ['/v1/modes/dorian/A/fretboard?capo=99', 'capo', 'a number from 0 to 36'],
    ['/v1/modes/dorian/A/fretboard?capo=30', 'capo', 'a fret of this neck'],
    ['/v1/modes/dorian/A/fretboard?instrument=dulcimer-mountain&capo=6.25', 'capo', 'a fret of this neck'],
    [
      '/v1/modes/dorian/A/fretboard?capo=2&capoStrings=7',
      'capoStrings[0]',
      'strings of this neck by number, 1 to 6',
    ],
    ['/v1/modes/dorian/A/fretboard?capoStrings=1,2', 'capoStrings', 'the fret that the capo lies on as well'],
    ['/v1/modes/dorian/A/fretboard?capoStrings=two', 'capoStrings', 'whole numbers from 1 to 14'],
    ['/v1/modes/dorian/A/fretboard?transpose=99', 'transpose', 'a whole number from -24 to 24'],
    ['/v1/modes/dorian/A/fretboard?instrument=bass-5&transpose=-24', 'transpose', 'MIDI notes 0 to 127'],
    ['/v1/modes/dorian/A/fretboard?scaleLength=9', 'scaleLength', 'one length from 200 to 1200'],
    ['/v1/modes/dorian/A/fretboard?instrument=oud', 'instrument', 'has no frets'],
    ['/v1/modes/dorian/A/fretboard?tuning=EADGBH', 'tuning', 'open strings, low to high'],
    ['/v1/modes/dorian/A/fingerings?handSize=huge', 'handSize', 'one of small, medium, large'],
    ['/v1/modes/dorian/A/fretboard?frets=0', 'frets', 'a whole number from 1 to 36'],
    ['/v1/modes/dorian/A/fretboard?frets=1e1', 'frets', 'a whole number from 1 to 36'],
    ['/v1/modes/dorian/A/fretboard?tunning=E2', 'tunning', 'one of the parameters instrument, tuning'],
    ['/v1/modes/dorian/A/fretboard?capo=1&capo=2', 'capo', 'a number from 0 to 36'],
    [
      '/v1/modes/dorian/A/fingerings?style=sideways',
      'style',
      'one of position, three-per-string, one-string',
    ],
    ['/v1/modes/dorian/A/fingerings?reach=0', 'reach', 'a number from 40 to 200'],
    ['/v1/modes/dorian/A/fingerings?reach=-5', 'reach', 'a number from 40 to 200'],
    ['/v1/modes/dorian/A/fingerings?fret=', 'fret', 'a number from 0 to 36'],
    ['/v1/rounds/major/A?tempo=NaN', 'tempo', 'a number from 20 to 400'],
    ['/v1/rounds/major/A?tempo=0', 'tempo', 'a number from 20 to 400'],
    ['/v1/rounds/major/A.mid?tempo=10000', 'tempo', 'a number from 20 to 400'],
    ['/v1/rounds/major/A.musicxml?tempo=NaN', 'tempo', 'a number from 20 to 400'],
    ['/v1/rounds/major/A.mid?pattern=sideways', 'pattern', 'one of up, down, up-and-down, thirds'],
    ['/v1/rounds/major/A.mid?value=crotchet', 'value', 'one of whole, half, quarter'],
    ['/v1/rounds/major/A.txt?meter=4/3', 'meter', '2 to 12 beats over 2, 4, 8, 16'],
    ['/v1/rounds/major/A.mid?bars=64&repeats=16', 'bars', 'a piece of at most 5000 notes'],
    ['/v1/modes/dorian/A/fingerings.mid?vamp=8', 'vamp', 'degrees from 1 to 7'],
    ['/v1/modes/dorian/A?fields=notes,colour', 'fields', 'fields out of id, slug'],
    ['/v1/modes/dorian/A?fields=name.first', 'fields', 'nothing within'],
    ['/v1/rounds/major/A.svg?fields=name', 'fields', 'one of the parameters instrument'],
    ['/v1/rounds/major/A?order=random', 'order', 'one of parent, brightness, fewest-moves'],
    ['/v1/search', 'notes', 'notes the scale must hold'],
    ['/v1/search?chords=', 'chords', 'chords whose notes'],
    ['/v1/search?chords=Am,Hm', 'chords[1]', 'a chord symbol, such as Am'],
    [`/v1/search?chords=${'C,'.repeat(13)}`, 'chords', 'at most 12 chords'],
    ['/v1/search?notes=A,H', 'notes[1]', 'a letter from A to G'],
    ['/v1/search?notes=A,B,C,D,E,F,G,A,B,C,D,E,F', 'notes', 'at most 12 notes'],
    ['/v1/modes?contains=b9', 'contains', 'degrees such as b3'],
    ['/v1/modes?limit=0', 'limit', 'a whole number from 1 to 462'],
    ['/v1/compare?a=dorian', 'b', 'another mode'],
    ['/v1/%E0%A4%A', 'path', 'valid percent-encoding'],
  ])('%s names %s and what would be right', async (path, field, expected) => {
    const problem = await refused(path, 400);
    expect(problem.errors[0]?.field).toBe(field);
    expect(problem.errors[0]?.expected).toContain(expected);
    expect(problem.detail).toContain(expected.slice(0, 20));
  });

  test('every wrong parameter is named, not only the first', async () => {
    const problem = await refused('/v1/rounds/major/A?tempo=fast&reach=far&fret=low', 400);
    expect(problem.errors.map(({ field }) => field).toSorted()).toEqual(['fret', 'reach', 'tempo']);
  });

  test('what cannot be sent is refused with the methods that can', async () => {
    const answer = await ask<Problem>(served.origin, '/v1/families', { method: 'POST', body: 'x' });
    expect([answer.status, answer.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS']);
  });

  test('an address of two megabytes is refused as too long and the server goes on', async () => {
    const reply = await raw(`GET /v1/modes?name=${'a'.repeat(2_000_000)} HTTP/1.1\r\nHost: x\r\n\r\n`);
    expect(reply).toMatch(/^HTTP\/1\.1 431 /);
    expect(reply).toContain('application/problem+json');
    expect((await ask(served.origin, '/health')).status).toBe(200);
  });

  test('what is not HTTP is refused', async () => {
    expect(await raw('BLARGH\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /);
  });
});

test('what no hand can play is an answer, not an error', async () => {
  const { status, body } = await ask<z.infer<typeof answers.Fingerings>>(
    served.origin,
    '/v1/modes/ionian/F/fingerings?instrument=bass-4&style=three-per-string&fret=1',
  );
  expect(status).toBe(200);
  expect(body.fingerings).toEqual([]);
  expect(body.reason).toContain('168.2 mm');
  expect(body.reasonKind).toBe('too-wide');
  expect(body.alternative?.fingering.reachMm).toBeLessThanOrEqual(body.handReachMm);
});

test('a parameter that is given twice is said to be', async () => {
  const { status, body } = await ask<Problem>(served.origin, '/v1/rounds/major/A?tempo=80&tempo=90');
  expect(status).toBe(400);
  expect(body.errors[0]).toMatchObject({ field: 'tempo', value: '80,90' });
  expect(body.errors[0]?.expected).toMatch(/; given once$/);
});

test('a picture says what could not be played, and what it shows instead', async () => {
  const alone = await ask(
    served.origin,
    '/v1/modes/ionian/F/fingerings.svg?instrument=bass-4&style=three-per-string&fret=1',
  );
  expect(alone.text).toMatch(/<title[^>]*>[^<]*168\.2 mm[^<]*; instead, in style position<\/title>/);
  const round = await ask(served.origin, '/v1/rounds/major/C.svg?instrument=bass-4&fret=18');
  expect(round.text).toContain('there is no octave from root to root');
});

test('whatever is typed into an address, the server never answers with a 5xx', async () => {
  const text = fc.oneof(
    fc.string({ maxLength: 30 }),
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom(
      'dorian',
      'A',
      'Fs',
      '2131212',
      'bass-4',
      '0',
      '-1',
      '1e309',
      '../../etc',
      '%00',
      '__proto__',
    ),
  );
  const places = [
    (one: string, two: string) => `/v1/modes/${one}/${two}`,
    (one: string, two: string) => `/v1/modes/${one}/${two}/related`,
    (one: string, two: string) => `/v1/rounds/${one}/${two}`,
    (one: string, two: string) => `/v1/modes/dorian/A/fingerings?tuning=${one}&fret=${two}`,
    (one: string, two: string) => `/v1/rounds/major/A?instrument=${one}&reach=${two}`,
    (one: string, two: string) => `/v1/search?notes=${one}&root=${two}`,
    (one: string, two: string) => `/v1/modes?name=${one}&contains=${two}`,
    (one: string, two: string) => `/v1/compare?a=${one}&b=${two}`,
  ];
  await fc.assert(
    fc.asyncProperty(fc.constantFrom(...places), text, text, async (place, one, two) => {
      const { status, type } = await ask(
        served.origin,
        place(encodeURIComponent(one.toWellFormed()), encodeURIComponent(two.toWellFormed())),
      );
      expect(status).toBeLessThan(500);
      if (status >= 400) expect(type).toContain('application/problem+json');
    }),
    { numRuns: 1500 },
  );
});

function raw(request: string): Promise<string> {
  const { hostname, port } = new URL(served.origin);
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    const socket = connect(Number(port), hostname, () => socket.write(request));
    socket.on('data', (chunk) => chunks.push(chunk));
    socket.on('close', () => resolve(Buffer.concat(chunks).toString('utf8')));
    // The server may close while it is still being written to.
    socket.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE' && error.code !== 'ECONNRESET') reject(error);
    });
  });
}
