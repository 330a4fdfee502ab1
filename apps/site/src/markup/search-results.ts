/**
 * What a search found, as lists of links.
 */
import type { Scale } from '@stillroot/core';
import { escapeXml } from '@stillroot/notation';
import { familyPath, instrumentPath, modePath, roundPath, scalePath, searchPath } from '../facts/paths.ts';
import type { ModeHit, SearchResult } from '../search/find.ts';
import type { StoredFamily } from '../search/search-file.ts';
import type { InstrumentHit, SearchIndex } from '../search/search-index.ts';
import { instrumentName, modeName, nameForms } from '../words/names.ts';
import { fromFret } from '../words/necks.ts';
import type { Naming } from '../words/note-names.ts';
import { capitalised, counted } from '../words/numbers.ts';
import { SEARCH } from '../words/search.ts';
import { found as foundWords } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';
import { roundTitle } from '../words/titles.ts';
import { tuningName } from '../words/tunings.ts';
import { hreflang } from './english.ts';
import { pageRoot, scaleName } from './names.ts';

/** The most of each kind that are listed. */
const MOST_MODES = 42;
const MOST_OTHERS = 12;

/**
 * The lists in HTML, those of what was found only.
 * @param names how the page names notes; a text in other names is told in English ones where it has those
 */
export function searchResultsHtml(
  result: SearchResult,
  index: SearchIndex,
  names: Naming = 'english',
): string {
  const { asked, modes, families, instruments, on, fret } = result;
  const kind = asked.for === 'notes' || asked.root ? SEARCH.scales : SEARCH.modes;
  const heading = [
    kind,
    ...(on ? [escapeXml(instrumentWords(on))] : []),
    ...(fret === undefined ? [] : [fromFret(fret)]),
  ].join(', ');
  const tunings = list(SEARCH.instruments, instruments, MOST_OTHERS, instrumentItem);
  const lists = [
    list(heading, modes, MOST_MODES, (hit) => modeItem(hit, index, result)),
    list(SEARCH.families, families, MOST_OTHERS, (family) => familyItem(family, result)),
  ];
  // A few tunings with these very open strings would be lost after hundreds of scales.
  const all = asked.for === 'notes' ? [tunings, ...lists] : [...lists, tunings];
  return readAs(result, names) + (all.join('') || `<p>${SEARCH.nothingLead}</p>`);
}

/** Says how notes in other names were taken, and of a B that could be the English one, which offers that. */
function readAs({ inEnglish, withEnglishB }: SearchResult, names: Naming): string {
  if (withEnglishB !== undefined) {
    const link = `<a href="${escapeXml(searchPath(withEnglishB))}" rel="nofollow" data-try>${escapeXml(withEnglishB)}</a>`;
    return `<p class="note">${SEARCH.tookB} ${link}</p>`;
  }
  if (inEnglish === undefined || names !== 'english') return '';
  return `<p class="note">${SEARCH.inEnglish} <b>${escapeXml(signs(inEnglish))}</b></p>`;
}

/** What was found, in one line: `7 scales found`. */
export function searchSummary({ asked, modes, families, instruments }: SearchResult): string {
  const isScales = asked.for === 'notes' || asked.root !== undefined;
  const counts = [
    [modes.length, isScales ? SEARCH.scale : SEARCH.mode],
    [families.length, SEARCH.family],
    [instruments.length, SEARCH.instrument],
  ] as const;
  const found = counts
    .filter(([count]) => count > 0)
    .map(([count, nouns]) => counted(count, nouns[0], nouns[1]));
  return found.length > 0 ? foundWords(found.join(', ')) : SEARCH.nothing;
}

function list<T>(heading: string, hits: readonly T[], most: number, item: (hit: T) => string): string {
  if (hits.length === 0) return '';
  const count =
    hits.length > most ? `${SEARCH.firstOf} ${most} ${SEARCH.of} ${hits.length}` : String(hits.length);
  const items = hits.slice(0, most).map((hit) => `<li>${item(hit)}</li>`);
  return `<section><h2>${heading} <span class="note">${count}</span></h2><ul class="plain-list columns">${items.join('')}</ul></section>`;
}

function modeItem({ mode, scale, alias, missing }: ModeHit, { file }: SearchIndex, where: Where): string {
  const [, slug = '', name = ''] = file.modes[mode.index] ?? [];
  const path = (scale ? scalePath(slug, pageRoot(scale.root)) : modePath(slug)) + queryOf(where);
  const title = scale ? scaleName(scale.root, name) : modeName(name);
  const other =
    alias && !nameForms(name).includes(signs(alias))
      ? ` <span>${SEARCH.alsoCalled} ${escapeXml(signs(alias))}</span>`
      : '';
  const lacking = missing > 0 ? ` <span>${SEARCH.lacks} ${missing} ${SEARCH.ofTheNotes}</span>` : '';
  return `${link(path, title)}${other}${lacking}<br><span class="degrees">${scale ? notesOf(scale) : signs(mode.formula.join(' '))}</span>`;
}

/** `Mandolin`, `Seven-string guitar, Drop A` */
function instrumentWords({ instrument: [id, [name = '']], tuning }: InstrumentHit): string {
  const instrument = capitalised(instrumentName({ id, name }));
  return tuning ? `${instrument}, ${tuningName({ id }, { id: tuning[0], name: tuning[1] })}` : instrument;
}

/** The instrument and the fret that something is wanted on. */
type Where = Pick<SearchResult, 'on' | 'fret'>;

function queryOf({ on, fret }: Where): string {
  const query = new URLSearchParams({
    ...(on && { instrument: on.instrument[0], ...(on.tuning && { tuning: on.tuning[0] }) }),
    ...(fret !== undefined && { fret: String(fret) }),
  });
  return query.size > 0 ? `?${query}` : '';
}

function notesOf({ readable }: Scale): string {
  return signs(readable.join(' '));
}

/** A family, and its round where a root was named. */
function familyItem([, slug, name]: StoredFamily, { asked: { root }, ...where }: SearchResult): string {
  const round = root
    ? `${link(roundPath(slug, pageRoot(root)) + queryOf(where), roundTitle(name, pageRoot(root)))}<br>`
    : '';
  return `${round}${link(familyPath(slug), capitalised(modeName(name)))}<br><span>${SEARCH.familyOf}</span>`;
}

function instrumentItem({ instrument: [id, [name = '']], tuning }: InstrumentHit): string {
  if (!tuning) return link(instrumentPath(id), capitalised(instrumentName({ id, name })));
  const [tuningId, tuned, strings] = tuning;
  const path = `${instrumentPath(id)}?tuning=${encodeURIComponent(tuningId)}`;
  return `${link(path, tuningName({ id }, { id: tuningId, name: tuned }))} <span>${SEARCH.tuningOf} ${escapeXml(instrumentName({ id, name }))}</span><br><span class="degrees">${signs(strings)}</span>`;
}

function link(path: string, text: string): string {
  return `<a href="${escapeXml(path)}"${hreflang(path)}>${escapeXml(text)}</a>`;
}
