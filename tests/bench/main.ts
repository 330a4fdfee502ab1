/**
 * Figures, side by side in one run: core against the general-purpose theory library on the same scales,
 * the whole universe from nothing, rounds on six instruments, random requests across the catalogue, and
 * the solver beside exhaustive search. Medians; machines differ, ratios less.
 */
import { compareWithExhaustive, measureRequests } from './requests.ts';
import { measureRounds } from './rounds.ts';
import { compareSpelling } from './spelling.ts';
import { measureUniverse } from './universe.ts';

await compareSpelling();
measureUniverse();
await measureRounds();
measureRequests();
compareWithExhaustive();
