/**
 * How each instrument is written and what sounds for it in files, fetched when staff or files are asked for.
 */
import { CATALOGUE } from '@stillroot/catalog';
import type { APIRoute } from 'astro';
import type { WrittenInstrument } from '../../islands/play-written.ts';

export const GET: APIRoute = () => {
  const written = CATALOGUE.instruments.map(
    ({ id, clef, midiProgram, musicXmlSound }): [string, WrittenInstrument] => [
      id,
      { clef, midiProgram, musicXmlSound },
    ],
  );
  return Response.json(Object.fromEntries(written));
};
