/**
 * A scale on the neck that the reader holds.
 */
import { fingeringsOf, spell } from '@stillroot/core';
import { scalePath } from '../facts/paths.ts';
import { hreflang } from '../markup/english.ts';
import { pageRoot, scaleName } from '../markup/names.ts';
import { scaleNecksHtml } from '../markup/scale-necks.ts';
import { EMBED } from '../words/lesson.ts';
import type { Known } from './catalogue.ts';
import { MOST_ANSWERS } from './choices.ts';
import { Island, modeAndRoot } from './island.ts';
import { type ChosenNeck, playingFrom } from './neck-from.ts';

/** `<neck-island data-mode data-root data-instrument>`, with `data-fingering` where one is shown. */
export class NeckIsland extends Island {
  protected override draw({ plain, nameOf }: Known, { neck }: ChosenNeck): string {
    const what = this.isEmbedded
      ? this.asked(plain)
      : modeAndRoot(this.dataset['mode'] ?? '', this.dataset['root'] ?? '');
    if (!what) return `<h1>${EMBED.none}</h1>`;
    const { labels, hand, answer: at } = this.choices;
    const scale = spell(what.mode, what.root);
    const options = { ...playingFrom(this.choices), limit: MOST_ANSWERS };
    const hasFingering = this.dataset['fingering'] !== undefined;
    const entry = nameOf(what.mode);
    const name = scaleName(what.root, entry.name);
    const path = scalePath(entry.slug, pageRoot(what.root));
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
    const own = this.isEmbedded ? ['mode', 'root'] : [];
    return new URLSearchParams(own.map((key) => [key, query.get(key) ?? '']));
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
