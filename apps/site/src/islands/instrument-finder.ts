/**
 * The field above the list of instruments: leaves those in sight that fit what is typed, and keeps it in the
 * address.
 */
import { findInstruments } from '../search/find-instruments.ts';
import { foundWords, INSTRUMENTS } from '../words/instruments.ts';
import { fetchCatalogue } from './catalogue.ts';

/** `<instrument-finder>` around a field, a line that says how much was found, and groups of `[data-id]`. */
export class InstrumentFinder extends HTMLElement {
  connectedCallback(): void {
    const field = this.querySelector<HTMLInputElement>('input');
    if (!field) return;
    const asked = new URLSearchParams(location.search).get('find');
    if (field.value === '' && asked) field.value = asked.slice(0, field.maxLength);
    field.addEventListener('input', () => void this.find(field.value));
    void this.find(field.value);
  }

  private async find(text: string): Promise<void> {
    this.keep(text);
    const status = this.querySelector('.status');
    try {
      // Apart, so that what reads choices stays out of the first script of a page.
      const [{ plain }, { readerNaming }] = await Promise.all([
        fetchCatalogue(),
        import('./reader-choices.ts'),
      ]);
      const found = new Set(findInstruments(text, plain.instruments, readerNaming()));
      for (const one of this.querySelectorAll<HTMLElement>('[data-id]'))
        one.hidden = !found.has(one.dataset['id'] ?? '');
      for (const group of this.querySelectorAll<HTMLElement>('section'))
        group.hidden = !group.querySelector('[data-id]:not([hidden])');
      if (!status) return;
      const said = found.size === 0 ? INSTRUMENTS.notFound : foundWords(found.size, plain.instruments.length);
      status.textContent = text.trim() === '' ? '' : said;
    } catch {
      if (status) status.textContent = INSTRUMENTS.failed;
    }
  }

  private keep(text: string): void {
    const query = new URLSearchParams(location.search);
    if (text.trim() === '') query.delete('find');
    else query.set('find', text.trim());
    history.replaceState(null, '', location.pathname + (query.size > 0 ? `?${query}` : '') + location.hash);
  }
}

customElements.define('instrument-finder', InstrumentFinder);
