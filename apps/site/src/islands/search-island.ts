/**
 * The search: finds while its reader types, and keeps what was typed in the address.
 */
import { searchResultsHtml, searchSummary } from '../markup/search-results.ts';
import { search } from '../search/find.ts';
import { SEARCH } from '../words/search.ts';
import { type Choices, readChoices, writeChoices } from './choices.ts';
import { carryChosen } from './links.ts';
import { readerChoices } from './reader-choices.ts';
import { fetchSearchIndex } from './search-index.ts';
import { typedNaming } from './typed-naming.ts';

/** How long typing must rest before what was found is told to those who hear the page. */
const REST_MS = 600;

/** `<search-island>` around a form with one field, a line that says how much was found, and the results. */
export class SearchIsland extends HTMLElement {
  private telling: ReturnType<typeof setTimeout> | undefined;
  private shown: string | undefined;
  private choices: Choices = readChoices(new URLSearchParams());

  connectedCallback(): void {
    const { field } = this;
    const typedElsewhere = new URLSearchParams(location.search).get('q');
    this.choices = readerChoices();
    if (field.value === '' && typedElsewhere) field.value = typedElsewhere;
    field.addEventListener('input', () => void this.find());
    this.querySelector('form')?.addEventListener('submit', () => void this.find());
    this.addEventListener('click', (event) => this.clicked(event));
    void this.find();
  }

  private get field(): HTMLInputElement {
    const field = this.querySelector<HTMLInputElement>('input[name="q"]');
    if (!field) throw new Error('the search has a field');
    return field;
  }

  /** The examples search in place. */
  private clicked(event: MouseEvent): void {
    const link =
      event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[data-try]') : null;
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    this.field.value = new URL(link.href).searchParams.get('q') ?? '';
    this.field.focus();
    void this.find();
  }

  private async find(): Promise<void> {
    const typed = this.field.value.trim();
    this.keep(typed);
    if (typed === '') {
      this.show('', '');
      return;
    }
    try {
      const index = await fetchSearchIndex();
      // While the index was on its way, more may have been typed.
      if (typed !== this.field.value.trim()) return;
      const result = search(typed, index, typedNaming(this.choices));
      this.show(searchResultsHtml(result, index, this.choices.names), searchSummary(result));
      carryChosen(this);
    } catch {
      this.show('', SEARCH.failed);
    }
  }

  private keep(typed: string): void {
    const query = new URLSearchParams(location.search);
    query.delete('q');
    // The text means the same to whom the address is sent.
    const names = writeChoices(this.choices).get('names');
    if (names !== null && typed !== '') query.set('names', names);
    const search = new URLSearchParams([
      ...(typed === '' ? [] : [['q', typed] as [string, string]]),
      ...query,
    ]);
    history.replaceState(null, '', location.pathname + (search.size > 0 ? `?${search}` : '') + location.hash);
  }

  private show(html: string, summary: string): void {
    const results = this.querySelector('.results');
    // What is there already stays, and with it the place of somebody who goes through it by keyboard.
    if (results && html !== this.shown) results.innerHTML = html;
    this.shown = html;
    clearTimeout(this.telling);
    this.telling = setTimeout(() => {
      const status = this.querySelector('.status');
      if (status) status.textContent = summary;
    }, REST_MS);
  }
}

customElements.define('search-island', SearchIsland);
