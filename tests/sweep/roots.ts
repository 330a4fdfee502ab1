/** One everyday root for each of the twelve pitch classes: naturals, and flats between them. */
import { EVERYDAY_ROOTS, type Root } from '@stillroot/core';

export const TWELVE_ROOTS: readonly Root[] = EVERYDAY_ROOTS.filter(({ alteration }) => alteration <= 0);
