/**
 * A scale on the neck that the reader holds.
 */
import { fingeringsOf, parseRoot, type Scale, spell } from '@stillroot/core';
import { scalePath } from '../facts/paths.ts';
import { hreflang } from '../markup/english.ts';
import { formulaHtml } from '../markup/formula.ts';
import { pageRoot, scaleName } from '../markup/names.ts';
import { scaleNecksHtml } from '../markup/scale-necks.ts';
import { EMBED } from '../words/lesson.ts';
import { onRoot } from '../words/sentences.ts';
import { signs } from '../words/signs.ts';
import type { Known } from './catalogue.ts';
import { MOST_ANSWERS } from './choices.ts';
import { Island, modeAndRoot } from './island.ts';
import { type ChosenNeck, playingFrom } from './neck-from.ts';

/** `<neck-island data-mode data-root data-instrument>`, with `data-fingering` where one is shown. */
export class NeckIsland extends Island {
  protected override draw({ plain, nameOf }: Known, { neck }: ChosenNeck): string {
    const what = this.isEmbedded ? this.asked(plain) : modeAndRoot(this.dataset['mode'] ?? '', this.rootSlug);
    if (!what) return `<h1>${EMBED.none}</h1>`;
    const { labels, hand, answer: at } = this.choices;
    const scale = spell(what.mode, what.root);
    const options = { ...playingFrom(this.choices), limit: MOST_ANSWERS };
    const hasFingering = this.dataset['fingering'] !== undefined;
    const entry = nameOf(what.mode);
    const name = scaleName(what.root, entry.name);
    const path = scalePath(entry.slug, pageRoot(what.root));
    if (this.takesRoot) this.sayRoot(scale);
    const heading = this.isEmbedded ? `<h1><a href="${path}"${hreflang(path)}>${name}</a></h1>` : '';
    const necks = scaleNecksHtml({
      neck,
      scale,
      name,
      labels: labels ?? this.usualLabels,
      leftHanded: hand === 'left',
      at,
      ...(options.fret !== undefined && { fromFret: options.fret }),
      ...(options.reachMm !== undefined && { reachMm: options.reachMm }),
      headingLevel: this.isEmbedded ? 2 : 3,
      ...(hasFingering && { answer: fingeringsOf(neck, scale, options) }),
    });
    return heading + necks;
  }

  protected override ownQuery(): URLSearchParams {
    const query = new URLSearchParams(location.search);
    if (this.takesRoot)
      return new URLSearchParams(this.rootSlug === this.dataset['root'] ? {} : { root: this.rootSlug });
    const own = this.isEmbedded ? ['mode', 'root'] : [];
    return new URLSearchParams(own.map((key) => [key, query.get(key) ?? '']));
  }

  /** Whether the page stands for a mode on any root, and shows it on the one that its address names. */
  private get takesRoot(): boolean {
    return this.dataset['keys'] === 'root';
  }

  private get rootSlug(): string {
    const own = this.dataset['root'] ?? '';
    const asked = parseRoot(new URLSearchParams(location.search).get('root') ?? '');
    return this.takesRoot && asked.ok ? pageRoot(asked.value).slug : own;
  }

  /** What stands around the neck says the root that the neck is drawn for. */
  private sayRoot(scale: Scale): void {
    const place = this.parentElement;
    const said = place?.querySelector('[data-root]:not(neck-island)');
    if (said) said.textContent = onRoot(signs(scale.root.name));
    const formula = place?.querySelector('.table-box:has(> .formula)');
    if (formula) formula.outerHTML = formulaHtml(scale);
    const strings = place?.querySelector<HTMLElement>('[data-on-page-root]');
    if (strings) strings.hidden = scale.root.slug !== this.dataset['root'];
  }

  /** The scale that the address of a page for another site names, by slug or by steps. */
  private asked({ modes }: Known['plain']): ReturnType<typeof modeAndRoot> {
    const query = new URLSearchParams(location.search);
    const name = query.get('mode') ?? '';
    const mode = modes.find(({ slug, id }) => slug === name || id === name);
    return modeAndRoot(mode?.id ?? '', query.get('root') ?? '');
  }
}

customElements.define('neck-island', NeckIsland);
