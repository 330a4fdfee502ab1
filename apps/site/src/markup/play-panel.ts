/**
 * The play-along once it is at work: its bar, and the panel of everything that can be chosen.
 */
import { type Meter, NOTE_VALUES, PATTERNS } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { VOICES } from '../sound/mix.ts';
import { BACKING_NAMES, LOOP_NAMES, PATTERN_NAMES, PLAY, VALUE_NAMES, VOICE_NAMES } from '../words/play.ts';
import { type Choice, optionsHtml } from './chooser.ts';

/** A number that can be chosen, ends included. */
export interface NumberRange {
  readonly from: number;
  readonly to: number;
}

/** What the panel offers. */
export interface PanelView {
  readonly numbers: Readonly<
    Record<'tempo' | 'step' | 'top' | 'every' | 'countIn' | 'repeats' | 'rest' | 'seed', NumberRange>
  >;
  /** Whether it is a round, with modes to repeat, to rest between, and to loop. */
  readonly isRound: boolean;
}

/** The time signatures that are offered. */
const METERS = ['2/4', '3/4', '4/4', '5/4', '7/4', '6/8', '7/8', '9/8', '12/8'] as const;

/** The files that can be taken along, by their endings. */
export const FILE_KINDS = ['wav', 'mid', 'musicxml', 'txt', 'svg'] as const;

export type FileKind = (typeof FILE_KINDS)[number];

const FILE_NAMES: Readonly<Record<FileKind, string>> = {
  wav: PLAY.wav,
  mid: PLAY.midi,
  musicxml: PLAY.musicXml,
  txt: PLAY.text,
  svg: PLAY.svg,
};

/** By how much a press changes the tempo, in beats a minute. */
export const TEMPO_STEP_BPM = 5;

/** What stands in the bar beside its button: seeking, the volume, and what is heard just now. */
export function barHtml(isRound: boolean): string {
  const seek = (how: string, label: string, text: string): string =>
    `<button type="button" data-seek="${how}" aria-label="${label}" title="${label}">${text}</button>`;
  const modes = ['‹‹', '››'] as const;
  const buttons = [
    isRound ? seek('mode-back', PLAY.previousMode, modes[0]) : '',
    seek('note-back', PLAY.previousNote, '‹'),
    seek('note-on', PLAY.nextNote, '›'),
    isRound ? seek('mode-on', PLAY.nextMode, modes[1]) : '',
  ];
  const tempo = ([-TEMPO_STEP_BPM, TEMPO_STEP_BPM] as const).map((step) => {
    const label = step < 0 ? PLAY.slower : PLAY.faster;
    return `<button type="button" data-step="${step}" aria-label="${label}" title="${label}">${step < 0 ? '−' : '+'}</button>`;
  });
  return (
    `<span class="play-seek" role="group" aria-label="${PLAY.controls}">${buttons.join('')}</span>` +
    `<span class="play-seek" role="group" aria-label="${PLAY.tempo}">${tempo.join('')}</span>` +
    `<label class="play-volume"><span>${PLAY.volume}</span> <input type="range" min="0" max="100" name="volume"></label>` +
    `<p class="play-now"></p>`
  );
}

/** The panel as HTML. */
export function panelHtml({ numbers, isRound }: PanelView): string {
  const number = (name: keyof PanelView['numbers'], hint = ''): string =>
    field(name, PLAY[name], numberInput(name, numbers[name]), hint);
  const list = (
    name: 'value' | 'meter' | 'pattern' | 'loop' | 'backing' | 'metronome',
    options: readonly Choice[],
  ) => field(name, PLAY[name], `<select id="play-${name}" name="${name}">${optionsHtml(options)}</select>`);
  const groups = [
    group(PLAY.time, [
      number('tempo'),
      list('value', named(NOTE_VALUES, VALUE_NAMES)),
      list('meter', METERS.map(plain)),
      number('countIn'),
    ]),
    group(PLAY.line, [
      list('pattern', named(PATTERNS, PATTERN_NAMES)),
      number('seed'),
      ...(isRound ? [number('repeats'), number('rest')] : []),
      list('loop', entries(isRound ? LOOP_NAMES : { round: LOOP_NAMES.round, once: LOOP_NAMES.once })),
    ]),
    group(PLAY.ladder, [number('step', PLAY.ladderHint), number('top'), number('every')]),
    group(PLAY.sounds, [
      list('backing', entries(BACKING_NAMES)),
      list('metronome', entries({ on: PLAY.metronomeOn, off: PLAY.metronomeOff })),
      ...VOICES.map((voice) => field(voice, VOICE_NAMES[voice], slider(voice))),
    ]),
  ];
  const files = FILE_KINDS.map(
    (kind) => `<button type="button" data-file="${kind}">${FILE_NAMES[kind]}</button>`,
  );
  return (
    `<div class="play-panel">${groups.join('')}` +
    `<fieldset><legend>${PLAY.files}</legend><p class="hint">${PLAY.filesLead}</p><p class="play-files">${files.join('')}</p></fieldset>` +
    `<div class="cautions"><p>${PLAY.keys}</p><p>${PLAY.practice}</p></div></div>`
  );
}

/** The list of time signatures with one that is not among the usual. */
export function meterOptions({ beats, unit }: Meter): string {
  const chosen = `${beats}/${unit}`;
  const isListed = METERS.some((meter) => meter === chosen);
  return optionsHtml([...(isListed ? [] : [chosen]), ...METERS].map(plain), chosen);
}

function group(title: string, fields: readonly string[]): string {
  return `<fieldset><legend>${title}</legend><div class="fields">${fields.join('')}</div></fieldset>`;
}

function field(name: string, label: string, control: string, hint = ''): string {
  const hinted = hint === '' ? '' : `<span class="hint" id="play-hint-${name}">${hint}</span>`;
  const by = `${hint === '' ? '' : `play-hint-${name} `}play-problem-${name}`;
  const described = control.replace(' id=', ` aria-describedby="${by}" id=`);
  const problem = `<span class="problem" id="play-problem-${name}" role="status"></span>`;
  return `<div class="field" data-field="${name}"><label for="play-${name}">${label}</label>${described}${hinted}${problem}</div>`;
}

function numberInput(name: string, { from, to }: NumberRange): string {
  return `<input id="play-${name}" name="${name}" type="number" inputmode="numeric" min="${from}" max="${to}" step="1">`;
}

function slider(voice: string): string {
  return `<input id="play-${voice}" name="${voice}" type="range" min="0" max="100">`;
}

function named<T extends string>(
  values: readonly T[],
  names: Readonly<Record<T, string>>,
): readonly Choice[] {
  return values.map((value) => ({ value, text: names[value] }));
}

function entries(names: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(names).map(([value, text]) => ({ value, text }));
}

function plain(text: string): Choice {
  return { value: text, text: escapeXml(text) };
}
