/**
 * The texts of comparisons. British English.
 */

export const COMPARE = {
  title: 'Compare scales',
  description:
    'Two to four scales on one root, degree by degree: what moves, which notes they share, and where both lie on the neck.',
  lead: 'Two to four scales on one root, degree by degree: what moves, what stays, and where it lies on the neck.',
  first: 'First scale',
  second: 'Second scale',
  third: 'Third scale, if any',
  fourth: 'Fourth scale, if any',
  without:
    'To compare scales of your own choice a script is needed. The comparisons below are there without one.',

  degreeByDegree: 'Degree by degree',
  degree: 'Degree',
  stays: 'stays',
  sameScale: 'nothing moves',
  inAllOf: 'in all of them',
  inBoth: 'in both',
  notShared: 'Not shared, in',
  onOneNeck: 'On one neck',
  keyRoot: 'the root',
  keyShared: ', drawn quietly',
  onlyIn: 'under a mark: only in',

  churchTitle: 'The church modes against each other',
  churchLead:
    'From bright to dark. A cell says which degrees move on the way from the mode at its left to the mode above it, and which way; it leads to the comparison of the two.',
  churchFrom: 'From … to …',
  basesTitle: 'Modes with a name of their own, beside the church mode they are read from',
  others: 'Compare other scales, up to four',
} as const;
