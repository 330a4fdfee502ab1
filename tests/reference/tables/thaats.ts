/**
 * The ten thaats. In sargam a small r, g, d or n is komal (flat), m is shuddha (natural) and M tivra (sharp) Ma.
 */

export const source =
  'Wikipedia, Thaat, and the independent semitone table of the librosa library; the scheme is that of V. N. Bhatkhande, Hindustani Sangeet Paddhati (1910-1932, recalled)';

export const thirtyTwoSource =
  'N. A. Jairazbhoy, The Rags of North Indian Music (1971, recalled): two positions for each of Re, Ga, Ma, Dha and Ni make 32 thaats';

/** Name, sargam, formula, semitones, number of the mela with the same notes, church mode with the same notes. */
export const thaats: readonly (readonly [string, string, string, string, number, string | undefined])[] = [
  ['Bilawal', 'S R G m P D N', '1 2 3 4 5 6 7', '0 2 4 5 7 9 11', 29, 'Ionian'],
  ['Kalyan', 'S R G M P D N', '1 2 3 #4 5 6 7', '0 2 4 6 7 9 11', 65, 'Lydian'],
  ['Khamaj', 'S R G m P D n', '1 2 3 4 5 6 b7', '0 2 4 5 7 9 10', 28, 'Mixolydian'],
  ['Bhairav', 'S r G m P d N', '1 b2 3 4 5 b6 7', '0 1 4 5 7 8 11', 15, undefined],
  ['Purvi', 'S r G M P d N', '1 b2 3 #4 5 b6 7', '0 1 4 6 7 8 11', 51, undefined],
  ['Marwa', 'S r G M P D N', '1 b2 3 #4 5 6 7', '0 1 4 6 7 9 11', 53, undefined],
  ['Kafi', 'S R g m P D n', '1 2 b3 4 5 6 b7', '0 2 3 5 7 9 10', 22, 'Dorian'],
  ['Asavari', 'S R g m P d n', '1 2 b3 4 5 b6 b7', '0 2 3 5 7 8 10', 20, 'Aeolian'],
  ['Bhairavi', 'S r g m P d n', '1 b2 b3 4 5 b6 b7', '0 1 3 5 7 8 10', 8, 'Phrygian'],
  ['Todi', 'S r g M P d N', '1 b2 b3 #4 5 b6 7', '0 1 3 6 7 8 11', 45, undefined],
];
