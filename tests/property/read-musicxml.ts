/**
 * MusicXML files read by a library that knows nothing of how they were written: both staves of the one part,
 * tied notes put together again.
 */
import { type Measure, type NoteEntry, parse, STEP_SEMITONES, validate } from 'musicxml-io';

/** A note on one of the staves. */
export interface ReadNote {
  readonly startTicks: number;
  readonly durationTicks: number;
  /** Of the sound: pitches are not transposed. */
  readonly midi: number;
  /** A letter and its alteration in ASCII. */
  readonly name: string;
  readonly string: number | undefined;
  readonly fret: number | undefined;
  /** The name of a fret without a number. */
  readonly fretName: string | undefined;
  readonly finger: number | undefined;
}

/** A score. */
export interface ReadScore {
  /** What the library finds wrong with it. */
  readonly faults: readonly string[];
  readonly staff: readonly ReadNote[];
  readonly tab: readonly ReadNote[];
  readonly tempo: number | undefined;
  readonly meter: string;
  readonly clefs: readonly string[];
  /** Open strings of the tablature staff as MIDI numbers, string 1 first. */
  readonly openMidi: readonly number[];
  readonly capo: number;
  readonly midiProgram: number | undefined;
  /** Where a rehearsal mark stands, what it says, and the words beside it. */
  readonly marks: readonly { readonly ticks: number; readonly mark: string; readonly name: string }[];
  /** Bars that end with a double or a final bar line, by the ticks at which they end. */
  readonly ends: readonly { readonly ticks: number; readonly style: string }[];
  readonly totalTicks: number;
}

/** Reads a score; throws where it is none. */
export function readMusicXml(text: string): ReadScore {
  const score = parse(text);
  const [part] = score.parts;
  const [first] = part?.measures ?? [];
  const { attributes } = first ?? {};
  const barTicks = Number(attributes?.time?.beats) * ((4 * 480) / Number(attributes?.time?.beatType));
  const bars = (part?.measures ?? []).map((measure, at) => ({ measure, ticks: at * barTicks }));
  const signs = bars.flatMap(({ measure, ticks }) => signsOf(measure, ticks));
  const details = attributes?.staffDetails?.find(({ number }) => number === 2);
  return {
    faults: validate(score).errors.map(({ message }) => message),
    staff: joinTied(signs.filter(({ entry }) => entry.staff === 1)),
    tab: joinTied(signs.filter(({ entry }) => entry.staff === 2)),
    tempo: directionsOf(first).find(({ sound }) => sound?.tempo !== undefined)?.sound?.tempo,
    meter: `${attributes?.time?.beats}/${attributes?.time?.beatType}`,
    clefs: (attributes?.clef ?? []).map(
      ({ sign, line, clefOctaveChange = 0 }) => `${sign} ${line} ${clefOctaveChange}`,
    ),
    openMidi: (details?.staffTuning ?? [])
      .toSorted((a, b) => b.line - a.line)
      .map(({ tuningStep, tuningAlter, tuningOctave }) => midiOf(tuningStep, tuningOctave, tuningAlter)),
    capo: details?.capo ?? 0,
    midiProgram: score.partList.flatMap((one) =>
      one.type === 'score-part' ? (one.midiInstruments ?? []).map(({ program }) => program) : [],
    )[0],
    marks: bars.flatMap(({ measure, ticks }) =>
      directionsOf(measure).flatMap(({ directionTypes }) => {
        const mark = directionTypes.find((type) => type.kind === 'rehearsal');
        const words = directionTypes.find((type) => type.kind === 'words');
        return mark ? [{ ticks, mark: mark.text, name: words?.text ?? '' }] : [];
      }),
    ),
    ends: bars.flatMap(({ measure, ticks }) =>
      (measure.barlines ?? []).map(({ barStyle = 'none' }) => ({ ticks: ticks + barTicks, style: barStyle })),
    ),
    totalTicks: bars.length * barTicks,
  };
}

interface Sign {
  readonly ticks: number;
  readonly entry: NoteEntry;
}

/** Where each sign of a bar begins, following the library's account of it backwards and forwards. */
function signsOf({ entries }: Measure, barTicks: number): readonly Sign[] {
  let ticks = barTicks;
  return entries.flatMap((entry): readonly Sign[] => {
    if (entry.type === 'backup') ticks -= entry.duration;
    if (entry.type === 'forward') ticks += entry.duration;
    if (entry.type !== 'note') return [];
    ticks += entry.duration;
    return [{ ticks: ticks - entry.duration, entry }];
  });
}

function joinTied(signs: readonly Sign[]): readonly ReadNote[] {
  const notes: ReadNote[] = [];
  let isOpen = false;
  for (const { ticks, entry } of signs) {
    const ties = (entry.ties ?? (entry.tie ? [entry.tie] : [])).map(({ type }) => type);
    if (!entry.pitch) {
      if (isOpen) throw new Error(`a tie at ${ticks} leads into a rest`);
      continue;
    }
    const before = notes.at(-1);
    const note = noteOf(ticks, entry);
    if (ties.includes('stop') !== isOpen) throw new Error(`a tie at ${ticks} has one end`);
    if (ties.includes('stop') && before) {
      if (before.midi !== note.midi || before.name !== note.name)
        throw new Error(`a tie at ${ticks} changes its note`);
      if (before.string !== note.string || before.fret !== note.fret)
        throw new Error(`a tie at ${ticks} changes its place`);
      notes[notes.length - 1] = { ...before, durationTicks: before.durationTicks + note.durationTicks };
    } else notes.push(note);
    isOpen = ties.includes('start');
  }
  if (isOpen) throw new Error('the last note is tied to nothing');
  return notes;
}

function noteOf(ticks: number, { pitch, duration, notations = [] }: NoteEntry): ReadNote {
  if (!pitch) throw new Error('a note without a pitch');
  const technical = notations.flatMap((one) => (one.type === 'technical' ? [one] : []));
  const finger = technical.find((one) => one.technical === 'fingering')?.text;
  const alter = pitch.alter ?? 0;
  return {
    startTicks: ticks,
    durationTicks: duration,
    midi: midiOf(pitch.step, pitch.octave, alter),
    name: pitch.step + (alter < 0 ? 'b' : '#').repeat(Math.abs(alter)),
    string: technical.find((one) => one.string !== undefined)?.string,
    fret: technical.find((one) => one.fret !== undefined)?.fret,
    fretName: technical.find((one) => one.technical === 'other-technical')?.text,
    finger: finger === undefined ? undefined : Number(finger),
  };
}

function midiOf(step: string, octave: number, alter = 0): number {
  const semitones = STEP_SEMITONES[step as keyof typeof STEP_SEMITONES];
  return 12 * (octave + 1) + semitones + alter;
}

function directionsOf(measure: Measure | undefined) {
  return (measure?.entries ?? []).flatMap((entry) => (entry.type === 'direction' ? [entry] : []));
}
