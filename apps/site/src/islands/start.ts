/**
 * The first script of every page: small, and it fetches the rest only when a reader chooses something or
 * comes with choices in the address or from last time.
 */
import { choosesAnything } from './choice-keys.ts';
import { readWalk } from './lesson-memory.ts';
import { fieldLeft, recall } from './memory.ts';
import { awaitPress } from './play-press.ts';

/** The code of each kind of island. */
const CODE: Readonly<Record<string, () => Promise<unknown>>> = {
  'neck-island': () => import('./neck-island.ts'),
  'round-island': () => import('./round-island.ts'),
  'compare-island': () => import('./compare-island.ts'),
  'route-island': () => import('./route-island.ts'),
  'search-island': () => import('./search-island.ts'),
  'map-island': () => import('./map-island.ts'),
  'lesson-island': () => import('./lesson-island.ts'),
  'lost-island': () => import('./lost-island.ts'),
  'instrument-finder': () => import('./instrument-finder.ts'),
};

/** What is no tempo by its look; the island that it wakes says so. */
const NO_TEMPO = /(?:tempo|top)=(?!(?:[2-9]\d|[1-3]\d\d|400)(?:&|$))/;

const island = document.querySelector<HTMLElement>(Object.keys(CODE).join());
const query = new URLSearchParams(location.search);

const take = document.querySelector<HTMLElement>('.take');
const player = document.querySelector<HTMLElement>('play-island');

if (island) start(island);
if (take) take.hidden = false;
if (player) awaitPress(player);
if (readWalk()) void import('./lesson-walk.ts');
// Until here the style sheet kept the room of what has now been shown.
document.documentElement.setAttribute('data-revealed', '');
// The link to a lesson takes this page along, as it is when the link is followed.
take?.querySelector('a[data-lesson]')?.addEventListener('click', ({ currentTarget: link }) => {
  if (link instanceof HTMLAnchorElement) {
    const { pathname, search, hash } = location;
    link.search = '';
    link.hash = `add=${encodeURIComponent(pathname + search + hash)}`;
  }
});
take?.querySelector('[data-copy]')?.addEventListener('click', ({ currentTarget }) => {
  void copyAddress(currentTarget as HTMLElement);
});
take?.querySelector('[data-print]')?.addEventListener('click', () => print());
// Another edition of this page goes on where the reader is; a link that chooses something leads to another page.
for (const link of document.querySelectorAll<HTMLAnchorElement>('.languages a'))
  if (link.search === '')
    link.addEventListener('click', () => {
      link.search = location.search;
      link.hash = location.hash;
    });
// An island that draws necks reads the choices itself and passes them on.
if (!island?.dataset['instrument'] && (query.size > 0 || recall().size > 0))
  void import('./carry-along.ts').then(({ carryAlong }) => carryAlong(query));

function start(one: HTMLElement): void {
  reveal(one);
  const { keys = '', instrument, anchors, wakes } = one.dataset;
  const wake = (): void => void CODE[one.localName]?.();
  const isChosen =
    wakes !== undefined ||
    fieldLeft() !== '' ||
    keys.split(' ').some((key) => query.has(key)) ||
    (instrument !== undefined &&
      (choosesAnything(query) || recall().size > 0 || NO_TEMPO.test(location.search))) ||
    (anchors !== undefined && location.hash !== '');
  if (isChosen) wake();
  // What was chosen before the code is there is kept for it; no form inside an island is ever sent.
  one.addEventListener('input', ({ target }) => {
    (target as Element).setAttribute('data-touched', '');
    (target as Element).removeAttribute('data-whole');
  });
  one.addEventListener('change', ({ target }) => (target as Element).setAttribute('data-whole', ''), true);
  one.addEventListener('submit', (event) => event.preventDefault());
  // A list of names is long: a field that is entered is mostly meant to hold something else.
  one.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof HTMLInputElement && target.hasAttribute('list'))) return;
    const held = target.value;
    const select = (): void => {
      clearTimeout(waiting);
      target.removeEventListener('keydown', select);
      if (target.value === held) target.select();
    };
    // After the pointer has put its mark into the text; who is quick types before that.
    const waiting = setTimeout(select);
    target.addEventListener('keydown', select);
  });
  // A finger cannot point: what it touches before the code is there is pointed at, and not followed.
  if (anchors !== undefined)
    one.addEventListener('click', (event) => {
      const mark = (event.target as Element).closest('a[id]');
      if (!mark || customElements.get(one.localName) || (event as PointerEvent).pointerType !== 'touch')
        return;
      event.preventDefault();
      history.replaceState(null, '', `#${mark.id}`);
    });
  for (const event of ['change', 'pointerover', 'focusin', 'toggle'])
    (one.querySelector('.chooser') ?? one).addEventListener(event, wake, { once: true });
}

/** Copies the address of this page, and says beside the button whether that could be done. */
async function copyAddress({ dataset, parentElement }: HTMLElement): Promise<void> {
  const status = parentElement?.querySelector('[role="status"]');
  try {
    await navigator.clipboard.writeText(location.href);
    status?.replaceChildren(dataset['copy'] ?? '');
  } catch {
    status?.replaceChildren(dataset['failed'] ?? '');
  }
}

/** Shows what works with a script, and puts away what is for readers without. */
function reveal(inside: HTMLElement): void {
  for (const one of inside.querySelectorAll<HTMLElement>('[data-js]')) one.hidden = false;
  const typed = inside.querySelector<HTMLElement>('[data-field="tuning"]');
  if (typed) typed.hidden = true;
}
