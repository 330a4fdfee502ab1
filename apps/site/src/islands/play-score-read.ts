/**
 * Reads a score of ours back from its MusicXML, so that what is engraved on the page is what the file says.
 */

/** A note or a rest as it is written. */
export interface ScoreSign {
  /** MusicXML's name of its value; absent for a rest that fills its bar. */
  readonly type?: string;
  readonly isDotted: boolean;
  /** Absent for a rest. */
  readonly pitch?: { readonly step: string; readonly alter: number; readonly octave: number };
  readonly hasAccidental: boolean;
  readonly isTiedBack: boolean;
  readonly isTiedOn: boolean;
  readonly isTriplet: boolean;
  readonly beginsBracket: boolean;
  readonly endsBracket: boolean;
  /** What the outermost beam does. */
  readonly beam?: string;
  readonly finger?: string;
  readonly string?: number;
  readonly fret?: string;
}

/** A bar on both staves. */
export interface ScoreBar {
  readonly number: string;
  /** The mode that begins here. */
  readonly heading?: string;
  readonly staff: readonly ScoreSign[];
  readonly tab: readonly ScoreSign[];
  readonly endsSection: boolean;
}

/** A score. */
export interface ReadScore {
  readonly clef: { readonly sign: string; readonly line: number; readonly octaveChange: number };
  readonly meter: { readonly beats: number; readonly unit: number };
  readonly strings: number;
  readonly capo: number;
  readonly bars: readonly ScoreBar[];
}

/** Reads a score that `musicXml` wrote. */
export function readScore(text: string): ReadScore {
  const score = new DOMParser().parseFromString(text, 'application/xml');
  return {
    clef: {
      sign: textIn(score, 'clef[number="1"] > sign') ?? 'G',
      line: numberIn(score, 'clef[number="1"] > line') ?? 2,
      octaveChange: numberIn(score, 'clef-octave-change') ?? 0,
    },
    meter: { beats: numberIn(score, 'beats') ?? 4, unit: numberIn(score, 'beat-type') ?? 4 },
    strings: numberIn(score, 'staff-lines') ?? 6,
    capo: numberIn(score, 'capo') ?? 0,
    bars: [...score.querySelectorAll('measure')].map(readBar),
  };
}

function readBar(measure: Element): ScoreBar {
  const notes = [...measure.querySelectorAll(':scope > note')];
  const heading = [...measure.querySelectorAll('direction')].find((one) => one.querySelector('rehearsal'));
  const name = heading && textIn(heading, 'words');
  const onStaff = (staff: string): readonly ScoreSign[] =>
    notes.filter((note) => textIn(note, 'staff') === staff).map(readSign);
  return {
    number: measure.getAttribute('number') ?? '',
    ...(name !== undefined && { heading: name }),
    staff: onStaff('1'),
    tab: onStaff('2'),
    endsSection: measure.querySelector('barline') !== null,
  };
}

function readSign(note: Element): ScoreSign {
  const type = textIn(note, 'type');
  const step = textIn(note, 'step');
  const beam = textIn(note, 'beam[number="1"]');
  const finger = textIn(note, 'fingering');
  const string = numberIn(note, 'string');
  const fret = textIn(note, 'fret') ?? textIn(note, 'other-technical');
  return {
    ...(type !== undefined && { type }),
    isDotted: note.querySelector('dot') !== null,
    ...(step !== undefined && {
      pitch: { step, alter: numberIn(note, 'alter') ?? 0, octave: numberIn(note, 'octave') ?? 4 },
    }),
    hasAccidental: note.querySelector('accidental') !== null,
    isTiedBack: note.querySelector('tie[type="stop"]') !== null,
    isTiedOn: note.querySelector('tie[type="start"]') !== null,
    isTriplet: note.querySelector('time-modification') !== null,
    beginsBracket: note.querySelector('tuplet[type="start"]') !== null,
    endsBracket: note.querySelector('tuplet[type="stop"]') !== null,
    ...(beam !== undefined && { beam }),
    ...(finger !== undefined && { finger }),
    ...(string !== undefined && { string }),
    ...(fret !== undefined && { fret }),
  };
}

function textIn(inside: ParentNode, selector: string): string | undefined {
  return inside.querySelector(selector)?.textContent ?? undefined;
}

function numberIn(inside: ParentNode, selector: string): number | undefined {
  const text = textIn(inside, selector);
  return text === undefined ? undefined : Number(text);
}
