import { expect, test } from 'vitest';
import { searchFile } from '../facts/search-index.ts';
import { search } from './find.ts';
import { askedByAddress } from './lost-address.ts';
import { readyIndex } from './search-index.ts';

const index = readyIndex(searchFile());

test.each([
  ['/modes/dorain-sharp4/f-sharp/', 'dorain sharp4 in F#'],
  ['/families/harmonic_minor', 'harmonic minor'],
  ['/instruments/mandolin.html', 'mandolin'],
  ['/modes/%E0%A4%A/', '%E0%A4%A'],
  ['/modes/', ''],
])('%s asks for %s', (path, text) => {
  expect(askedByAddress(path)).toBe(text);
});

test.each([
  ['/modes/dorain/', 'Dorian'],
  ['/modes/phrygian-dominent/c/', 'Phrygian dominant'],
  ['/mode/lydian-domninant/', 'Lydian dominant'],
])('what is suggested for %s begins with %s', (path, name) => {
  const [first] = search(askedByAddress(path.replace('/mode/', '/modes/')), index).modes;
  expect(index.file.modes[first?.mode.index ?? -1]?.[2]).toBe(name);
});
