/**
 * Ten thousand random requests across the catalogue, and the solver beside exhaustive search on the same
 * lines.
 */
import { CATALOGUE } from '@stillroot/catalog';
import {
  buildNeck,
  fingeringsOf,
  invariant,
  type LineNote,
  type Neck,
  ORDERS,
  roundOf,
  STYLES,
  type Style,
  solve,
  spell,
  UNIVERSE,
  widestHands,
} from '@stillroot/core';
import { leastPrices } from '@stillroot/core/exhaustive';
import { percentile } from './figures.ts';
import { neckOf, twelveRoots } from './subjects.ts';

const REQUESTS = 10_000;
const LINES = 200;
const REACH_MM = 120;

/** Every request builds its neck, as the API does. */
export function measureRequests(): void {
  const random = generator(20_261_125);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
  const times: Record<'fingering' | 'five' | 'round', number[]> = { fingering: [], five: [], round: [] };
  const byStyle = new Map<Style, number[]>(STYLES.map((style) => [style, []]));
  const ask = (record: boolean): void => {
    const instrument = pick(CATALOGUE.instruments);
    const tuning = pick(instrument.tunings);
    const [mode, root, style, order] = [
      pick(UNIVERSE.modes),
      pick(twelveRoots()),
      pick(STYLES),
      pick(ORDERS),
    ];
    const fret = random() < 0.3 ? { fret: Math.floor(random() * 13) } : {};
    const kind = pick(['fingering', 'five', 'round'] as const);
    const begun = performance.now();
    const neck = buildNeck(instrument, tuning);
    invariant(neck.ok, `${instrument.id} has a neck`);
    if (kind === 'round') roundOf(neck.value, mode, root, { order, ...fret });
    else fingeringsOf(neck.value, spell(mode, root), { style, limit: kind === 'five' ? 5 : 1, ...fret });
    const took = performance.now() - begun;
    if (!record) return;
    times[kind].push(took);
    if (kind === 'fingering') byStyle.get(style)?.push(took);
  };
  for (let at = 0; at < REQUESTS / 10; at += 1) ask(false);
  for (let at = 0; at < REQUESTS; at += 1) ask(true);
  console.log(`\n${REQUESTS} random requests: any tuning, mode, root, style and fret`);
  console.log(
    `  ${''.padEnd(24)}${['median', '99 of 100', 'worst'].map((name) => name.padStart(11)).join('')}`,
  );
  const all = [...times.fingering, ...times.five, ...times.round];
  for (const [name, values] of [
    ['the best fingering', times.fingering],
    ...[...byStyle].map(([style, values]) => [`  ${style}`, values] as const),
    ['the five best', times.five],
    ['a round', times.round],
    ['all', all],
  ] as const) {
    const figures = [percentile(values, 0.5), percentile(values, 0.99), Math.max(...values)];
    console.log(`  ${name.padEnd(24)}${figures.map((ms) => `${ms.toFixed(3)} ms`.padStart(11)).join('')}`);
  }
}

/** An octave of eight notes on six frets of a guitar: small enough to follow every path. */
export function compareWithExhaustive(): void {
  const neck = neckOf('guitar-6');
  const lines = Array.from({ length: LINES }, (_, at) => lineOf(neck, at));
  const [from, to] = [5, 9];
  const positions = widestHands(neck, REACH_MM, from, to);
  const homes = Array.from({ length: to - from + 1 }, (_, at) => from + at);
  const board = {
    scaleLengthMm: neck.scaleLengthMm,
    frets: neck.slots.length - 1,
    frame: neck.handFrame,
    reachMm: REACH_MM,
    homes,
  };
  for (const count of [1, 5]) {
    const [ours, theirs] = [
      timeEach(lines, (line) => solve(neck, line, positions, count).length),
      timeEach(lines, (line) => leastPrices(board, line, count).length),
    ];
    console.log(
      `\nThe ${count === 1 ? 'best' : `${count} best`} of ${LINES} lines of six notes on five frets, median`,
    );
    console.log(`  solver                ${(ours * 1e3).toFixed(0).padStart(8)} µs`);
    console.log(
      `  every path followed   ${(theirs * 1e3).toFixed(0).padStart(8)} µs   ${(theirs / ours).toFixed(0)} times as long`,
    );
  }
}

function lineOf(neck: Neck, seed: number): readonly LineNote[] {
  const random = generator(seed + 1);
  return Array.from({ length: 6 }, () => {
    const string = 1 + Math.floor(random() * (neck.strings.length - 1));
    const slot = 5 + Math.floor(random() * 5);
    return {
      options: [
        { string, slot, isOpen: false },
        { string: string + 1, slot: 5 + Math.floor(random() * 5), isOpen: false },
      ],
      holdsHand: false,
    };
  });
}

function timeEach<T>(items: readonly T[], work: (item: T) => number): number {
  for (const item of items) work(item);
  return percentile(
    items.map((item) => {
      const begun = performance.now();
      work(item);
      return performance.now() - begun;
    }),
    0.5,
  );
}

/** Numbers from 0 to below 1, the same for the same seed: the linear congruence of Numerical Recipes. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
