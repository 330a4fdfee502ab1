/**
 * A comparison of two to four scales of the reader's choice, on the neck that the reader holds.
 */
import { invariant, type Problem, parseRoot, type Root, type Scale, spell } from '@stillroot/core';
import { compareScales } from '../facts/comparison.ts';
import { COMPARE_KEYS, comparePath } from '../facts/paths.ts';
import { comparisonHtml } from '../markup/comparison.ts';
import { type NameOf, pageRoot } from '../markup/names.ts';
import type { SearchIndex } from '../search/search-index.ts';
import { modeName } from '../words/names.ts';
import { comparisonTitle, fullTitle } from '../words/titles.ts';
import type { Known } from './catalogue.ts';
import { carryChoices, writeChoices } from './choices.ts';
import { fieldOf, isBeingTyped } from './chooser-form.ts';
import { Island } from './island.ts';
import { namesFrom, offerModes, readMode } from './mode-fields.ts';
import type { ChosenNeck } from './neck-from.ts';
import { fetchSearchIndex } from './search-index.ts';
import { typedNaming } from './typed-naming.ts';

/** `<compare-island data-modes="dorian phrygian" data-root data-instrument>`, with `data-at="pair"` on the page of one comparison. */
export class CompareIsland extends Island {
  private index: SearchIndex | undefined;
  /** What was asked for, field by field: slugs, names, whatever was typed. */
  private asked: readonly string[] = [];
  private root = '';
  private readonly usualTitle = document.querySelector('h1')?.textContent ?? '';
  private problems: readonly Problem[] = [];

  override connectedCallback(): void {
    const query = new URLSearchParams(location.search);
    const asked = COMPARE_KEYS.map((key) => query.get(key) ?? '');
    const hasOwn = !this.isPair && asked.some((text) => text !== '');
    this.asked = hasOwn ? asked : this.usualModes;
    this.root = query.get('root') ?? this.usualRoot;
    super.connectedCallback();
  }

  protected override async prepare(): Promise<void> {
    this.index = await fetchSearchIndex();
    if (this.form) offerModes(this.form, this.index);
  }

  protected override draw({ headOf }: Known, { neck }: ChosenNeck): string {
    const { labels, hand } = this.choices;
    const { scales, nameOf } = this.read();
    const names = scales.map(({ mode }) => nameOf(mode).name);
    if (!this.isPair)
      this.name(this.ownQuery().size > 0 ? comparisonTitle(names, scales[0].root) : this.usualTitle);
    return comparisonHtml({
      comparison: compareScales(scales),
      neck,
      nameOf,
      headOf,
      labels: labels ?? this.usualLabels,
      leftHanded: hand === 'left',
    });
  }

  /** The page of all comparisons is called after the one that was chosen. */
  private name(title: string): void {
    document.title = fullTitle(title);
    document.querySelector('h1')?.replaceChildren(title);
  }

  protected override ownQuery(): URLSearchParams {
    const query = new URLSearchParams();
    if (!this.isPair && this.asked.join() !== this.usualModes.join()) {
      for (const [at, text] of this.asked.entries()) if (text !== '') query.set(COMPARE_KEYS[at] ?? '', text);
    }
    if (this.root !== this.usualRoot) query.set('root', this.root);
    return query;
  }

  protected override get ownProblems(): readonly Problem[] {
    return this.problems;
  }

  protected override takeOwn(_known: Known, form: HTMLElement): boolean {
    const shown = this.asked;
    const typed = COMPARE_KEYS.map((key, at) => {
      const field = fieldOf(form, key);
      return (field && isBeingTyped(field) ? shown[at] : field?.value) ?? '';
    });
    this.root = fieldOf(form, 'root')?.value ?? this.root;
    this.asked = typed;
    if (!this.isPair) return false;
    const { root } = this.read();
    if (this.asked.join() === shown.join() || this.problems.length > 0) return false;
    const path = comparePath(
      this.asked.filter((slug) => slug !== ''),
      root,
    );
    location.assign(carryChoices(path, writeChoices(this.choices), location.origin));
    return true;
  }

  private get isPair(): boolean {
    return this.dataset['at'] === 'pair';
  }

  private get usualModes(): readonly string[] {
    const slugs = (this.dataset['modes'] ?? '').split(' ');
    return COMPARE_KEYS.map((_, at) => slugs[at] ?? '');
  }

  private get usualRoot(): string {
    return this.dataset['root'] ?? '';
  }

  /**
   * The scales that are meant. A field that cannot be read says so and keeps what it holds; where fewer
   * than two are left, the page's own stand in. What was read stands in the fields by name and in the
   * address by slug.
   */
  private read(): { scales: [Scale, Scale, ...Scale[]]; root: Root; nameOf: NameOf } {
    const { index } = this;
    invariant(index !== undefined, 'the index was fetched before anything is drawn');
    const nameOf = namesFrom(index);
    const parsed = parseRoot(this.root);
    const usual = parseRoot(this.usualRoot);
    invariant(usual.ok, 'the page names a root');
    const naming = typedNaming(this.choices);
    const readings = this.asked.map((text, at) => readMode(COMPARE_KEYS[at] ?? '', text, index, naming));
    // Who types `D Dorian` has chosen the root as well.
    const typed = readings.find((reading) => reading.root)?.root;
    const root = pageRoot(typed ?? (parsed.ok ? parsed.value : usual.value));
    this.problems = readings.flatMap(({ problem }) => problem ?? []);
    const meant = readings.flatMap(({ mode }) => mode ?? []);
    const [first, second, ...others] =
      meant.length > 1
        ? meant
        : this.usualModes.flatMap((slug) => readMode('', slug, index, naming).mode ?? []);
    invariant(first !== undefined && second !== undefined, 'the page names two modes');
    this.root = root.slug;
    for (const [at, { mode, problem }] of readings.entries()) {
      const field = this.form && fieldOf(this.form, COMPARE_KEYS[at] ?? '');
      if (field && !isBeingTyped(field))
        field.value = problem ? (this.asked[at] ?? '') : mode ? modeName(nameOf(mode).name) : '';
    }
    const rootField = this.form && fieldOf(this.form, 'root');
    if (rootField) rootField.value = root.slug;
    this.asked = readings.map(({ mode }) => (mode ? nameOf(mode).slug : ''));
    return {
      scales: [spell(first, root), spell(second, root), ...others.map((mode) => spell(mode, root))],
      root,
      nameOf,
    };
  }
}

customElements.define('compare-island', CompareIsland);
