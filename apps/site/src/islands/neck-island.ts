/**
 * A scale on the neck that the reader holds.
 */
import { fingeringsOf, spell } from '@stillroot/core';
import { scaleName } from '../markup/names.ts';
import { scaleNecksHtml } from '../markup/scale-necks.ts';
import type { Known } from './catalogue.ts';
import { Island, modeAndRoot, reachFor } from './island.ts';
import type { ChosenNeck } from './neck-from.ts';

/** `<neck-island data-mode data-root data-instrument>`, with `data-fingering` where one is shown. */
export class NeckIsland extends Island {
  protected override draw({ nameOf }: Known, { neck }: ChosenNeck): string {
    const what = modeAndRoot(this.dataset['mode'] ?? '', this.dataset['root'] ?? '');
    if (!what) return '';
    const { labels, hand, style, fret } = this.choices;
    const scale = spell(what.mode, what.root);
    const options = { style, limit: 1, ...(fret !== undefined && { fret }), ...reachFor(this.choices) };
    const hasFingering = this.dataset['fingering'] !== undefined;
    return scaleNecksHtml({
      neck,
      scale,
      name: scaleName(what.root, nameOf(what.mode).name),
      labels: labels ?? this.usualLabels,
      leftHanded: hand === 'left',
      ...(hasFingering && { answer: fingeringsOf(neck, scale, options) }),
    });
  }
}
