/**
 * Across the neck: the chain of areas that covers every fret, so that a scale can be found wherever the
 * hand happens to be, and the shifts that lead from one area to the next.
 */
import { type FretSlot, type Neck, openSlot } from '../instrument/neck.ts';
import type { Scale } from '../mode/spelling.ts';
import {
  type Area,
  areasOfWidth,
  climbLength,
  climbLine,
  handsIn,
  mapArea,
  markArea,
  newMarks,
  type OpenStrings,
  rootsIn,
} from './area.ts';
import { type PackedCost, unpackCost } from './cost.ts';
import { describeSolution, type Fingering, type FretRange } from './fingering.ts';
import { spanMm, widestHand } from './hand.ts';
import { solve } from './solve.ts';
import { solveStaying } from './stay.ts';
import type { Solution } from './touch.ts';

/** How the hand gets from one area to the next. */
export interface AreaShift {
  /** The frets at which finger 1 is at home before and after. */
  readonly fromFret: number;
  readonly toFret: number;
  readonly distanceMm: number;
}

/** Areas from the nut upwards, each played without moving the hand, that together cover every fret. */
export interface AreaChain {
  readonly fingerings: readonly Fingering[];
  /** One between each two. */
  readonly shifts: readonly AreaShift[];
}

/** How to lie in the areas. */
export interface ChainSearch {
  readonly reachMm: number;
  readonly openStrings: OpenStrings;
}

/**
 * The chain of the fewest areas that a hand plays without moving, from the open strings on if it can play
 * there; between chains of as many the one with the least cost, then the one whose areas lie lowest. Where
 * some frets lie in no such area, as the low ones of a bass may, the hand moves there, and the chain is the
 * one in which it moves least within its areas. Undefined where there is no chain at all.
 */
export function acrossNeck(neck: Neck, scale: Scale, search: ChainSearch): AreaChain | undefined {
  const staying = everyPatch(neck, scale, search, 'staying');
  const chain =
    shortestChain(neck, staying) ?? shortestChain(neck, everyPatch(neck, scale, search, 'moving'));
  if (!chain) return undefined;
  const fingerings = chain.map(({ area, solution }) => ({
    ...describeSolution(neck, scale, solution, search.openStrings),
    area: fretsOf(neck, area),
  }));
  const shifts = chain.slice(1).map((next, at) => {
    const fromSlot = (chain[at] as Patch).solution.touches.at(-1)?.position.indexSlot as number;
    const toSlot = next.solution.touches[0]?.position.indexSlot as number;
    return {
      fromFret: (neck.slots[fromSlot] as FretSlot).fret,
      toFret: (neck.slots[toSlot] as FretSlot).fret,
      distanceMm: Math.round(Math.abs(spanMm(neck, fromSlot, toSlot)) * 10) / 10,
    };
  });
  return { fingerings, shifts };
}

/** An area's frets, whether or not its outermost have a note that the fingering takes there. */
function fretsOf(neck: Neck, { fromSlot, toSlot }: Area): FretRange {
  const fretAt = (slot: number) => (neck.slots[slot] as FretSlot).fret;
  return { from: fromSlot === openSlot(neck) ? 0 : fretAt(fromSlot), to: fretAt(toSlot) };
}

/** An area and how one hand plays all notes of the scale in it. */
interface Patch {
  readonly area: Area;
  readonly solution: Solution;
}

/** A chain up to some fret, by its last link. */
interface Chain {
  readonly patch: Patch;
  readonly before: Chain | undefined;
  readonly length: number;
  /** How far the hand moves within its areas, in all. */
  readonly travelMm: number;
  readonly cost: PackedCost;
}

/**
 * Every area that is played whole: from its lowest to its highest note of the scale, none left out.
 * @param how whether the hand stays in each; where it may move, areas may also be as wide as the widest step
 * from string to string, so that no note falls between two strings
 */
function everyPatch(
  neck: Neck,
  scale: Scale,
  { reachMm, openStrings }: ChainSearch,
  how: 'staying' | 'moving',
): readonly Patch[] {
  const marks = newMarks();
  const patches: Patch[] = [];
  const widest = how === 'staying' ? widestHand(neck) + 1 : Math.max(widestHand(neck), widestStep(neck) + 1);
  for (let width = 2; width <= widest; width += 1) {
    for (const area of areasOfWidth(neck, width, openStrings)) {
      markArea(neck, area, openStrings, marks);
      const run = wholeRun(marks, scale);
      if (!run) continue;
      const map = mapArea(neck, area, openStrings);
      const positions = handsIn(neck, area, reachMm);
      const line = climbLine(map, scale, run.rootMidi, run.length, run.fromStep);
      const [solution] = how === 'staying' ? solveStaying(line, positions, 1) : solve(neck, line, positions);
      if (solution) patches.push({ area, solution });
    }
  }
  return patches;
}

/** The most semitones from one open string to the next. */
function widestStep({ strings }: Neck): number {
  const steps = strings.map(({ openMidi }, at) =>
    Math.abs(openMidi - (strings[at + 1]?.openMidi ?? openMidi)),
  );
  return Math.max(...steps);
}

/** The scale notes that are marked, as one run; undefined where one is missing between two others. */
function wholeRun(marks: Uint8Array, scale: Scale) {
  const [firstRoot] = rootsIn(marks, scale);
  if (firstRoot === undefined) return undefined;
  let fromStep = 0;
  while (climbLength(marks, scale, firstRoot, fromStep - 1) > 0) fromStep -= 1;
  const length = climbLength(marks, scale, firstRoot, fromStep);
  const marked = scale.mode.semitones.reduce((count, semitones) => {
    let more = 0;
    for (let midi = (scale.root.pitchClass + semitones) % 12; midi < marks.length; midi += 12) {
      more += marks[midi] as number;
    }
    return count + more;
  }, 0);
  return length === marked ? { rootMidi: firstRoot, fromStep, length } : undefined;
}

/** A chain from the open strings on, or, where there is none, from the first fret. */
function shortestChain(neck: Neck, patches: readonly Patch[]): readonly Patch[] | undefined {
  const nut = openSlot(neck);
  return chainFrom(neck, patches, nut) ?? chainFrom(neck, patches, nut + 1);
}

/** Link by link: the best chain that ends with each patch, from those that end below it or beside it. */
function chainFrom(neck: Neck, patches: readonly Patch[], firstSlot: number): readonly Patch[] | undefined {
  const last = neck.slots.length - 1;
  const sorted = patches.toSorted(
    (a, b) => a.area.fromSlot - b.area.fromSlot || a.area.toSlot - b.area.toSlot,
  );
  const chains: Chain[] = [];
  for (const patch of sorted) {
    if (patch.area.fromSlot <= firstSlot) {
      chains.push(linked(patch, undefined));
      continue;
    }
    let before: Chain | undefined;
    for (const chain of chains) {
      const { fromSlot, toSlot } = chain.patch.area;
      const isNext =
        fromSlot < patch.area.fromSlot && toSlot < patch.area.toSlot && toSlot + 1 >= patch.area.fromSlot;
      if (isNext && isBetter(chain, before)) before = chain;
    }
    if (before) chains.push(linked(patch, before));
  }
  let best: Chain | undefined;
  for (const chain of chains) {
    if (chain.patch.area.toSlot === last && isBetter(chain, best)) best = chain;
  }
  if (!best) return undefined;
  const links: Patch[] = [];
  for (let chain: Chain | undefined = best; chain; chain = chain.before) links.push(chain.patch);
  return links.reverse();
}

function linked(patch: Patch, before: Chain | undefined): Chain {
  const { cost } = patch.solution;
  return {
    patch,
    before,
    length: (before?.length ?? 0) + 1,
    travelMm: (before?.travelMm ?? 0) + unpackCost(cost).travelMm,
    cost: (before?.cost ?? 0) + cost,
  };
}

/** Least travel within areas, then fewest areas, then least cost. */
function isBetter(a: Chain, b: Chain | undefined): boolean {
  return b === undefined || (a.travelMm - b.travelMm || a.length - b.length || a.cost - b.cost) < 0;
}
