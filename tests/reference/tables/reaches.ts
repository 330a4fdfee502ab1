/**
 * How far a hand reaches that covers several frets, first and last included, in millimetres.
 */

export const source =
  'computed from d(n) = L (1 - 2^(-n/12)), rounded to a tenth of a millimetre; not published';

/** Scale, its length, fret of the first finger, spans of 3, 4, 5, 6 and 7 frets. */
export const reaches: readonly (readonly [string, number, number, readonly number[]])[] = [
  ['mandolin', 352.0, 1, [36.2, 52.9, 68.5, 83.3, 97.3]],
  ['mandolin', 352.0, 5, [28.8, 42.0, 54.4, 66.1, 77.2]],
  ['mandolin', 352.0, 7, [25.6, 37.4, 48.5, 58.9, 68.8]],
  ['mandolin', 352.0, 9, [22.8, 33.3, 43.2, 52.5, 61.3]],
  ['mandolin', 352.0, 12, [19.2, 28.0, 36.3, 44.1, 51.5]],
  ['concert ukulele', 381.0, 1, [39.2, 57.2, 74.2, 90.2, 105.3]],
  ['concert ukulele', 381.0, 5, [31.1, 45.4, 58.9, 71.6, 83.6]],
  ['concert ukulele', 381.0, 7, [27.7, 40.5, 52.5, 63.8, 74.5]],
  ['concert ukulele', 381.0, 9, [24.7, 36.0, 46.7, 56.8, 66.4]],
  ['concert ukulele', 381.0, 12, [20.8, 30.3, 39.3, 47.8, 55.8]],
  ['guitar 648 mm', 648.0, 1, [66.7, 97.3, 126.2, 153.4, 179.1]],
  ['guitar 648 mm', 648.0, 5, [53.0, 77.2, 100.1, 121.8, 142.2]],
  ['guitar 648 mm', 648.0, 7, [47.2, 68.8, 89.2, 108.5, 126.7]],
  ['guitar 648 mm', 648.0, 9, [42.0, 61.3, 79.5, 96.7, 112.9]],
  ['guitar 648 mm', 648.0, 12, [35.3, 51.5, 66.8, 81.3, 94.9]],
  ['baritone guitar 686 mm', 686.0, 1, [70.6, 103.0, 133.6, 162.4, 189.6]],
  ['baritone guitar 686 mm', 686.0, 5, [56.1, 81.8, 106.0, 128.9, 150.5]],
  ['baritone guitar 686 mm', 686.0, 7, [50.0, 72.8, 94.5, 114.9, 134.1]],
  ['baritone guitar 686 mm', 686.0, 9, [44.5, 64.9, 84.1, 102.3, 119.5]],
  ['baritone guitar 686 mm', 686.0, 12, [37.4, 54.6, 70.8, 86.0, 100.5]],
  ['electric bass 863.6 mm', 863.6, 1, [88.9, 129.7, 168.2, 204.5, 238.7]],
  ['electric bass 863.6 mm', 863.6, 5, [70.6, 102.9, 133.5, 162.3, 189.5]],
  ['electric bass 863.6 mm', 863.6, 7, [62.9, 91.7, 118.9, 144.6, 168.8]],
  ['electric bass 863.6 mm', 863.6, 9, [56.0, 81.7, 105.9, 128.8, 150.4]],
  ['electric bass 863.6 mm', 863.6, 12, [47.1, 68.7, 89.1, 108.3, 126.5]],
];
