/**
 * Open strings of every instrument served, from the lowest-sounding side to string 1, and what they sound.
 * Of a course of several strings the principal comes first: the lowest, but for the first course of the tres,
 * whose principal is the string that players hear as the melody.
 */

/** Tuning, open strings, MIDI numbers; re-entrant or recalled where it is. */
export type OpenStrings = readonly [string, string, string, string?];

/** An instrument, the published source of its tunings but for those recalled, and the tunings. */
export interface OpenStringsOfInstrument {
  readonly id: string;
  readonly source: string;
  readonly tunings: readonly OpenStrings[];
}

export const openStrings: readonly OpenStringsOfInstrument[] = [
  {
    id: 'guitar-6',
    source: 'Wikipedia, Guitar tunings',
    tunings: [
      ['standard', 'E2-A2-D3-G3-B3-E4', '40-45-50-55-59-64'],
      ['half-step-down', 'Eb2-Ab2-Db3-Gb3-Bb3-Eb4', '39-44-49-54-58-63', 'recalled'],
      ['d-standard', 'D2-G2-C3-F3-A3-D4', '38-43-48-53-57-62'],
      ['c-standard', 'C2-F2-Bb2-Eb3-G3-C4', '36-41-46-51-55-60', 'recalled'],
      ['drop-d', 'D2-A2-D3-G3-B3-E4', '38-45-50-55-59-64'],
      ['drop-c-sharp', 'C#2-G#2-C#3-F#3-A#3-D#4', '37-44-49-54-58-63', 'recalled'],
      ['drop-c', 'C2-G2-C3-F3-A3-D4', '36-43-48-53-57-62'],
      ['drop-b', 'B1-F#2-B2-E3-G#3-C#4', '35-42-47-52-56-61'],
      ['double-drop-d', 'D2-A2-D3-G3-B3-D4', '38-45-50-55-59-62'],
      ['dadgad', 'D2-A2-D3-G3-A3-D4', '38-45-50-55-57-62'],
      ['open-d', 'D2-A2-D3-F#3-A3-D4', '38-45-50-54-57-62'],
      ['open-d-minor', 'D2-A2-D3-F3-A3-D4', '38-45-50-53-57-62'],
      ['open-e', 'E2-B2-E3-G#3-B3-E4', '40-47-52-56-59-64'],
      ['open-g', 'D2-G2-D3-G3-B3-D4', '38-43-50-55-59-62'],
      ['open-g-minor', 'D2-G2-D3-G3-Bb3-D4', '38-43-50-55-58-62', 'recalled'],
      ['open-a', 'E2-A2-E3-A3-C#4-E4', '40-45-52-57-61-64'],
      ['open-c', 'C2-G2-C3-G3-C4-E4', '36-43-48-55-60-64'],
      ['open-c6', 'C2-A2-C3-G3-C4-E4', '36-45-48-55-60-64', 'recalled'],
      ['all-fourths', 'E2-A2-D3-G3-C4-F4', '40-45-50-55-60-65'],
      ['all-fifths', 'C2-G2-D3-A3-E4-B4', '36-43-50-57-64-71', 'recalled'],
      ['all-major-thirds', 'E2-G#2-C3-E3-G#3-C4', '40-44-48-52-56-60', 'recalled'],
      ['lute', 'E2-A2-D3-F#3-B3-E4', '40-45-50-54-59-64'],
      ['nashville', 'E3-A3-D4-G4-B3-E4', '52-57-62-67-59-64', 're-entrant, recalled'],
    ],
  },
  {
    id: 'guitar-7',
    source: 'Wikipedia, Seven-string guitar and Standard tuning',
    tunings: [
      ['standard', 'B1-E2-A2-D3-G3-B3-E4', '35-40-45-50-55-59-64'],
      ['drop-a', 'A1-E2-A2-D3-G3-B3-E4', '33-40-45-50-55-59-64', 'recalled'],
      ['choro-c', 'C2-E2-A2-D3-G3-B3-E4', '36-40-45-50-55-59-64'],
      ['high-a', 'E2-A2-D3-G3-B3-E4-A4', '40-45-50-55-59-64-69', 'recalled'],
      ['all-fourths', 'B1-E2-A2-D3-G3-C4-F4', '35-40-45-50-55-60-65', 'recalled'],
    ],
  },
  {
    id: 'guitar-8',
    source: 'Wikipedia, Seven-string guitar and Standard tuning',
    tunings: [
      ['standard', 'F#1-B1-E2-A2-D3-G3-B3-E4', '30-35-40-45-50-55-59-64', 'recalled'],
      ['drop-e', 'E1-B1-E2-A2-D3-G3-B3-E4', '28-35-40-45-50-55-59-64', 'recalled'],
      ['low-b-high-a', 'B1-E2-A2-D3-G3-B3-E4-A4', '35-40-45-50-55-59-64-69', 'recalled'],
      ['classical-a', 'A1-E2-A2-D3-G3-B3-E4-A4', '33-40-45-50-55-59-64-69'],
    ],
  },
  {
    id: 'guitar-9',
    source: 'recalled',
    tunings: [
      ['standard', 'C#1-F#1-B1-E2-A2-D3-G3-B3-E4', '25-30-35-40-45-50-55-59-64', 'recalled'],
      ['low-f-sharp-high-a', 'F#1-B1-E2-A2-D3-G3-B3-E4-A4', '30-35-40-45-50-55-59-64-69', 'recalled'],
    ],
  },
  {
    id: 'guitar-baritone',
    source: 'Wikipedia, Baritone guitar',
    tunings: [
      ['b-standard', 'B1-E2-A2-D3-F#3-B3', '35-40-45-50-54-59'],
      ['a-standard', 'A1-D2-G2-C3-E3-A3', '33-38-43-48-52-57'],
      ['c-standard', 'C2-F2-Bb2-Eb3-G3-C4', '36-41-46-51-55-60'],
    ],
  },
  {
    id: 'guitar-tenor',
    source: 'Wikipedia, Tenor guitar',
    tunings: [
      ['standard', 'C3-G3-D4-A4', '48-55-62-69'],
      ['chicago', 'D3-G3-B3-E4', '50-55-59-64'],
      ['octave-mandolin', 'G2-D3-A3-E4', '43-50-57-64'],
      ['ukulele-low-g', 'G3-C4-E4-A4', '55-60-64-69', 'recalled'],
    ],
  },
  {
    id: 'guitar-12',
    source: 'Wikipedia, Guitar tunings',
    tunings: [
      ['standard', 'E2/E3-A2/A3-D3/D4-G3/G4-B3/B3-E4/E4', '40/52-45/57-50/62-55/67-59/59-64/64'],
      ['d-standard', 'D2/D3-G2/G3-C3/C4-F3/F4-A3/A3-D4/D4', '38/50-43/55-48/60-53/65-57/57-62/62'],
      ['open-g', 'D2/D3-G2/G3-D3/D4-G3/G4-B3/B3-D4/D4', '38/50-43/55-50/62-55/67-59/59-62/62', 'recalled'],
    ],
  },
  {
    id: 'bass-4',
    source: 'Wikipedia, Bass guitar tuning',
    tunings: [
      ['standard', 'E1-A1-D2-G2', '28-33-38-43'],
      ['half-step-down', 'Eb1-Ab1-Db2-Gb2', '27-32-37-42', 'recalled'],
      ['d-standard', 'D1-G1-C2-F2', '26-31-36-41'],
      ['drop-d', 'D1-A1-D2-G2', '26-33-38-43'],
      ['drop-c', 'C1-G1-C2-F2', '24-31-36-41', 'recalled'],
      ['bead', 'B0-E1-A1-D2', '23-28-33-38'],
      ['fifths', 'C1-G1-D2-A2', '24-31-38-45', 'recalled'],
      ['tenor', 'A1-D2-G2-C3', '33-38-43-48', 'recalled'],
      ['piccolo', 'E2-A2-D3-G3', '40-45-50-55', 'recalled'],
    ],
  },
  {
    id: 'bass-5',
    source: 'Wikipedia, Bass guitar tuning',
    tunings: [
      ['low-b', 'B0-E1-A1-D2-G2', '23-28-33-38-43'],
      ['high-c', 'E1-A1-D2-G2-C3', '28-33-38-43-48'],
      ['drop-a', 'A0-E1-A1-D2-G2', '21-28-33-38-43', 'recalled'],
    ],
  },
  {
    id: 'bass-6',
    source: 'Wikipedia, Bass guitar tuning',
    tunings: [
      ['standard', 'B0-E1-A1-D2-G2-C3', '23-28-33-38-43-48'],
      ['high-f', 'E1-A1-D2-G2-C3-F3', '28-33-38-43-48-53', 'recalled'],
    ],
  },
  {
    id: 'bass-6-octave',
    source: 'Wikipedia, Baritone guitar',
    tunings: [['standard', 'E1-A1-D2-G2-B2-E3', '28-33-38-43-47-52']],
  },
  {
    id: 'ukulele-soprano',
    source: 'Wikipedia, Ukulele, size table',
    tunings: [
      ['high-g', 'G4-C4-E4-A4', '67-60-64-69', 're-entrant'],
      ['low-g', 'G3-C4-E4-A4', '55-60-64-69'],
      ['d-tuning', 'A4-D4-F#4-B4', '69-62-66-71', 're-entrant'],
      ['d-low-a', 'A3-D4-F#4-B4', '57-62-66-71', 'recalled'],
      ['slack', 'G4-C4-E4-G4', '67-60-64-67', 're-entrant, recalled'],
    ],
  },
  {
    id: 'ukulele-concert',
    source: 'Wikipedia, Ukulele, size table',
    tunings: [
      ['high-g', 'G4-C4-E4-A4', '67-60-64-69', 're-entrant'],
      ['low-g', 'G3-C4-E4-A4', '55-60-64-69'],
      ['d-tuning', 'A4-D4-F#4-B4', '69-62-66-71', 're-entrant'],
      ['d-low-a', 'A3-D4-F#4-B4', '57-62-66-71', 'recalled'],
      ['slack', 'G4-C4-E4-G4', '67-60-64-67', 're-entrant, recalled'],
    ],
  },
  {
    id: 'ukulele-tenor',
    source: 'Wikipedia, Ukulele, size table',
    tunings: [
      ['high-g', 'G4-C4-E4-A4', '67-60-64-69', 're-entrant'],
      ['low-g', 'G3-C4-E4-A4', '55-60-64-69'],
      ['d-tuning', 'A4-D4-F#4-B4', '69-62-66-71', 're-entrant'],
      ['d-low-a', 'A3-D4-F#4-B4', '57-62-66-71', 'recalled'],
      ['slack', 'G4-C4-E4-G4', '67-60-64-67', 're-entrant, recalled'],
    ],
  },
  {
    id: 'ukulele-baritone',
    source: 'Wikipedia, Ukulele, size table',
    tunings: [
      ['standard', 'D3-G3-B3-E4', '50-55-59-64'],
      ['high-d', 'D4-G3-B3-E4', '62-55-59-64', 're-entrant'],
      ['c-low-g', 'G3-C4-E4-A4', '55-60-64-69', 'recalled'],
    ],
  },
  {
    id: 'mandolin',
    source: 'Wikipedia, Mandolin; R. A. Margo, Music Notation for Mandolin Family Instruments',
    tunings: [
      ['standard', 'G3/G3-D4/D4-A4/A4-E5/E5', '55/55-62/62-69/69-76/76'],
      ['gdad', 'G3/G3-D4/D4-A4/A4-D5/D5', '55/55-62/62-69/69-74/74', 'recalled'],
      ['aeae', 'A3/A3-E4/E4-A4/A4-E5/E5', '57/57-64/64-69/69-76/76', 'recalled'],
      ['adae', 'A3/A3-D4/D4-A4/A4-E5/E5', '57/57-62/62-69/69-76/76', 'recalled'],
    ],
  },
  {
    id: 'mandola',
    source: 'R. A. Margo, Music Notation for Mandolin Family Instruments',
    tunings: [['standard', 'C3/C3-G3/G3-D4/D4-A4/A4', '48/48-55/55-62/62-69/69']],
  },
  {
    id: 'octave-mandolin',
    source: 'Wikipedia, Octave mandolin; R. A. Margo, Music Notation for Mandolin Family Instruments',
    tunings: [
      ['standard', 'G2/G2-D3/D3-A3/A3-E4/E4', '43/43-50/50-57/57-64/64'],
      ['standard-octave', 'G2/G3-D3/D4-A3/A3-E4/E4', '43/55-50/62-57/57-64/64'],
      ['gdad', 'G2/G2-D3/D3-A3/A3-D4/D4', '43/43-50/50-57/57-62/62'],
      ['adad', 'A2/A2-D3/D3-A3/A3-D4/D4', '45/45-50/50-57/57-62/62'],
    ],
  },
  {
    id: 'mandocello',
    source: 'R. A. Margo, Music Notation for Mandolin Family Instruments',
    tunings: [['standard', 'C2/C2-G2/G2-D3/D3-A3/A3', '36/36-43/43-50/50-57/57']],
  },
  {
    id: 'bouzouki-irish',
    source: 'h2g2, Bouzouki Tunings; Wikipedia, Irish bouzouki',
    tunings: [
      ['gdad', 'G2/G2-D3/D3-A3/A3-D4/D4', '43/43-50/50-57/57-62/62'],
      ['gdad-octave', 'G2/G3-D3/D4-A3/A3-D4/D4', '43/55-50/62-57/57-62/62'],
      ['gdae', 'G2/G2-D3/D3-A3/A3-E4/E4', '43/43-50/50-57/57-64/64'],
      ['adad', 'A2/A2-D3/D3-A3/A3-D4/D4', '45/45-50/50-57/57-62/62'],
      ['adae', 'A2/A2-D3/D3-A3/A3-E4/E4', '45/45-50/50-57/57-64/64'],
    ],
  },
  {
    id: 'bouzouki-greek-3',
    source: 'h2g2, Bouzouki Tunings',
    tunings: [['standard', 'D3/D4-A3/A3-D4/D4', '50/62-57/57-62/62']],
  },
  {
    id: 'bouzouki-greek-4',
    source: 'h2g2, Bouzouki Tunings',
    tunings: [
      ['standard', 'C3/C4-F3/F4-A3/A3-D4/D4', '48/60-53/65-57/57-62/62'],
      ['dgbe', 'D3/D4-G3/G4-B3/B3-E4/E4', '50/62-55/67-59/59-64/64'],
    ],
  },
  {
    id: 'cittern-modern',
    source: 'Wikipedia, Cittern; Encyclopaedia Britannica, Cittern',
    tunings: [
      ['dgdad', 'D2/D2-G2/G2-D3/D3-A3/A3-D4/D4', '38/38-43/43-50/50-57/57-62/62', 'recalled'],
      ['gdada', 'G2/G2-D3/D3-A3/A3-D4/D4-A4/A4', '43/43-50/50-57/57-62/62-69/69', 'recalled'],
      ['gdgdg', 'G2/G2-D3/D3-G3/G3-D4/D4-G4/G4', '43/43-50/50-55/55-62/62-67/67'],
      ['adada', 'A2/A2-D3/D3-A3/A3-D4/D4-A4/A4', '45/45-50/50-57/57-62/62-69/69'],
      ['cgdae', 'C3/C3-G3/G3-D4/D4-A4/A4-E5/E5', '48/48-55/55-62/62-69/69-76/76'],
      ['cgdae-low', 'C2/C2-G2/G2-D3/D3-A3/A3-E4/E4', '36/36-43/43-50/50-57/57-64/64'],
    ],
  },
  {
    id: 'cittern-renaissance',
    source:
      'Wikipedia, Cittern; Encyclopaedia Britannica, Cittern; historical notes on strings for the cittern',
    tunings: [
      ['french', 'A3/A3-G3/G3-D4/D4-E4/E4', '57/57-55/55-62/62-64/64', 're-entrant'],
      ['italian', 'B3/B3-G3/G3-D4/D4-E4/E4', '59/59-55/55-62/62-64/64', 're-entrant'],
    ],
  },
  {
    id: 'banjo-5',
    source: 'general reference lists of banjo tunings',
    tunings: [
      ['open-g', 'G4-D3-G3-B3-D4', '67-50-55-59-62', 're-entrant'],
      ['c', 'G4-C3-G3-B3-D4', '67-48-55-59-62', 're-entrant'],
      ['double-c', 'G4-C3-G3-C4-D4', '67-48-55-60-62', 're-entrant'],
      ['double-d', 'A4-D3-A3-D4-E4', '69-50-57-62-64', 're-entrant, recalled'],
      ['sawmill', 'G4-D3-G3-C4-D4', '67-50-55-60-62', 're-entrant'],
      ['a-modal', 'A4-E3-A3-D4-E4', '69-52-57-62-64', 're-entrant, recalled'],
      ['open-d', 'F#4-D3-F#3-A3-D4', '66-50-54-57-62', 're-entrant'],
      ['open-d-a', 'A4-D3-F#3-A3-D4', '69-50-54-57-62', 're-entrant, recalled'],
      ['open-c', 'G4-C3-G3-C4-E4', '67-48-55-60-64', 're-entrant, recalled'],
      ['g-minor', 'G4-D3-G3-Bb3-D4', '67-50-55-58-62', 're-entrant, recalled'],
    ],
  },
  {
    id: 'banjo-tenor',
    source: 'Wikipedia, Tenor guitar; general reference lists of banjo tunings',
    tunings: [
      ['standard', 'C3-G3-D4-A4', '48-55-62-69'],
      ['irish', 'G2-D3-A3-E4', '43-50-57-64'],
      ['chicago', 'D3-G3-B3-E4', '50-55-59-64'],
    ],
  },
  {
    id: 'banjo-plectrum',
    source: 'general reference lists of banjo tunings',
    tunings: [
      ['standard', 'C3-G3-B3-D4', '48-55-59-62'],
      ['chicago', 'D3-G3-B3-E4', '50-55-59-64'],
      ['g', 'D3-G3-B3-D4', '50-55-59-62', 'recalled'],
    ],
  },
  {
    id: 'banjo-ukulele',
    source: 'Wikipedia, Ukulele, size table',
    tunings: [
      ['high-g', 'G4-C4-E4-A4', '67-60-64-69', 're-entrant'],
      ['d-tuning', 'A4-D4-F#4-B4', '69-62-66-71', 're-entrant'],
    ],
  },
  {
    id: 'cavaquinho',
    source: 'Wikipedia, Cavaquinho',
    tunings: [
      ['standard', 'D4-G4-B4-D5', '62-67-71-74'],
      ['natural', 'D4-G4-B4-E5', '62-67-71-76'],
      ['portuguese-old', 'D4-A4-B4-E5', '62-69-71-76'],
      ['ggbd', 'G4-G4-B4-D5', '67-67-71-74'],
      ['aac-sharp-e', 'A4-A4-C#5-E5', '69-69-73-76'],
    ],
  },
  {
    id: 'viola-caipira',
    source: 'R. Correa, A Arte de Pontear Viola (2000)',
    tunings: [
      ['cebolao-d', 'A2/A3-D3/D4-F#3/F#4-A3/A3-D4/D4', '45/57-50/62-54/66-57/57-62/62'],
      ['cebolao-e', 'B2/B3-E3/E4-G#3/G#4-B3/B3-E4/E4', '47/59-52/64-56/68-59/59-64/64'],
      ['rio-abaixo', 'G2/G3-D3/D4-G3/G4-B3/B3-D4/D4', '43/55-50/62-55/67-59/59-62/62'],
      ['boiadeira', 'G2/G3-D3/D4-F#3/F#4-A3/A3-D4/D4', '43/55-50/62-54/66-57/57-62/62'],
      ['natural', 'A2/A3-D3/D4-G3/G4-B3/B3-E4/E4', '45/57-50/62-55/67-59/59-64/64'],
    ],
  },
  {
    id: 'charango',
    source: 'Wikipedia, Charango; Museum of World Music, table of charango tunings',
    tunings: [
      ['standard', 'G4/G4-C5/C5-E4/E5-A4/A4-E5/E5', '67/67-72/72-64/76-69/69-76/76', 're-entrant'],
      [
        'half-step-down',
        'F#4/F#4-B4/B4-D#4/D#5-G#4/G#4-D#5/D#5',
        '66/66-71/71-63/75-68/68-75/75',
        're-entrant',
      ],
      ['whole-step-down', 'F4/F4-Bb4/Bb4-D4/D5-G4/G4-D5/D5', '65/65-70/70-62/74-67/67-74/74', 're-entrant'],
    ],
  },
  {
    id: 'charangon',
    source: 'Wikipedia, Charango; Museum of World Music, table of charango tunings',
    tunings: [['standard', 'C4/C4-F4/F4-A3/A4-D4/D4-A4/A4', '60/60-65/65-57/69-62/62-69/69', 're-entrant']],
  },
  {
    id: 'ronroco',
    source: 'Wikipedia, Charango; Museum of World Music, table of charango tunings',
    tunings: [
      [
        'octave-below',
        'G3/G3-C4/C4-E3/E4-A3/A3-E4/E4',
        '55/55-60/60-52/64-57/57-64/64',
        're-entrant, recalled',
      ],
      ['as-charangon', 'C4/C4-F4/F4-A3/A4-D4/D4-A4/A4', '60/60-65/65-57/69-62/62-69/69', 're-entrant'],
      ['argentine', 'D4/D4-G4/G4-B3/B4-E4/E4-B4/B4', '62/62-67/67-59/71-64/64-71/71', 're-entrant, recalled'],
    ],
  },
  {
    id: 'cuatro-venezolano',
    source: 'Wikipedia, Cuatro (Venezuela); Museo del Cuatro Venezolano, El Cam Bur Pin Ton',
    tunings: [
      ['standard', 'A3-D4-F#4-B3', '57-62-66-59', 're-entrant'],
      ['octave', 'A3-D4-F#4-B4', '57-62-66-71'],
    ],
  },
  {
    id: 'cuatro-puertorriqueno',
    source: 'Wikipedia, Puerto Rican cuatro',
    tunings: [['standard', 'B2/B3-E3/E4-A3/A3-D4/D4-G4/G4', '47/59-52/64-57/57-62/62-67/67']],
  },
  {
    id: 'tres-cubano',
    source: 'The New Grove Dictionary of Musical Instruments, Tres; Wikipedia, Tres',
    tunings: [
      ['c-major', 'G3/G4-C4/C4-E4/E3', '55/67-60/60-64/52'],
      ['c-major-unison-first', 'G3/G4-C4/C4-E4/E4', '55/67-60/60-64/64'],
      ['d-major', 'A3/A4-D4/D4-F#4/F#3', '57/69-62/62-66/54'],
      ['d-major-unison-first', 'A3/A4-D4/D4-F#4/F#4', '57/69-62/62-66/66', 'recalled'],
    ],
  },
  {
    id: 'requinto',
    source: 'Wikipedia, Requinto guitar',
    tunings: [['standard', 'A2-D3-G3-C4-E4-A4', '45-50-55-60-64-69']],
  },
  {
    id: 'vihuela-mexicana',
    source: 'Wikipedia, Mexican vihuela',
    tunings: [['standard', 'A3-D4-G4-B3-E4', '57-62-67-59-64', 're-entrant']],
  },
  {
    id: 'bandurria',
    source:
      'Encyclopaedia Britannica, Bandurria; C. Sanchez Alonso, stringing guide for Spanish plectrum instruments',
    tunings: [
      ['standard', 'G#3/G#3-C#4/C#4-F#4/F#4-B4/B4-E5/E5-A5/A5', '56/56-61/61-66/66-71/71-76/76-81/81'],
    ],
  },
  {
    id: 'laud',
    source: 'C. Sanchez Alonso, stringing guide for Spanish plectrum instruments',
    tunings: [
      ['standard', 'G#2/G#2-C#3/C#3-F#3/F#3-B3/B3-E4/E4-A4/A4', '44/44-49/49-54/54-59/59-64/64-69/69'],
    ],
  },
  {
    id: 'balalaika-prima',
    source: 'Tokyo University of the Arts, Koizumi Fumio collection, no. 242',
    tunings: [
      ['standard', 'E4-E4-A4', '64-64-69'],
      ['folk-major', 'G4-B4-D5', '67-71-74', 'recalled'],
    ],
  },
  {
    id: 'domra-3',
    source: 'University of Southampton, page on the domra',
    tunings: [['standard', 'E4-A4-D5', '64-69-74']],
  },
  { id: 'domra-4', source: 'recalled', tunings: [['standard', 'G3-D4-A4-E5', '55-62-69-76', 'recalled']] },
  {
    id: 'guitar-russian-7',
    source: 'Wikipedia, Russian guitar',
    tunings: [
      ['standard', 'D2-G2-B2-D3-G3-B3-D4', '38-43-47-50-55-59-62'],
      ['low-c', 'C2-G2-B2-D3-G3-B3-D4', '36-43-47-50-55-59-62'],
    ],
  },
  {
    id: 'vihuela-renaissance',
    source: 'Wikipedia, Lute',
    tunings: [
      ['g-nominal', 'G2/G2-C3/C3-F3/F3-A3/A3-D4/D4-G4/G4', '43/43-48/48-53/53-57/57-62/62-67/67', 'recalled'],
      ['a-nominal', 'A2/A2-D3/D3-G3/G3-B3/B3-E4/E4-A4/A4', '45/45-50/50-55/55-59/59-64/64-69/69', 'recalled'],
      [
        'e-nominal',
        'E2/E2-A2/A2-D3/D3-F#3/F#3-B3/B3-E4/E4',
        '40/40-45/45-50/50-54/54-59/59-64/64',
        'recalled',
      ],
    ],
  },
  {
    id: 'lute-renaissance-6',
    source: 'Wikipedia, Lute',
    tunings: [
      ['g-nominal', 'G2/G3-C3/C4-F3/F3-A3/A3-D4/D4-G4', '43/55-48/60-53/53-57/57-62/62-67'],
      ['g-octave-4', 'G2/G3-C3/C4-F3/F4-A3/A3-D4/D4-G4', '43/55-48/60-53/65-57/57-62/62-67', 'recalled'],
      ['a-nominal', 'A2/A3-D3/D4-G3/G3-B3/B3-E4/E4-A4', '45/57-50/62-55/55-59/59-64/64-69', 'recalled'],
    ],
  },
  {
    id: 'dulcimer-mountain',
    source: 'Wikipedia, Appalachian dulcimer',
    tunings: [
      ['dad', 'D3-A3-D4/D4', '50-57-62/62'],
      ['daa', 'D3-A3-A3/A3', '50-57-57/57'],
      ['dac', 'D3-A3-C4/C4', '50-57-60/60'],
      ['dag', 'D3-A3-G3/G3', '50-57-55/55', 're-entrant, recalled'],
      ['dgd', 'D3-G3-D4/D4', '50-55-62/62'],
      ['cgg', 'C3-G3-G3/G3', '48-55-55/55'],
    ],
  },
  {
    id: 'dulcimer-stick',
    source: 'recalled',
    tunings: [
      ['gdg', 'G3-D4-G4', '55-62-67', 'recalled'],
      ['dad', 'D3-A3-D4', '50-57-62', 'recalled'],
      ['gdd', 'G3-D4-D4', '55-62-62', 'recalled'],
    ],
  },
  { id: 'pipa', source: 'guide to tuning the pipa', tunings: [['standard', 'A2-D3-E3-A3', '45-50-52-57']] },
];

/** Fret, semitones above the nut, what it sounds on a string tuned to D4: the frets of a mountain dulcimer. */
export const diatonicFrets: readonly (readonly [number, number, string])[] = [
  [1, 2, 'E4'],
  [2, 4, 'F#4'],
  [3, 5, 'G4'],
  [4, 7, 'A4'],
  [5, 9, 'B4'],
  [6, 10, 'C5'],
  [6.5, 11, 'C#5'],
  [7, 12, 'D5'],
  [8, 14, 'E5'],
  [9, 16, 'F#5'],
  [10, 17, 'G5'],
  [11, 19, 'A5'],
  [12, 21, 'B5'],
  [13, 22, 'C6'],
  [14, 24, 'D6'],
];
