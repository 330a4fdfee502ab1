/**
 * On the page that stands for pages that are not there: names near the one in the address, from the index of
 * the search.
 */
import { englishPath } from '../facts/editions.ts';
import { searchResultsHtml } from '../markup/search-results.ts';
import { search } from '../search/find.ts';
import { askedByAddress } from '../search/lost-address.ts';
import { carryChosen } from './links.ts';
import { fetchSearchIndex } from './search-index.ts';

/** The most of each kind that are suggested. */
const MOST = 5;

/** `<lost-island>` around a heading and the place for what is suggested, hidden until there is any. */
export class LostIsland extends HTMLElement {
  connectedCallback(): void {
    // Without suggestions the page is whole, so a failure needs no word.
    this.suggest().catch(() => undefined);
  }

  private async suggest(): Promise<void> {
    const text = askedByAddress(englishPath(location.pathname));
    if (text === '') return;
    const index = await fetchSearchIndex();
    const result = search(text, index);
    const modes = result.modes.slice(0, MOST);
    const families = result.families.slice(0, MOST);
    const instruments = result.instruments.slice(0, MOST);
    const results = this.querySelector('.results');
    if (!results || modes.length + families.length + instruments.length === 0) return;
    results.innerHTML = searchResultsHtml({ ...result, modes, families, instruments }, index);
    this.hidden = false;
    carryChosen(this);
  }
}

customElements.define('lost-island', LostIsland);
