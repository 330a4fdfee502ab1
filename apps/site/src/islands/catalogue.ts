/**
 * The catalogue in the browser, fetched once and only when it is needed.
 */
import { instrumentFromPlain, type PlainCatalogue } from '@stillroot/catalog/plain';
import type { Instrument } from '@stillroot/core';
import { invariant } from '@stillroot/core';
import type { NameOf } from '../markup/names.ts';

/** What islands know of the catalogue. */
export interface Known {
  readonly plain: PlainCatalogue;
  readonly instruments: readonly Instrument[];
  readonly nameOf: NameOf;
}

let known: Promise<Known> | undefined;

/** The catalogue; rejects where it cannot be fetched, and may then be asked for again. */
export function fetchCatalogue(): Promise<Known> {
  known ??= load().catch((error: unknown) => {
    known = undefined;
    throw error;
  });
  return known;
}

async function load(): Promise<Known> {
  const answer = await fetch('/data/catalogue.json');
  if (!answer.ok) throw new Error(`the catalogue answered ${answer.status}`);
  const plain = (await answer.json()) as PlainCatalogue;
  return {
    plain,
    instruments: plain.instruments.map(instrumentFromPlain),
    nameOf: (mode) => {
      const name = plain.modes[mode.index];
      invariant(name !== undefined, `mode ${mode.id} has a name`);
      return name;
    },
  };
}
