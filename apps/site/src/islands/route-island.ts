/**
 * A route between two modes of the reader's choice.
 */
import { invariant, parseRoot, type Root } from '@stillroot/core';
import { routePath } from '../facts/paths.ts';
import { scalesOnRoute } from '../facts/route.ts';
import { pageRoot } from '../markup/names.ts';
import { routeHtml } from '../markup/route.ts';
import { preferenceOf, type SearchIndex } from '../search/search-index.ts';
import { modeName } from '../words/names.ts';
import { ROUTES } from '../words/routes.ts';
import { fullTitle, routeTitle } from '../words/titles.ts';
import { carryChoices, readChoices } from './choices.ts';
import { fieldOf, showProblems } from './chooser-form.ts';
import { carryLinks } from './links.ts';
import { namesFrom, offerModes, readMode } from './mode-fields.ts';
import { fetchSearchIndex } from './search-index.ts';
import { typedNaming } from './typed-naming.ts';

/** What the address may choose here, and the page's own attributes name. */
const KEYS = ['from', 'to', 'root'] as const;

type Ends = Readonly<Record<(typeof KEYS)[number], string>>;

/** `<route-island data-from data-to data-root>` */
export class RouteIsland extends HTMLElement {
  connectedCallback(): void {
    void this.begin();
  }

  private async begin(): Promise<void> {
    try {
      const index = await fetchSearchIndex();
      const { form } = this;
      offerModes(form, index);
      form.addEventListener('change', () => this.draw(this.typed(), index));
      form.addEventListener('submit', () => this.draw(this.typed(), index));
      // What was typed while the index was on its way counts as well.
      this.draw(form.querySelector('[data-touched]') === null ? this.addressed() : this.typed(), index);
    } catch {
      const status = this.querySelector('.status');
      if (status) status.textContent = ROUTES.failed;
    }
  }

  private get form(): HTMLFormElement {
    const form = this.querySelector('form');
    invariant(form !== null, 'the page has a form for routes');
    return form;
  }

  private typed(): Ends {
    const value = (key: string): string => fieldOf(this.form, key)?.value ?? '';
    return { from: value('from'), to: value('to'), root: value('root') };
  }

  private addressed(): Ends {
    const value = (key: string): string => here().get(key) || (this.dataset[key] ?? '');
    return { from: value('from'), to: value('to'), root: value('root') };
  }

  private draw(asked: Ends, index: SearchIndex): void {
    const nameOf = namesFrom(index);
    const naming = typedNaming(readChoices(here()));
    const from = readMode('from', asked.from, index, naming);
    const to = readMode('to', asked.to, index, naming);
    showProblems(
      this.form,
      [from, to].flatMap(({ problem }) => problem ?? []),
    );
    if (!from.mode || !to.mode) return;
    const root = rootOf(asked.root, this.dataset['root'] ?? '');
    const names = [nameOf(from.mode), nameOf(to.mode)] as const;
    const [{ slug: fromSlug }, { slug: toSlug }] = names;
    const slugs: Ends = { from: fromSlug, to: toSlug, root: root.slug };
    if (this.isPair && (fromSlug !== this.dataset['from'] || toSlug !== this.dataset['to'])) {
      location.assign(carryChoices(routePath(fromSlug, toSlug, root), here(), location.origin));
      return;
    }
    const stops = scalesOnRoute(from.mode, to.mode, root, (mode) => preferenceOf(index, mode));
    const picture = this.querySelector('.picture');
    if (picture) picture.innerHTML = routeHtml(stops, nameOf);
    if (!this.isPair) document.title = fullTitle(routeTitle(names[0].name, names[1].name));
    this.say({ from: modeName(names[0].name), to: modeName(names[1].name), root: root.slug });
    this.keep(slugs);
    carryLinks(document, here());
  }

  private get isPair(): boolean {
    return this.dataset['at'] === 'pair';
  }

  private say(shown: Ends): void {
    for (const key of KEYS) {
      const field = fieldOf(this.form, key);
      if (field) field.value = shown[key];
    }
  }

  /** In the address by slug, without what the page shows anyway. */
  private keep(slugs: Ends): void {
    const isUsual = (key: keyof Ends): boolean => slugs[key] === this.dataset[key];
    const own = this.isPair ? KEYS.filter((key) => !isUsual(key)) : KEYS.every(isUsual) ? [] : KEYS;
    const others = [...here()].filter(([key]) => !KEYS.some((one) => one === key));
    const query = new URLSearchParams([...own.map((key) => [key, slugs[key]]), ...others]);
    history.replaceState(null, '', location.pathname + (query.size > 0 ? `?${query}` : '') + location.hash);
  }
}

function here(): URLSearchParams {
  return new URLSearchParams(location.search);
}

function rootOf(asked: string, usual: string): Root {
  const [first, second] = [parseRoot(asked), parseRoot(usual)];
  if (first.ok) return pageRoot(first.value);
  invariant(second.ok, 'the page names a root');
  return second.value;
}

customElements.define('route-island', RouteIsland);
