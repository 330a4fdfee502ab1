/**
 * Sentences of the other languages, as their music textbooks form them: intervals above the root with their
 * qualities (German: Ziegenrücker, ABC Musik; Spanish: Zamacois, Teoría de la música; both recalled).
 */
import { type Piece, parseRoot, spell, UNIVERSE } from '@stillroot/core';
import { describe, expect, test } from 'vitest';
import * as de from './de/degrees.ts';
import * as deNecks from './de/necks.ts';
import * as dePlay from './de/play.ts';
import * as deReasons from './de/reasons.ts';
import * as deSentences from './de/sentences.ts';
import { roundTitle as titleInGerman } from './de/titles.ts';
import * as es from './es/degrees.ts';
import * as esNecks from './es/necks.ts';
import { joined as joinedInSpanish } from './es/numbers.ts';
import * as esPlay from './es/play.ts';
import * as esReasons from './es/reasons.ts';
import * as esSentences from './es/sentences.ts';

function modeOf(steps: string) {
  const mode = UNIVERSE.modesById.get(steps);
  if (!mode) throw new Error(`no mode ${steps}`);
  return mode;
}

describe('degrees as intervals', () => {
  test.each([
    [4, 1, 'übermäßige Quarte', 'cuarta aumentada'],
    [2, -1, 'kleine Sekunde', 'segunda menor'],
    [6, 0, 'große Sexte', 'sexta mayor'],
    [5, 0, 'reine Quinte', 'quinta justa'],
    [5, -1, 'verminderte Quinte', 'quinta disminuida'],
    [7, -2, 'verminderte Septime', 'séptima disminuida'],
    [3, -3, 'doppelt verminderte Terz', 'tercera doblemente disminuida'],
    [2, 2, 'doppelt übermäßige Sekunde', 'segunda doblemente aumentada'],
  ])('degree %i altered by %i', (degree, alteration, german, spanish) => {
    expect(de.degreeWords(degree, alteration)).toBe(german);
    expect(es.degreeWords(degree, alteration)).toBe(spanish);
  });

  test.each([
    ['2131212', 'Dorisch mit übermäßiger Quarte', 'dórico con cuarta aumentada'],
    ['1221312', 'Lokrisch mit großer Sexte', 'locrio con sexta mayor'],
    [
      '1212213',
      'Lokrisch mit verminderter Quarte und verminderter Septime',
      'locrio con cuarta disminuida y séptima disminuida',
    ],
    ['2122212', 'Dorisch', 'dórico'],
  ])('the mode of steps %s is %s', (steps, german, spanish) => {
    const { base, alterations } = modeOf(steps);
    expect(de.baseWords(base, alterations)).toBe(german);
    expect(es.baseWords(base, alterations)).toBe(spanish);
  });

  test('no mode is left without words', () => {
    for (const { base, alterations } of UNIVERSE.modes) {
      for (const words of [de.baseWords(base, alterations), es.baseWords(base, alterations)])
        expect(words).not.toMatch(/undefined|-fach|veces|Stufe|grado|\s\s/);
    }
  });
});

test('moves', () => {
  const moved = [
    { degree: 4, by: -1 },
    { degree: 6, by: -1 },
    { degree: 7, by: 2 },
  ];
  expect(de.movesWords(moved)).toBe('4 und 6 fallen um einen Halbton, 7 steigt um einen Ganzton');
  expect(es.movesWords(moved)).toBe('4 y 6 bajan un semitono, 7 sube un tono');
  const root = parseRoot('A');
  if (!root.ok) throw new Error('A is a root');
  const [before, after] = ['2122131', '1221312'].map((steps) => spell(modeOf(steps), root.value));
  if (!before || !after) throw new Error('two scales');
  expect(de.moveNotes({ degree: 2, by: -1 }, before, after)).toBe('B → B♭');
});

test('sentences', () => {
  const shared = [
    { count: 6, name: 'X' },
    { count: 7, name: 'Y' },
  ];
  expect(deSentences.notesShared(shared)).toBe('sechs Töne gemeinsam mit X, alle sieben mit Y');
  expect(esSentences.notesShared(shared)).toBe('seis notas en común con X, las siete con Y');
  expect(deSentences.notesShared([{ count: 1, name: 'X' }])).toBe('ein Ton gemeinsam mit X');
  expect(esSentences.notesShared([{ count: 1, name: 'X' }])).toBe('una nota en común con X');
  expect(deSentences.modeAt(4)).toBe('vierter Modus');
  expect(esSentences.modeAt(3)).toBe('tercer modo');
  expect(deSentences.placeInFamily('Dorisch', 2, 'Dur')).toBe('Dorisch; der zweite Modus der Familie Dur.');
  const root = parseRoot('A');
  if (root.ok) expect(titleInGerman('harmonic minor', root.value)).toBe('Die Runde „Harmonisch Moll“ auf A');
});

test('what is played, and what a staff cannot show', () => {
  const piece = {
    pattern: 'thirds',
    noteValue: 'dotted-eighth',
    timing: { tempoBpm: 80, meter: { beats: 4, unit: 4 }, ticksPerBar: 1920 },
    countInTicks: 1920,
  } as Piece;
  expect(dePlay.timingWords(piece)).toBe(
    'in Terzen, punktierte Achtel, 80 Schläge pro Minute im 4/4-Takt, nach 1 Takt Einzählen',
  );
  expect(esPlay.timingWords(piece)).toBe(
    'por terceras, corcheas con puntillo, 80 pulsos por minuto en 4/4, tras 1 compás previo',
  );
  const remarks = [
    { kind: 'capo', fret: 6.5, strings: [2] },
    { kind: 'courses', courses: 'F#2/F#3 A3/A3' },
  ] as const;
  expect(remarks.map(deNecks.remarkWords)).toEqual([
    'Kapodaster am Bund 6½, nur auf Saite 2',
    'Chöre F♯2/F♯3 A3/A3: Notiert ist jeweils die erste Saite',
  ]);
  expect(remarks.map(esNecks.remarkWords)).toEqual([
    'Cejilla en el traste 6½, solo en la cuerda 2',
    'Órdenes F♯2/F♯3 A3/A3: se escribe la primera cuerda de cada uno',
  ]);
});

test('counts of one', () => {
  const one = { kind: 'modes-left-out', playable: 1 } as const;
  expect(deReasons.reasonWords(one)).toMatch(/^nur einer der sieben ist spielbar/);
  expect(esReasons.reasonWords(one)).toMatch(/^solo se puede tocar uno de los siete/);
  expect(deReasons.reasonWords({ ...one, playable: 3 })).toMatch(/^nur 3 der sieben sind spielbar/);
  expect(esReasons.reasonWords({ ...one, playable: 3 })).toMatch(/^solo se pueden tocar 3 de los siete/);
});

test('in Spanish, and before i is e', () => {
  expect(joinedInSpanish(['dórico', 'frigio'])).toBe('dórico y frigio');
  expect(joinedInSpanish(['dórico', 'inventado'])).toBe('dórico e inventado');
  expect(joinedInSpanish(['dórico', 'jónico'])).toBe('dórico y jónico');
  expect(joinedInSpanish(['agua', 'hielo'])).toBe('agua y hielo');
});
