/**
 * What both islands share: reading choices, drawing anew when they change, and keeping the address,
 * the links and the memory in step.
 */
import type { Mode, Problem, Root } from '@stillroot/core';
import { parseRoot, UNIVERSE } from '@stillroot/core';
import { type ChooserView, chooserHtml, instrumentChoices, TYPED, tuningChoices } from '../markup/chooser.ts';
import { moreHtml } from '../markup/chooser-more.ts';
import { CHOOSER } from '../words/interface.ts';
import { problemOf } from '../words/problems.ts';
import { fetchCatalogue, type Known } from './catalogue.ts';
import { choosesAnything } from './choice-keys.ts';
import { type Choices, readChoices, writeChoices } from './choices.ts';
import {
  type Field,
  fieldOf,
  isBeingTyped,
  onChoice,
  readForm,
  showTyped,
  writeForm,
} from './chooser-form.ts';
import { carryLinks, chosenBy, openOutside } from './links.ts';
import { fieldLeft, leaveField, recall, remember } from './memory.ts';
import { type ChosenNeck, neckFrom } from './neck-from.ts';
import { scrollNecks } from './neck-scroll.ts';
import { playQuery } from './play-keys.ts';
import { otherMeaning } from './tuning-field.ts';
import { readingHtml } from './tuning-reading.ts';
import { tuningNaming } from './typed-naming.ts';
import { OF_NO_NECK, summaryWords, withoutDefaults } from './usual-choices.ts';
import { showWhole } from './whole-choice.ts';

/** An element that draws necks as its reader chooses. */
export abstract class Island extends HTMLElement {
  protected choices: Choices = readChoices(new URLSearchParams());
  private wasRenamed = false;
  private readonly summary = this.querySelector('.chooser > summary');
  private readonly usualSummary = this.summary?.textContent ?? '';

  /** Draws what was chosen into the island's picture. */
  protected abstract draw(known: Known, chosen: ChosenNeck): string;

  connectedCallback(): void {
    void this.begin();
  }

  /** Fetches what the island needs besides the catalogue. */
  protected async prepare(): Promise<void> {}

  /** What goes into the address besides the choices. */
  protected ownQuery(): URLSearchParams {
    return new URLSearchParams();
  }

  /** What is wrong with the island's own fields. */
  protected get ownProblems(): readonly Problem[] {
    return [];
  }

  /** Lets the island read fields of its own; true where it leaves the page. */
  protected takeOwn(_known: Known, _form: HTMLElement): boolean {
    return false;
  }

  /** The instrument that the page is about, or the one that its static picture shows. */
  protected get usualInstrument(): string {
    return this.dataset['instrument'] ?? '';
  }

  protected get form(): HTMLElement | undefined {
    return this.querySelector<HTMLElement>('.chooser-form') ?? undefined;
  }

  /** Within a page of somebody else, where nothing counts but the address. */
  protected get isEmbedded(): boolean {
    return this.dataset['at'] === 'embed';
  }

  protected get hasOwnInstrument(): boolean {
    return this.dataset['at'] === 'instrument';
  }

  private async begin(): Promise<void> {
    const status = this.querySelector<HTMLElement>('.status');
    try {
      const [known] = await Promise.all([fetchCatalogue(), this.prepare()]);
      if (!this.form)
        this.querySelector('.chooser')?.insertAdjacentHTML('beforeend', chooserHtml(this.chooserView(known)));
      this.fillForm();
      this.choices = this.withoutDefaults(this.startingChoices(), known);
      if (this.form) onChoice(this.form, () => this.changed(known));
      this.form?.addEventListener('submit', () => this.submitted(known));
      this.addEventListener('click', (event) => this.clicked(event, known));
      this.addEventListener('toggle', () => this.form && showWhole(this.form), true);
      const early = [...this.querySelectorAll<Field>('[data-touched]')].map(
        (field) => [field, field.value] as const,
      );
      this.redraw(known);
      this.goOnChoosing();
      void this.tellOfPlaying();
      // What was chosen while the catalogue was on its way counts as well; what is still being typed, later.
      const whole = early.filter(([field]) => !isBeingTyped(field));
      for (const [field, value] of whole) field.value = value;
      if (whole.length > 0) this.changed(known);
    } catch {
      if (status) status.textContent = CHOOSER.failed;
    }
  }

  private startingChoices(): Choices {
    const query = new URLSearchParams(location.search);
    const from = choosesAnything(query) || this.isEmbedded ? query : recall();
    // A hand is the reader's own, where nothing is said of it.
    const own = this.isEmbedded || query.has('hand') ? {} : { hand: readChoices(recall()).hand };
    const choices = { ...readChoices(from), ...own };
    if (!this.hasOwnInstrument || choices.instrument === this.usualInstrument) return choices;
    // Another instrument's tuning means nothing here.
    const isOfThis = choices.instrument === '';
    return { ...choices, ...(isOfThis ? {} : { ...OF_NO_NECK, transpose: 0, capo: 0 }), instrument: '' };
  }

  /** What the chooser offers, where the page does not hold it already. */
  protected chooserView({ instruments, plain }: Known): ChooserView {
    const usual = instruments.find(({ id }) => id === this.usualInstrument);
    return {
      ...(this.hasOwnInstrument ? {} : { instruments: instrumentChoices(plain.instruments) }),
      tunings: usual ? tuningChoices(usual) : [],
      hasFingering: this.dataset['fingering'] !== undefined,
    };
  }

  /** Adds what only a script makes use of. */
  private fillForm(): void {
    const hasRound = this.localName === 'round-island';
    const hasFingering = hasRound || this.dataset['fingering'] !== undefined;
    this.form?.querySelector('.more')?.insertAdjacentHTML('beforeend', moreHtml({ hasFingering, hasRound }));
    for (const one of this.querySelectorAll<HTMLElement>('[data-js]')) one.hidden = false;
    // What is chosen is drawn at once, so that nothing is left to be sent off.
    const submit = this.form?.querySelector('[type="submit"]');
    if (submit) submit.textContent = CHOOSER.goToPicture;
  }

  /** Where a choice in an open chooser led to this page, it is open here, too, at the same field. */
  private goOnChoosing(): void {
    const left = fieldLeft();
    const chooser = this.querySelector<HTMLDetailsElement>('details.chooser');
    if (left === '' || !chooser || !this.form) return;
    leaveField('');
    chooser.open = true;
    fieldOf(this.form, left)?.focus({ preventScroll: true });
  }

  private changed(known: Known): void {
    const { form } = this;
    if (!form || this.takeOwn(known, form)) return;
    if (fieldOf(form, 'tunings')?.value === TYPED && fieldOf(form, 'tuning')?.value === '') {
      showTyped(form, true);
      fieldOf(form, 'tuning')?.focus();
      return;
    }
    const before = this.choices;
    const now = this.withoutDefaults(readForm(form, before, known.instruments, this.usualInstrument), known);
    const isOther = now.instrument !== before.instrument;
    this.choose(isOther ? { ...now, ...OF_NO_NECK, answer: 1 } : { ...now, answer: 1 }, known);
  }

  private submitted(known: Known): void {
    this.changed(known);
    this.querySelector('.picture')?.scrollIntoView();
  }

  private clicked(event: Event, known: Known): void {
    const link =
      event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[data-choose]') : null;
    if (!link) return;
    event.preventDefault();
    const query = chosenBy(link, writeChoices(this.choices));
    const unread = Object.entries(this.choices.unread).filter(([key]) => !query.has(key));
    this.choose({ ...readChoices(query), unread: Object.fromEntries(unread) }, known);
  }

  /** Links away from the page of an instrument take it along. */
  private withInstrument(query: URLSearchParams): URLSearchParams {
    return new URLSearchParams([['instrument', this.usualInstrument], ...query]);
  }

  /** Names notes as chosen; the code for it is fetched when another naming is first asked for. */
  private async nameNotes(): Promise<void> {
    const isPlain = this.choices.names === 'english' && this.choices.accidentals === 'signs';
    if (isPlain && !this.wasRenamed) return;
    this.wasRenamed = true;
    const { applyNaming } = await import('./naming.ts');
    applyNaming(this.choices);
  }

  /** Problems whose fields are folded away, or are not on this page, are told above the picture. */
  private tellUnseen(problems: readonly Problem[]): void {
    const unseen = problems.flatMap((problem) => {
      const [name = problem.field] = problem.field.split('[');
      const field = this.form && fieldOf(this.form, name);
      return field?.checkVisibility() ? [] : problemOf(field?.labels?.[0]?.textContent, problem);
    });
    const status = this.querySelector('.status');
    if (status) status.textContent = unseen.join(' ');
  }

  /** What was chosen for the play-along and cannot be had is told before anybody plays. */
  private async tellOfPlaying(): Promise<void> {
    const query = playQuery(new URLSearchParams(location.search));
    if (query.size > 0) (await import('./play-unread.ts')).tellUnread(query);
  }

  private choose(choices: Choices, known: Known): void {
    this.choices = choices;
    const instrument = choices.instrument || this.rememberedInstrument();
    remember(writeChoices({ ...choices, instrument, answer: 1 }));
    this.redraw(known);
  }

  private rememberedInstrument(): string {
    return this.hasOwnInstrument ? this.usualInstrument : '';
  }

  private withoutDefaults(choices: Choices, known: Known): Choices {
    const { usualInstrument, usualLabels, isFingered } = this;
    return withoutDefaults(choices, { instrument: usualInstrument, labels: usualLabels, isFingered }, known);
  }

  private get isFingered(): boolean {
    return this.matches('round-island, [data-fingering]');
  }

  protected get usualLabels(): 'degrees' | 'notes' {
    return this.hasOwnInstrument ? 'notes' : 'degrees';
  }

  protected redraw(known: Known): void {
    const { choices, form } = this;
    const chosen = neckFrom(choices, known.instruments, this.usualInstrument);
    const picture = this.querySelector('.picture');
    if (picture) picture.innerHTML = this.draw(known, chosen);
    scrollNecks(this, choices.fret);
    const asked = chosen.problems.filter(({ field }) => field !== 'fret' || this.isFingered);
    const problems = [...asked, ...this.ownProblems];
    const shown = { ...choices, labels: choices.labels ?? this.usualLabels };
    if (form) {
      const other = otherMeaning(fieldOf(form, 'tuning'), choices.tuning);
      const names = { shown: choices.names, own: tuningNaming(choices) };
      writeForm(form, shown, chosen, readingHtml(chosen, known.instruments, names, other), problems);
    }
    this.tellUnseen(problems);
    if (this.summary) this.summary.textContent = summaryWords(choices, chosen) ?? this.usualSummary;
    const played = playQuery(new URLSearchParams(location.search));
    const query = new URLSearchParams([...this.ownQuery(), ...writeChoices(choices), ...played]);
    const search = query.size > 0 ? `?${query}` : '';
    history.replaceState(null, '', location.pathname + search + location.hash);
    carryLinks(document, this.hasOwnInstrument ? this.withInstrument(query) : query);
    for (const link of this.querySelectorAll<HTMLAnchorElement>('a[data-choose]'))
      link.search = String(chosenBy(link, query));
    if (this.isEmbedded) openOutside(this);
    void this.nameNotes();
    // Who plays what is drawn takes it from the address and the picture.
    this.dispatchEvent(new Event('drawn', { bubbles: true }));
  }
}

/** The mode and the root that an element's attributes name. */
export function modeAndRoot(
  steps: string,
  rootSlug: string,
): { readonly mode: Mode; readonly root: Root } | undefined {
  const mode = UNIVERSE.modesById.get(steps);
  const root = parseRoot(rootSlug);
  return mode && root.ok ? { mode, root: root.value } : undefined;
}
