/**
 * The names of notes as the reader chose them: what the page says in English names is said in the chosen ones,
 * wherever it stands and whenever it is drawn anew.
 */
import { asciiAccidentals, type Naming, type NotesIn, renameNotes } from '../words/note-names.ts';
import type { Choices } from './choices.ts';

/** Where notes stand, and which words there are notes. The last that fits an element counts. */
const PLACES: readonly (readonly [selector: string, which: NotesIn])[] = [
  ['svg.neck title, .where b, .degrees, .neck-box[aria-label]', 'leading'],
  ['a[href*="/modes/"], option', 'leading'],
  ['svg.neck desc, svg.neck .mark text, svg.neck .open', 'all'],
  ['.formula td, .turn-notes, .moved b, .plain td, .plain tbody th span, .plain thead b', 'all'],
  ['.roots a, #choose-root option, .results .degrees', 'all'],
  ['.against b, .a-compare .facts, .a-compare h1, .a-route h1, .a-route .where b, .play-now', 'all'],
  ['.a-scale h1, .a-round h1, .a-scale .lead, .place, .a-scale .note, a[href*="/rounds/"]', 'all'],
];

/** A mark that holds a longer name than a letter and a sign gets smaller type. */
const LONG_FROM = 3;

interface Said {
  readonly original: string;
  readonly shown: string;
}

const said = new WeakMap<Text, Said>();
let naming: Naming = 'english';
let isAscii = false;
let originalTitle: string | undefined;
let watcher: MutationObserver | undefined;

/** Names the notes of the page as chosen, from now on. */
export function applyNaming({ names, accidentals }: Pick<Choices, 'names' | 'accidentals'>): void {
  const isPlain = names === 'english' && accidentals === 'signs';
  // A page that always was in English names has nothing to be turned back.
  if (isPlain && watcher === undefined) return;
  naming = names;
  isAscii = accidentals === 'ascii';
  nameWithin(document.body);
  originalTitle ??= document.title;
  const isOfNotes = document.body.matches('.a-scale, .a-round');
  document.title = inAccidentals(isOfNotes ? renameNotes(originalTitle, naming, 'all') : originalTitle);
  if (watcher) return;
  watcher = new MutationObserver((changes) => {
    for (const { addedNodes } of changes)
      for (const node of addedNodes) {
        if (node instanceof Element) nameWithin(node);
        else if (node instanceof Text) nameText(node);
      }
  });
  watcher.observe(document.body, { childList: true, subtree: true });
}

function nameWithin(inside: Element): void {
  const walker = document.createTreeWalker(inside, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (node instanceof Text) nameText(node);
  }
}

function nameText(node: Text): void {
  const before = said.get(node);
  // Text that somebody else has written meanwhile is a new original.
  const original = before?.shown === node.data ? before.original : node.data;
  if (!/[A-G♭♯𝄫𝄪♮]|-Moll/u.test(original)) return;
  const parent = node.parentElement;
  const place = parent && PLACES.findLast(([selector]) => parent.closest(selector));
  const shown = inAccidentals(place ? renameNotes(original, naming, place[1]) : original);
  if (!before && shown === original) return;
  said.set(node, { original, shown });
  if (node.data !== shown) node.data = shown;
  if (parent?.matches('.mark text'))
    parent.classList.toggle('long', shown !== original && shown.length >= LONG_FROM);
}

function inAccidentals(text: string): string {
  return isAscii ? asciiAccidentals(text) : text;
}
