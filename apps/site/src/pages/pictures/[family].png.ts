/**
 * The picture that stands beside links to a family's pages, made at build time: its seven modes, from bright
 * to dark. It holds no words, so it is the same in every language.
 */
import { Resvg } from '@resvg/resvg-js';
import { CATALOGUE, type FamilyEntry } from '@stillroot/catalog';
import type { APIRoute } from 'astro';
import { familyPicture } from '../../markup/family-picture.ts';
import { LANGUAGE } from '../../words/language.ts';

export function getStaticPaths() {
  if (LANGUAGE !== 'en') return [];
  return CATALOGUE.families.map((family) => ({ params: { family: family.slug }, props: { family } }));
}

export const GET: APIRoute<{ readonly family: FamilyEntry }> = ({ props }) => {
  const image = new Resvg(familyPicture(props.family), {
    font: { loadSystemFonts: false },
    fitTo: { mode: 'width', value: 800 },
  }).render();
  return new Response(new Uint8Array(image.asPng()), { headers: { 'content-type': 'image/png' } });
};
