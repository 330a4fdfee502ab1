import { tuningNamed } from '@stillroot/core';
import { expect, test } from 'vitest';
import { CATALOGUE } from './catalogue.ts';

test('every tuning is known by its id, and by its name where no other is called so', () => {
  for (const instrument of CATALOGUE.instruments)
    for (const tuning of instrument.tunings) {
      expect(tuningNamed(instrument, tuning.id), `${instrument.id} ${tuning.id}`).toBe(tuning);
      const [first] = instrument.tunings.filter(({ name }) => name === tuning.name);
      expect(tuningNamed(instrument, tuning.name.toUpperCase()), tuning.name).toBe(first);
    }
});
