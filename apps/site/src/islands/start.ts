/**
 * The first script of every page: small, and it fetches the rest only when a reader chooses something or
 * comes with choices in the address or from last time.
 */
import { CHOICE_KEYS, choosesAnything } from './choices.ts';
import { recall } from './memory.ts';

const island = document.querySelector<HTMLElement>('neck-island, round-island');

if (island) {
  reveal(island);
  const here = new URL(location.href);
  const isRoundChosen =
    island.matches('[data-at="home"]') && ['family', 'root'].some((key) => here.searchParams.has(key));
  if (choosesAnything(here.searchParams) || isRoundChosen || recall().size > 0) wake();
  island.addEventListener('change', () => island.setAttribute('data-touched', ''));
  for (const event of ['change', 'pointerover', 'focusin', 'toggle'])
    island.querySelector('.chooser')?.addEventListener(event, wake, { once: true });
} else {
  carryAlong();
}

function wake(): void {
  void import('./islands.ts');
}

/** Shows what works with a script, and puts away what is for readers without. */
function reveal(inside: HTMLElement): void {
  for (const one of inside.querySelectorAll<HTMLElement>('[data-js]')) one.hidden = false;
  const typed = inside.querySelector<HTMLElement>('[data-field="tuning"]');
  if (typed) typed.hidden = true;
}

/** On pages that draw nothing, choices in the address are passed on to the links. */
async function carryAlong(): Promise<void> {
  const here = new URL(location.href);
  if (!CHOICE_KEYS.some((key) => here.searchParams.has(key))) return;
  const { carryLinks } = await import('./links.ts');
  carryLinks(document, here.searchParams);
}
