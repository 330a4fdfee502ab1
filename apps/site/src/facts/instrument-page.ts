/**
 * What the page of an instrument says.
 */
import { findMode, type InstrumentEntry, modeEntryOf } from '@stillroot/catalog';
import {
  EVERYDAY_ROOTS,
  formatMidi,
  invariant,
  type Neck,
  parseRoot,
  pitchClassOf,
  type Root,
  type Scale,
  spell,
  type Tuning,
} from '@stillroot/core';
import { scaleName } from '../markup/names.ts';
import { signedPitch } from '../markup/playing.ts';
import { scaleNecksHtml } from '../markup/scale-necks.ts';
import { neckOf } from './guitar.ts';

/** One fret of an instrument across its strings. */
export interface FretRow {
  readonly fret: number;
  readonly distanceMm: number;
  /** String by string from the lowest-sounding side; empty where a string has no note there. */
  readonly notes: readonly string[];
}

/** Everything on the page. */
export interface InstrumentPage {
  readonly neck: Neck;
  /** The scale whose notes the picture shows. */
  readonly naturals: Scale;
  readonly html: string;
  readonly frets: readonly FretRow[];
  /** The everyday root on the lowest-sounding open string. */
  readonly lowestRoot: Root;
}

/** Gathers the page. */
export function instrumentPage(instrument: InstrumentEntry): InstrumentPage {
  const neck = neckOf(instrument);
  const naturals = naturalsScale();
  const name = scaleName(naturals.root, modeEntryOf(naturals.mode).name);
  const view = { neck, scale: naturals, name, labels: 'notes', leftHanded: false } as const;
  return {
    neck,
    naturals,
    html: scaleNecksHtml(view),
    frets: fretRows(neck),
    lowestRoot: lowestRootIn(neck.tuning),
  };
}

/** C Ionian: the notes without an accidental. */
export function naturalsScale(): Scale {
  const ionian = findMode('Ionian');
  const root = parseRoot('C');
  invariant(ionian !== undefined && root.ok, 'C Ionian is a scale');
  return spell(ionian.mode, root.value);
}

/** The everyday root on the lowest-sounding open string of a tuning. */
export function lowestRootIn({ courses }: Tuning): Root {
  const lowest = Math.min(...courses.map(([principal]) => principal.midi));
  const root = EVERYDAY_ROOTS.find(
    ({ pitchClass, alteration }) => pitchClass === pitchClassOf(lowest) && alteration <= 0,
  );
  invariant(root !== undefined, 'every pitch class has an everyday root');
  return root;
}

function fretRows(neck: Neck): readonly FretRow[] {
  return neck.slots.map(({ fret, distanceMm }, slot) => ({
    fret,
    distanceMm,
    notes: neck.strings.toReversed().map(({ midiBySlot }) => {
      const midi = midiBySlot[slot] ?? -1;
      return midi < 0 ? '' : bothNames(midi);
    }),
  }));
}

/** A natural by its letter, a black key by its sharp and its flat. */
function bothNames(midi: number): string {
  return [...new Set([formatMidi(midi, true), formatMidi(midi)])].map(signedPitch).join(' ');
}
