/**
 * What both islands share: reading choices, drawing anew when they change, and keeping the address,
 * the links and the memory in step.
 */
import type { Mode, Root } from '@stillroot/core';
import { parseRoot, UNIVERSE } from '@stillroot/core';
import { chooserHtml, TYPED, tuningChoices } from '../markup/chooser.ts';
import { CHOOSER } from '../words/interface.ts';
import { capitalised } from '../words/numbers.ts';
import { fetchCatalogue, type Known } from './catalogue.ts';
import { type Choices, choosesAnything, readChoices, writeChoices } from './choices.ts';
import { fieldOf, readForm, showTyped, writeForm } from './chooser-form.ts';
import { carryLinks } from './links.ts';
import { recall, remember } from './memory.ts';
import { type ChosenNeck, neckFrom, reachOf } from './neck-from.ts';

/** An element that draws necks as its reader chooses. */
export abstract class Island extends HTMLElement {
  protected choices: Choices = readChoices(new URLSearchParams());

  /** Draws what was chosen into the island's picture. */
  protected abstract draw(known: Known, chosen: ChosenNeck): string;

  connectedCallback(): void {
    void this.begin();
  }

  /** What goes into the address besides the choices. */
  protected ownQuery(): URLSearchParams {
    return new URLSearchParams();
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

  protected get hasOwnInstrument(): boolean {
    return this.dataset['at'] === 'instrument';
  }

  private async begin(): Promise<void> {
    const status = this.querySelector<HTMLElement>('.status');
    try {
      const known = await fetchCatalogue();
      if (!this.form) this.buildForm(known);
      this.choices = this.withoutDefaults(this.startingChoices(), known);
      this.form?.addEventListener('change', () => this.changed(known));
      this.form?.addEventListener('submit', (event) => this.submitted(event, known));
      this.addEventListener('click', (event) => this.clicked(event, known));
      // What was chosen while the catalogue was on its way counts as well.
      if (this.dataset['touched'] === undefined) this.redraw(known);
      else this.changed(known);
    } catch {
      if (status) status.textContent = CHOOSER.failed;
    }
  }

  private startingChoices(): Choices {
    const query = new URLSearchParams(location.search);
    const from = choosesAnything(query) ? query : recall();
    const choices = readChoices(from);
    if (!this.hasOwnInstrument || choices.instrument === this.usualInstrument) return choices;
    // Another instrument's tuning means nothing here.
    return { ...choices, instrument: '', tuning: choices.instrument === '' ? choices.tuning : '', capo: 0 };
  }

  private buildForm({ instruments, plain }: Known): void {
    const usual = instruments.find(({ id }) => id === this.usualInstrument);
    const html = chooserHtml({
      ...(this.hasOwnInstrument
        ? {}
        : { instruments: plain.instruments.map(({ id, name }) => ({ value: id, text: capitalised(name) })) }),
      tunings: tuningChoices(usual?.tunings ?? []),
      hasFingering: this.dataset['fingering'] !== undefined,
    });
    this.querySelector('.chooser')?.insertAdjacentHTML('beforeend', html);
    for (const one of this.querySelectorAll<HTMLElement>('[data-js]')) one.hidden = false;
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
    const now = this.withoutDefaults(readForm(form, before), known);
    const isOther = now.instrument !== before.instrument;
    this.choose(isOther ? { ...now, tuning: '', fret: undefined } : now, known);
  }

  private submitted(event: Event, known: Known): void {
    event.preventDefault();
    this.changed(known);
  }

  private clicked(event: Event, known: Known): void {
    const link =
      event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[data-choose]') : null;
    if (!link) return;
    event.preventDefault();
    const query = writeChoices(this.choices);
    for (const [key, value] of new URL(link.href).searchParams) query.set(key, value);
    this.choose(readChoices(query), known);
  }

  private choose(choices: Choices, known: Known): void {
    this.choices = choices;
    remember(writeChoices({ ...choices, instrument: choices.instrument || this.rememberedInstrument() }));
    this.redraw(known);
  }

  private rememberedInstrument(): string {
    return this.hasOwnInstrument ? this.usualInstrument : '';
  }

  /** Choices that say what would be drawn anyway are no choices. */
  private withoutDefaults(choices: Choices, { instruments }: Known): Choices {
    const id = choices.instrument || this.usualInstrument;
    const isFingered = this.matches('round-island, [data-fingering]');
    const isUsual = choices.labels === this.usualLabels || (choices.labels === 'fingers' && !isFingered);
    const usualTuning = instruments.find((instrument) => instrument.id === id)?.tunings[0].id;
    return {
      ...choices,
      instrument: id === this.usualInstrument ? '' : id,
      tuning: choices.tuning === usualTuning ? '' : choices.tuning,
      labels: isUsual ? undefined : choices.labels,
      reach: String(choices.reach) === this.dataset['reach'] ? undefined : choices.reach,
    };
  }

  protected get usualLabels(): 'degrees' | 'notes' {
    return this.hasOwnInstrument ? 'notes' : 'degrees';
  }

  protected redraw(known: Known): void {
    const { choices, form } = this;
    const chosen = neckFrom(choices, known.instruments, this.usualInstrument);
    const picture = this.querySelector('.picture');
    if (picture) picture.innerHTML = this.draw(known, chosen);
    if (form)
      writeForm(
        form,
        { ...choices, labels: choices.labels ?? this.usualLabels },
        chosen.instrument,
        chosen.problems,
      );
    const query = new URLSearchParams([...this.ownQuery(), ...writeChoices(choices)]);
    const search = query.size > 0 ? `?${query}` : '';
    history.replaceState(null, '', location.pathname + search + location.hash);
    carryLinks(document, writeChoices(choices));
  }
}

/** The reach to play with: what was chosen where that may be asked for. */
export function reachFor({ reach }: Choices): { readonly reachMm?: number } {
  const asked = reachOf(reach);
  return asked.ok && asked.value !== undefined ? { reachMm: asked.value } : {};
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
