/**
 * The texts of routes. British English.
 */

export const ROUTES = {
  title: 'Routes between scales',
  description:
    'From one mode to another on the same root, one note by one semitone at a time, by way of scales that have names where there are any.',
  lead: 'From one mode to another on the same root, one note by one semitone at a time. Of all the shortest ways this is the one through the best known scales.',
  fromField: 'From',
  toField: 'To',
  without:
    'To find a route between modes of your own choice a script is needed. The routes below are there without one.',
  failed: 'The names of the modes could not be fetched. The page itself is complete; try again later.',

  start: 'start',
  step: 'step',
  sameScale: 'That is the same mode: nothing moves.',
  back: 'The same way back',
  compare: 'Both ends side by side',
  others: 'Find a route between any two modes',
  moreTitle: 'More routes',
} as const;
