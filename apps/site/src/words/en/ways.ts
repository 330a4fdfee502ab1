/**
 * The texts of links from one page to what belongs to it elsewhere. British English.
 */

export const WAYS = {
  compareWith: 'Compare with',
  routeFrom: 'Route from',
  onMap: 'On the map',
  homeFind: 'Looking for a certain scale?',
  homeSearch: 'Search by name, notes, formula or steps',
  homeMore: 'More ways in',
  mapLead: 'All 462 modes in one picture: a column is a family, height is brightness.',
  compareLead: 'Two to four scales on one root, degree by degree and on one neck.',
  routesLead: 'From one scale to another, one note by one semitone at a time.',
  searchLead: 'By name, by notes, by formula or by steps; slips of typing are forgiven.',
} as const;
