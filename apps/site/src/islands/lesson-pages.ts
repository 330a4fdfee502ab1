/**
 * The pages of a lesson: what each is called, what was chosen on it, and how other sites show it.
 */
import { parseRoot } from '@stillroot/core';
import { COMPARE_KEYS, HOME_ROUND, pagePath, roundPath } from '../facts/paths.ts';
import { pageRoot } from '../markup/names.ts';
import { neckWords } from '../markup/playing.ts';
import { NAMING_NAMES } from '../words/choices.ts';
import { CHOOSER, NAVIGATION, ORDER_NAMES, STYLE_NAMES } from '../words/interface.ts';
import { instrumentName, modeName, scaleOn } from '../words/names.ts';
import { styleFrom } from '../words/necks.ts';
import { capitalised } from '../words/numbers.ts';
import { pairName } from '../words/sentences.ts';
import { comparisonTitle, roundTitle, routeTitle } from '../words/titles.ts';
import type { Known } from './catalogue.ts';
import { choosesAnything } from './choice-keys.ts';
import { readChoices } from './choices.ts';
import { neckFrom } from './neck-from.ts';

/** A page as a lesson lists it. */
export interface ListedPage {
  readonly path: string;
  readonly title: string;
  /** What was chosen, in words; empty where nothing on the page depends on it. */
  readonly choices: string;
  /** The address of its picture for other sites, where it has one. */
  readonly embed: string | undefined;
}

/**
 * A page with its instrument named, so that it opens alike for a reader whose device remembers another one.
 * Pages that draw no neck stay as they are.
 */
export function exactPage(path: string, { plain }: Known): string {
  const address = roundOfHome(new URL(path, location.origin), plain);
  const { room, first } = partsOf(address);
  const draws = ['', 'rounds', 'modes', 'compare', 'instruments'].includes(room);
  const isList = room !== '' && room !== 'compare' && first === undefined;
  if (!draws || isList || choosesAnything(address.searchParams))
    return address.pathname + address.search + address.hash;
  const own = room === 'instruments' ? first : plain.instruments[0]?.id;
  if (own !== undefined) address.searchParams.set('instrument', own);
  return address.pathname + address.search + address.hash;
}

/** A page in words; undefined where there is no such page. */
export function listedPage(path: string, known: Known): ListedPage | undefined {
  const address = new URL(path, location.origin);
  const title = titleOf(address, known);
  if (title === undefined) return undefined;
  return { path, title, choices: choicesOf(address, known), embed: embedOf(address) };
}

/** What the front page draws has a page of its own, where nothing stands before it; in English, as rounds are. */
function roundOfHome(address: URL, { families }: Known['plain']): URL {
  const drawn = address.pathname === '/' ? roundOf(address) : undefined;
  const root = parseRoot(drawn?.root ?? '');
  if (!drawn || !root.ok || !families.some(({ slug }) => slug === drawn.family)) return address;
  const round = new URL(address);
  round.pathname = roundPath(drawn.family, pageRoot(root.value));
  for (const key of ['family', 'root']) round.searchParams.delete(key);
  return round;
}

function partsOf({ pathname }: URL): { room: string; first: string | undefined; second: string | undefined } {
  const parts = pathname.split('/').filter((part) => part !== '');
  const [room = '', first, second] = /^[a-z]{2}$/.test(parts[0] ?? '') ? parts.slice(1) : parts;
  return { room, first, second };
}

/** The round that an address draws, where it draws one; the front page's, where it names no other. */
function roundOf(address: URL): { family: string; root: string } | undefined {
  const { room, first, second } = partsOf(address);
  if (room === 'rounds' && first !== undefined) return { family: first, root: second ?? '' };
  if (room !== '') return undefined;
  const { searchParams } = address;
  return {
    family: searchParams.get('family') ?? HOME_ROUND.family,
    root: searchParams.get('root') ?? HOME_ROUND.root,
  };
}

function titleOf(address: URL, { plain, instruments }: Known): string | undefined {
  const { room, first, second } = partsOf(address);
  const { searchParams } = address;
  const familyOf = (slug: string | null | undefined) => plain.families.find((one) => one.slug === slug);
  const rootOf = (slug: string | null | undefined) => {
    const root = parseRoot(slug ?? '');
    return root.ok ? root.value : undefined;
  };
  const round = roundOf(address);
  if (round) {
    const family = familyOf(round.family);
    const root = rootOf(round.root);
    return family && root && roundTitle(family.name, root);
  }
  if (room === 'compare' && first === undefined) {
    const asked = COMPARE_KEYS.map((key) => plain.modes.find(({ slug }) => slug === searchParams.get(key)));
    const names = asked.flatMap((mode) => mode?.name ?? []);
    const root = rootOf(searchParams.get('root') ?? HOME_ROUND.root);
    if (names.length > 1 && root) return comparisonTitle(names, root);
  }
  const [from, to] = endsOf(room, first).map((slug) => plain.modes.find((mode) => mode.slug === slug)?.name);
  if (from !== undefined && to !== undefined)
    return room === 'routes' ? routeTitle(from, to) : pairName(modeName(from), modeName(to));
  if (first === undefined) return Object.entries(NAVIGATION).find(([name]) => name === room)?.[1];
  const root = rootOf(second);
  if (second !== undefined && !root) return undefined;
  switch (room) {
    case 'modes': {
      const mode = plain.modes.find(({ slug }) => slug === first);
      return mode && (root ? scaleOn(root.name, mode.name) : modeName(mode.name));
    }
    case 'families': {
      const family = familyOf(first);
      return family && capitalised(modeName(family.name));
    }
    case 'instruments': {
      const instrument = instruments.find(({ id }) => id === first);
      return instrument && capitalised(instrumentName(instrument));
    }
    default:
      return capitalised(first.replaceAll('-', ' '));
  }
}

/** The slugs of the two modes of a comparison or a route with a page of its own. */
function endsOf(room: string, pair = ''): readonly string[] {
  return room === 'compare' ? pair.split('-and-') : room === 'routes' ? pair.split('-to-') : [];
}

function choicesOf(address: URL, { instruments }: Known): string {
  const { room, first } = partsOf(address);
  if (!choosesAnything(address.searchParams)) return '';
  const choices = readChoices(address.searchParams);
  const usual = (room === 'instruments' ? first : undefined) ?? instruments[0]?.id ?? '';
  const { neck } = neckFrom(choices, instruments, usual);
  const { style, fret, order, hand, names } = choices;
  return [
    neckWords(neck),
    ...(fret === undefined
      ? style === 'position'
        ? []
        : [STYLE_NAMES[style]]
      : [styleFrom(STYLE_NAMES[style], fret)]),
    ...(order === 'parent' ? [] : [ORDER_NAMES[order]]),
    ...(hand === 'left' ? [CHOOSER.left] : []),
    ...(names === 'english' ? [] : [NAMING_NAMES[names]]),
  ].join('; ');
}

/** Where the picture of a round or a scale stands by itself. */
function embedOf(address: URL): string | undefined {
  const { room, first, second } = partsOf(address);
  const round = roundOf(address);
  const query = new URLSearchParams(address.search);
  if (round) return embedPath('round', round, query);
  return room === 'modes' && first && second
    ? embedPath('scale', { mode: first, root: second }, query)
    : undefined;
}

function embedPath(
  kind: 'round' | 'scale',
  own: Readonly<Record<string, string>>,
  query: URLSearchParams,
): string {
  const rest = [...query].filter(([key]) => !(key in own));
  return `${pagePath(`/embed/${kind}/`)}?${new URLSearchParams([...Object.entries(own), ...rest])}`;
}
