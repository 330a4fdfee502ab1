/**
 * A lesson: shown as its link says, changed in its form, and sent as a link, a QR code or HTML.
 */
import { embedsHtml, faultsHtml, lessonHtml, pageRowsHtml, type ShownPage } from '../markup/lesson.ts';
import { LESSON } from '../words/lesson.ts';
import { fullTitle } from '../words/titles.ts';
import { fetchCatalogue, type Known } from './catalogue.ts';
import {
  isLessonPage,
  type Lesson,
  type LessonFault,
  NO_LESSON,
  openedPages,
  pageAfter,
  readLesson,
  writeLesson,
} from './lesson-link.ts';
import { keepDraft, keepWalk, readDraft } from './lesson-memory.ts';
import { exactPage, listedPage } from './lesson-pages.ts';

/** `<lesson-island>` around the places that a lesson is written to. */
export class LessonIsland extends HTMLElement {
  private lesson: Lesson = NO_LESSON;
  private faults: readonly LessonFault[] = [];
  private known: Known | undefined;

  connectedCallback(): void {
    void this.begin();
  }

  private async begin(): Promise<void> {
    this.known = await fetchCatalogue().catch(() => undefined);
    this.read();
    // Who begins a lesson wants to call it something.
    if (writeLesson(this.lesson) === '') this.openForm();
    addEventListener('hashchange', () => this.read());
    this.addEventListener('input', () => this.typed());
    this.addEventListener('click', (event) => this.clicked(event));
    this.place('.code-part')?.addEventListener('toggle', () => void this.showCode());
  }

  /** Takes the lesson from the address; a page to be added goes into the one that was begun here. */
  private read(): void {
    const hash = location.hash.slice(1);
    const added = new URLSearchParams(hash).get('add');
    const { lesson, faults } = readLesson(added === null && hash !== '' ? hash : readDraft());
    this.lesson = lesson;
    this.faults = added === null && hash !== '' ? faults : [];
    if (added !== null) {
      const page = this.known && isLessonPage(added) ? exactPage(added, this.known) : added;
      if (isLessonPage(page))
        this.lesson = { ...lesson, pages: [...lesson.pages, pageAfter(lesson.pages, page)] };
      else this.faults = [{ kind: 'not-page', text: added }];
      this.keep();
      this.openForm();
    }
    // A lesson that is remembered stands in the address as well, which is what is sent.
    if (hash === '') this.keep();
    this.fill();
    this.draw();
  }

  private openForm(): void {
    const form = this.place<HTMLDetailsElement>('.change-part');
    if (form) form.open = true;
  }

  private typed(): void {
    const title = this.field('title')?.value.trim() ?? '';
    const note = this.field('note')?.value.trim() ?? '';
    this.change({ ...this.lesson, title, note });
  }

  private clicked(event: Event): void {
    const target = event.target instanceof Element ? event.target : undefined;
    const page = target?.closest<HTMLElement>('a[data-page]')?.dataset['page'];
    if (page !== undefined) keepWalk({ lesson: writeLesson(this.lesson), at: Number(page) });
    const button = target?.closest('button');
    const { act, at } = button?.dataset ?? {};
    if (act === 'copy') void this.copy();
    else if (act === 'anew') {
      this.change(NO_LESSON);
      this.fill();
    } else if (act !== undefined && at !== undefined) this.move(act, Number(at));
  }

  private move(act: string, at: number): void {
    const pages = [...this.lesson.pages];
    const [page] = pages.splice(at, 1);
    const to = act === 'up' ? at - 1 : at + 1;
    if (page !== undefined && act !== 'remove') pages.splice(to, 0, page);
    this.change({ ...this.lesson, pages });
    const next = act === 'remove' ? Math.min(at, pages.length - 1) : to;
    const buttons = [...this.querySelectorAll<HTMLButtonElement>(`button[data-at="${next}"]:not(:disabled)`)];
    (buttons.find((button) => button.dataset['act'] === act) ?? buttons[0])?.focus();
  }

  private change(lesson: Lesson): void {
    this.lesson = lesson;
    this.faults = [];
    this.keep();
    this.draw();
  }

  /** The address says what the lesson is; the device remembers it while it grows page by page. */
  private keep(): void {
    const text = writeLesson(this.lesson);
    keepDraft(text);
    history.replaceState(null, '', location.pathname + location.search + (text === '' ? '' : `#${text}`));
  }

  private fill(): void {
    for (const name of ['title', 'note'] as const) {
      const field = this.field(name);
      if (field) field.value = this.lesson[name];
    }
  }

  private draw(): void {
    const { lesson, known } = this;
    const opened = openedPages(lesson.pages);
    const listed = opened.map((path): ShownPage | undefined => (known ? listedPage(path, known) : { path }));
    const unknown = lesson.pages.filter((_, at) => listed[at] === undefined);
    const faults = [...this.faults, ...unknown.map((text) => ({ kind: 'not-page', text }) as const)];
    const shown = listed.map((page, at) => page ?? { path: opened[at] ?? '' });
    const heading = lesson.title === '' ? LESSON.title : lesson.title;
    const title = document.querySelector('h1');
    if (title) title.textContent = heading;
    document.title = fullTitle(heading);
    this.write(
      '.lesson',
      lessonHtml(
        lesson,
        shown.flatMap((page, at) => (listed[at] ? [{ ...page, at }] : [])),
      ),
    );
    this.write('.faults', faultsHtml(faults) + (known ? '' : `<p>${LESSON.failed}</p>`));
    this.write('.rows', pageRowsHtml(shown));
    this.write('.embeds', embedsHtml(shown, location.origin));
    const isEmpty = writeLesson(lesson) === '';
    for (const part of this.querySelectorAll<HTMLElement>('.send')) part.hidden = isEmpty;
    const link = this.field('link');
    if (link) link.value = location.href;
    void this.showCode();
  }

  private async showCode(): Promise<void> {
    const part = this.place<HTMLDetailsElement>('.code-part');
    if (!part?.open) return;
    const { codeOf } = await import('./lesson-code.ts');
    this.write('.code', codeOf(location.href, LESSON.code) ?? `<p>${LESSON.noCode}</p>`);
  }

  private async copy(): Promise<void> {
    const link = this.field('link');
    try {
      await navigator.clipboard.writeText(location.href);
      this.say(LESSON.copied);
    } catch {
      link?.select();
      this.say(LESSON.notCopied);
    }
  }

  private say(text: string): void {
    const status = this.place('.status');
    if (status) status.textContent = text;
  }

  private write(selector: string, html: string): void {
    const place = this.place(selector);
    if (place && place.innerHTML !== html) place.innerHTML = html;
  }

  private place<T extends HTMLElement = HTMLElement>(selector: string): T | undefined {
    return this.querySelector<T>(selector) ?? undefined;
  }

  private field(name: 'title' | 'note' | 'link'): HTMLInputElement | undefined {
    return this.place<HTMLInputElement>(`#lesson-${name}`);
  }
}

customElements.define('lesson-island', LessonIsland);
