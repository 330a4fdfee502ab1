/**
 * Names of tunings, by their instrument and their own id: `guitar-6/drop-d`. English ones are those of the
 * catalogue.
 */

export const TUNING_NAMES: ReadonlyMap<string, string> = new Map();
