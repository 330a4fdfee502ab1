/**
 * The catalogue in the browser, fetched once and only when it is needed.
 */
import { instrumentFromPlain, type PlainCatalogue } from '@stillroot/catalog/plain';
import type { Instrument } from '@stillroot/core';
import { invariant, UNIVERSE } from '@stillroot/core';
import type { HeadOf } from '../markup/comparison.ts';
import type { NameOf } from '../markup/names.ts';

/** What islands know of the catalogue. */
export interface Known {
  readonly plain: PlainCatalogue;
  readonly instruments: readonly Instrument[];
  readonly nameOf: NameOf;
  readonly headOf: HeadOf;
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
  const heads = new Map(
    plain.families.flatMap(({ name, modes: [first = ''] }) => {
      const head = UNIVERSE.modesById.get(first);
      return head ? [[head.familyId, { head, familyName: name }] as const] : [];
    }),
  );
  return {
    plain,
    instruments: plain.instruments.map(instrumentFromPlain),
    nameOf: (mode) => {
      const name = plain.modes[mode.index];
      invariant(name !== undefined, `mode ${mode.id} has a name`);
      return name;
    },
    headOf: ({ id, familyId }) => {
      const head = heads.get(familyId);
      invariant(head !== undefined, `mode ${id} has a family`);
      return head;
    },
  };
}
