/**
 * A round on the neck that the reader holds. On the front page it turns to another family and root in
 * place; on a round's own page those lead to another page.
 */
import { type Mode, parseRoot, type Root, roundOf, UNIVERSE } from '@stillroot/core';
import { roundPath } from '../facts/paths.ts';
import { type ChooserView, familyChoices } from '../markup/chooser.ts';
import { hreflang } from '../markup/english.ts';
import { pageRoot } from '../markup/names.ts';
import { roundHtml } from '../markup/round.ts';
import { EMBED } from '../words/lesson.ts';
import { roundTitle } from '../words/titles.ts';
import type { Known } from './catalogue.ts';
import { carryChoices, writeChoices } from './choices.ts';
import { fieldOf } from './chooser-form.ts';
import { Island } from './island.ts';
import { leaveField } from './memory.ts';
import { type ChosenNeck, playingFrom } from './neck-from.ts';

/** `<round-island data-family data-root data-instrument data-at>` */
export class RoundIsland extends Island {
  private family = this.dataset['family'] ?? '';
  private root = this.dataset['root'] ?? '';

  override connectedCallback(): void {
    if (this.isHome || this.isEmbedded) {
      const query = new URLSearchParams(location.search);
      this.family = query.get('family') ?? this.family;
      this.root = query.get('root') ?? this.root;
    }
    super.connectedCallback();
  }

  protected override draw({ plain, nameOf }: Known, { neck }: ChosenNeck): string {
    if (this.isEmbedded && !this.isNamed(plain)) return `<h1>${EMBED.none}</h1>`;
    const { family, head, root } = this.turned(plain);
    const { labels, hand, order, sharing, compare: against } = this.choices;
    const playing = playingFrom(this.choices);
    const round = roundOf(neck, head, root, { ...playing, order, sharing });
    const view = {
      round,
      neck,
      head,
      nameOf,
      labels: labels ?? this.usualLabels,
      leftHanded: hand === 'left',
      against,
      reachMm: playing.reachMm,
      ...(sharing === 'one-area' && playing.fret !== undefined && { fromFret: playing.fret }),
      isPlayed: !this.isEmbedded,
    };
    const isOfPage = !this.isHome && !this.isEmbedded;
    if (isOfPage) return roundHtml({ ...view, headingLevel: 2 });
    const path = roundPath(family.slug, root);
    const title = `<a href="${path}"${hreflang(path)}>${roundTitle(family.name, root)}</a>`;
    if (this.isEmbedded) return `<h1>${title}</h1>${roundHtml({ ...view, headingLevel: 2 })}`;
    this.say('family', family.slug);
    this.say('root', root.slug);
    return `<h2>${title}</h2>${roundHtml({ ...view, headingLevel: 3 })}`;
  }

  protected override chooserView(known: Known): ChooserView {
    const { family, root } = this.turned(known.plain);
    const families = familyChoices(known.plain.families);
    return {
      ...super.chooserView(known),
      round: { families, family: family.slug, root },
      hasFingering: true,
    };
  }

  protected override ownQuery(): URLSearchParams {
    const query = new URLSearchParams();
    if (this.isEmbedded) return new URLSearchParams({ family: this.family, root: this.root });
    if (!this.isHome) return query;
    if (this.family !== this.dataset['family']) query.set('family', this.family);
    if (this.root !== this.dataset['root']) query.set('root', this.root);
    return query;
  }

  protected override takeOwn(_known: Known, form: HTMLElement): boolean {
    const family = fieldOf(form, 'family')?.value ?? this.family;
    const root = fieldOf(form, 'root')?.value ?? this.root;
    const isOther = family !== this.family || root !== this.root;
    this.family = family;
    this.root = root;
    const parsed = parseRoot(root);
    if (this.isHome || !isOther || !parsed.ok) return false;
    if (form.closest('details[open]')) leaveField(family !== this.dataset['family'] ? 'family' : 'root');
    location.assign(
      carryChoices(roundPath(family, parsed.value), writeChoices(this.choices), location.origin),
    );
    return true;
  }

  /** Whether family and root are those of a round. */
  private isNamed({ families }: Known['plain']): boolean {
    return families.some(({ slug }) => slug === this.family) && parseRoot(this.root).ok;
  }

  private get isHome(): boolean {
    return this.dataset['at'] === 'home';
  }

  /** The family and root in hand; those of the page where the address names none that exists. */
  private turned(plain: Known['plain']): {
    family: Known['plain']['families'][number];
    head: Mode;
    root: Root;
  } {
    const own = plain.families.find(({ slug }) => slug === this.dataset['family']) ?? plain.families[0];
    const family = plain.families.find(({ slug }) => slug === this.family) ?? own;
    const asked = parseRoot(this.root);
    const usual = parseRoot(this.dataset['root'] ?? '');
    const root = asked.ok ? pageRoot(asked.value) : usual.ok ? usual.value : undefined;
    const head = UNIVERSE.modesById.get(family?.modes[0] ?? '');
    if (!family || !root || !head) throw new Error('the page names a round');
    this.family = family.slug;
    this.root = root.slug;
    return { family, head, root };
  }

  private say(name: string, value: string): void {
    const field = this.form && fieldOf(this.form, name);
    if (field) field.value = value;
  }
}

customElements.define('round-island', RoundIsland);
