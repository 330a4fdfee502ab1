/**
 * Was der Katalog in Sätzen sagt: Anmerkungen, Gründe, wer einen Namen wofür gebraucht, und Quellen, die keinen
 * veröffentlichten Titel haben. German.
 */
import type * as English from '../en/catalogue.ts';

export const INSTRUMENT_NOTES: typeof English.INSTRUMENT_NOTES = new Map([
  [
    'balalaika-prima',
    'Die Saiten 2 und 3 sind unisono. Saite 3 kann der linke Daumen greifen; die Fingersätze hier verwenden ihn nicht.',
  ],
  [
    'banjo-5',
    'Saite 5 ist die kurze Bordunsaite, obwohl sie leer am höchsten klingt; Tabulaturen zählen ihre Bünde vom Sattel der langen Saiten. Die Bauart mit langem Hals hat 25 Bünde und etwa 813 mm, und ihre Bordunsaite beginnt am Bund 8.',
  ],
  [
    'banjo-tenor',
    'Die kurze Bauart hat 17 Bünde und etwa 482 bis 533 mm, die lange 19 Bünde und etwa 559 bis 584 mm.',
  ],
  ['banjo-ukulele', 'Gestimmt wie Sopran- und Konzert-Ukulele.'],
  [
    'bass-4',
    'Short Scale 762 mm (30 Zoll), Medium Scale 813 mm (32 Zoll), Long Scale 863,6 mm (34 Zoll), Extra Long Scale 889 bis 914 mm.',
  ],
  [
    'bass-6-octave',
    'Eine Oktave tiefer gestimmt als die Gitarre; nicht der sechssaitige Bass in Quarten. Manchmal in einem Violinschlüssel notiert, der zwei Oktaven tiefer klingt.',
  ],
  ['bouzouki-greek-3', 'Der tiefste Chor ist ein Paar in Oktaven.'],
  ['bouzouki-greek-4', 'Die beiden unteren Chöre sind Paare in Oktaven.'],
  ['cavaquinho', 'Die Tonnamen der Stimmungen haben eine Quelle; ihre Oktaven sind aus dem Gedächtnis.'],
  [
    'charango',
    'Der dritte Chor ist ein Paar in Oktaven; seine tiefere Saite gilt, und eine Melodie darauf klingt in Oktaven.',
  ],
  [
    'charangon',
    'Tonnamen und Oktavpaar haben eine Quelle; die Oktavnummern folgen aus „eine Quinte unter dem Charango“.',
  ],
  [
    'cittern-modern',
    'Eine feste Standardstimmung gibt es nicht. Die Tonnamen der letzten vier Stimmungen haben eine Quelle; ihre Oktaven folgen aus der Mensur, meist 500 bis 600 mm, doch gebaut werden 400 bis 690 mm.',
  ],
  [
    'cittern-renaissance',
    'Vielen Cistern des 16. Jahrhunderts fehlen einige Bünde der tieferen Chöre, und ihre Bünde waren oft nicht gleichstufig gesetzt; hier sind alle zwölf je Oktave gezeigt, gleichstufig. Tiefere Chöre waren manchmal dreifach, mit Oktaven. Die Quellen sind in Tabulatur.',
  ],
  ['cuatro-puertorriqueno', 'Fünf Chöre in Quarten; die beiden unteren sind Paare in Oktaven.'],
  ['cuatro-venezolano', 'Rückläufig: Saite 1 klingt tiefer als die Saiten 2 und 3.'],
  ['domra-4', 'Gestimmt wie die Mandoline, mit einfachen Saiten.'],
  [
    'dulcimer-mountain',
    'Diatonische Bünde. Die Bünde 6+ und 13+ (hier 6½ und 13½) gehören zur modernen Form; älteren Instrumenten fehlen sie, und manche neuere haben auch 1+ und 8+. Der Melodiechor ist meist doppelt und liegt der Spielerin oder dem Spieler am nächsten. Das MIDI-Programm 15 ist ein Hackbrett.',
  ],
  [
    'dulcimer-stick',
    'Gehalten wie eine Gitarre. Diatonische Bünde; Bund 6+ (hier 6½) ist fast immer da, und manche Griffbretter haben auch 13+ oder enden vor Bund 14. Manche Tabulaturen zählen jeden Bund, 6+ eingeschlossen, sodass 6+ zu 7 wird: Achte darauf, welche Zählung gemeint ist.',
  ],
  [
    'guitar-12',
    'Sechs Chöre: die beiden oberen unisono, die vier unteren in Oktaven. Die Oktavsaite liegt gewöhnlich auf der Bassseite ihres Paars.',
  ],
  [
    'guitar-6',
    'Konzertgitarren haben etwa 650 mm und 19 Bünde, Westerngitarren etwa 645 mm und 20, E-Gitarren 628 bis 648 mm und 21 bis 24; 22 Bünde sind gebräuchlich, ohne Quelle. MIDI-Programme: 24 Nylonsaiten, 25 Stahlsaiten, 26 bis 30 E-Gitarre.',
  ],
  ['guitar-7', 'Griffbretter mit mehreren Mensuren haben längere Basssaiten als diese eine Länge.'],
  [
    'guitar-8',
    'Die tiefsten Saiten brauchen im Violinschlüssel viele Hilfslinien; oft werden ein Bassschlüssel oder Tabulatur verwendet.',
  ],
  ['guitar-9', 'Eine feste Standardstimmung gibt es nicht.'],
  [
    'guitar-baritone',
    'Oft als transponierende Stimme gelesen; hier klingend notiert, aber eine Oktave höher.',
  ],
  [
    'laud',
    'Der Tenor der Bandurria-Familie; notiert wie die Bandurria, klingt er eine Oktave tiefer. Nicht die Laute der Renaissance.',
  ],
  [
    'lute-renaissance-6',
    'Die acht Bünde des Halses sind aus Darm gebunden und lassen sich verschieben; weitere, bis 12, sind auf die Decke geleimt. Historische Bünde waren oft nicht gleichstufig gesetzt; hier werden sie gleichstufig behandelt. Die Tonhöhe ist nominell: Die Intervalle stehen fest, die Höhe nicht. Der erste Chor ist meist einfach. Lauten mit 7 bis 10 Chören haben zusätzlich diatonische Bässe, die meist leer gespielt werden.',
  ],
  [
    'mandocello',
    'Im Bassschlüssel klingend notiert, wie das Cello, oder in einem Violinschlüssel, der eine Oktave tiefer klingt.',
  ],
  [
    'mandola',
    'In weiten Teilen Europas meint das Wort die Oktavmandoline. Gebräuchlich sind ein Altschlüssel, ein Violinschlüssel, der eine Oktave tiefer klingt, und ein transponierter Violinschlüssel.',
  ],
  [
    'pipa',
    'Die moderne chromatische Form, aufrecht gehalten. Die Bünde 1 bis 6 sind die Stege (Xiang); Bund 7 ist der erste Bambusbund, Pin k ist also Bund 6 + k. Die ältere Pipa mit weniger Stegen ist nicht gemeint. Auch im Bassschlüssel oder in Ziffern notiert.',
  ],
  [
    'requinto',
    'Auch als transponierende Stimme gelesen, eine Quarte über dem, was in Gitarrennotation steht; hier eine Oktave über dem Klang notiert.',
  ],
  [
    'ronroco',
    'Die Quellen sind uneins: C F A D A in Bolivien und Peru, D G B E B in Argentinien, eine Oktave unter dem Charango in heutiger Praxis.',
  ],
  [
    'tres-cubano',
    'Welche Saite jedes Paars gilt, ist von Hand festgelegt, sodass die drei Chöre steigen, wie man sie beim Spielen hört: G3 C4 E4 oder A3 D4 F♯4. Es ist nicht immer die tiefere.',
  ],
  ['ukulele-baritone', 'Manche Bücher notieren sie eine Oktave höher, wie die Gitarre.'],
  [
    'vihuela-mexicana',
    'Rückläufig: Die unteren drei Saiten klingen eine Oktave höher als die der Gitarre. Meist nach Akkordsymbolen gespielt.',
  ],
  [
    'vihuela-renaissance',
    'Die zehn Bünde sind aus Darm gebunden und lassen sich verschieben. Historische Bünde waren oft nicht gleichstufig gesetzt; hier werden sie gleichstufig behandelt. Die Tonhöhe ist nominell: Die Intervalle, Quarten mit einer Terz in der Mitte, stehen fest, die Höhe nicht.',
  ],
  [
    'viola-caipira',
    'Über zwanzig Stimmungen sind gebräuchlich, und ihre Namen wechseln von Gegend zu Gegend. Tonnamen und Paare haben eine Quelle, zwei Chöre unisono und drei in Oktaven; die Oktavnummern sind aus dem Gedächtnis.',
  ],
]);

export const TUNING_NOTES: typeof English.TUNING_NOTES = new Map([
  [
    'bass-4/piccolo',
    'Klingt eine Oktave höher als ein gewöhnlicher Bass; als Bassstimme notiert klingt sie wie geschrieben.',
  ],
  [
    'guitar-6/all-fifths',
    'Das B4 ist bei voller Mensur oft nicht erreichbar; Varianten stimmen die höchste Saite tiefer.',
  ],
  ['guitar-6/all-major-thirds', 'Das Intervall steht fest, der Anfangston wechselt.'],
]);

export const CONFLICT_USES: typeof English.CONFLICT_USES = new Map([
  ['Hungarian major/3121212', 'ein Lexikon und Persichetti'],
  [
    'Hungarian major/1312131',
    'deutscher Unterricht für „ungarisches Dur“: übermäßige Sekunden vor der Terz und vor dem Leitton',
  ],
  ['Hungarian/2131131', 'Kahan nach Liszt, und Cooper: Die Septime ist groß'],
  ['Hungarian/2131122', 'ein Lexikon, das die Skala in zwei Formen gibt: Die Septime ist klein'],
  ['Byzantine/1312131', 'ein Lexikon, über die doppelharmonische Skala'],
  ['Byzantine/2131131', 'ein Lexikon, über siebentönige Skalen'],
  ['double harmonic major/1312131', 'ein Lexikon und Persichetti'],
  ['double harmonic major/2131131', 'einige Glossare, die Ungarisch Moll so nennen'],
  ['double harmonic major/1312122', 'ein Lexikon, mit dem Zusatz ♭7, über Phrygisch dominant'],
  ['super Locrian/1212222', 'ein Lexikon und Persichetti'],
  ['super Locrian/1212213', 'manche Lehrkräfte, für den siebten Modus von Harmonisch Moll'],
  ['Locrian bb7/1221213', 'der siebte Modus von Harmonisch Dur'],
  [
    'Locrian bb7/1212213',
    'einige Tabellen, für den siebten Modus von Harmonisch Moll, dessen Quarte auch vermindert ist',
  ],
  ['Lydian minor/2221122', 'ein Lexikon und Persichetti: Die Terz ist groß'],
  ['Lydian minor/2131221', 'manche beim Spielen, für Lydisch ♭3'],
  ['Lydian diminished/2131221', 'Russell: ♯4 und ♭3'],
  ['Lydian diminished/2131212', 'manche beim Spielen, für Dorisch ♯4'],
  ['Arabian/2211222', 'ein Lexikon, „Arabian“, für Lokrisch mit großer Terz'],
  ['Arabian/1312131', 'dasselbe Lexikon, „Arabic“, für die doppelharmonische Skala'],
  ['Enigmatic/1322211', 'Crescentini und Verdi, aufwärts'],
  ['Enigmatic/1313211', 'dieselben, abwärts'],
  ['melodic minor/2122221', 'die Form aufwärts'],
  ['melodic minor/2122122', 'die Form abwärts, gleich Natürlich Moll'],
  ['melodic major/2212122', 'die Form abwärts'],
  ['melodic major/2212221', 'die Form aufwärts, gleich Dur'],
  ['Neapolitan/1222131', 'Neapolitanisch Moll'],
  ['Neapolitan/1222221', 'Neapolitanisch Dur, dessen Terz ebenfalls klein ist'],
  ['Romanian/2131212', 'Rumänisch Moll'],
  ['Romanian/1321212', 'Rumänisch Dur'],
  ['altered/1212222', 'die alterierte Skala des Jazz'],
  ['altered/1312122', 'als alteriertes Phrygisch'],
  ['altered/2131212', 'als alteriertes Dorisch'],
  ['Todi/1231131', 'hindustanischer Thaat, gleich Mela 45'],
  ['Todi/1222122', 'karnatischer Raga, Mela 8'],
]);

export const CONFLICT_NOTES: typeof English.CONFLICT_NOTES = new Map([
  ['Hungarian major', 'Im Englischen und im Deutschen bezeichnet der Name verschiedene Skalen.'],
  ['Hungarian', 'Große oder kleine Septime.'],
  ['Byzantine', 'Zwei Modi einer Familie.'],
  ['super Locrian', 'Für die zweite ist Superlokrisch 𝄫7 eindeutig.'],
  ['Locrian bb7', 'Die erste stimmt mit ihrer eigenen Formel überein.'],
  ['Lydian minor', 'Bei der ersten meint Moll die Sexte und die Septime.'],
  ['Arabian', 'Keine von beiden ist ein Maqam.'],
  ['Enigmatic', 'Eine Skala mit zwei Formen.'],
  ['melodic minor', 'Eine Skala mit zwei Formen; allein meint der Name die aufwärts.'],
  ['melodic major', 'Eine Skala mit zwei Formen.'],
  ['Neapolitan', 'Dur und Moll meinen die Sexte.'],
  ['altered', 'Ohne den Namen eines Modus ist Alteriert die Skala des Jazz.'],
]);

export const FAMILY_NOTES: typeof English.FAMILY_NOTES = new Map([
  ['enigmatic-descending', 'Die enigmatische Skala erniedrigt abwärts ihre vierte Stufe.'],
  [
    'persian',
    'Die Quelle selbst nennt die meisten Namen der Modi strittig; Persisch und Todi sind es nicht. Der Name kommt aus Skalenbüchern für Gitarre, nicht aus der Musik Persiens.',
  ],
  [
    'purvi',
    'Das chromatische Tongeschlecht der altgriechischen Theorie ist, gleichstufig gestimmt, ein Modus dieser Familie.',
  ],
  [
    'romanian-major',
    'Der Name findet sich ohne Formel; welcher der sieben Modi gemeint ist, stammt aus dem Gedächtnis.',
  ],
]);

export const SOURCES: typeof English.SOURCES = new Map([
  ['common', 'gebräuchlich, ohne Quelle'],
  ['banjo-ref', 'verschiedene allgemeine Verzeichnisse von Banjostimmungen'],
  ['guitar-theory-handbook', 'verschiedene Handbücher zur Theorie der Gitarre'],
  ['bass-lesson', 'verschiedene veröffentlichte Lektionen für E-Bass'],
  ['mandolin-lesson', 'verschiedene veröffentlichte Lektionen für Mandoline und andere kurze Griffbretter'],
  ['guitar-tuning-lists', 'verschiedene allgemeine Verzeichnisse von Gitarrenstimmungen'],
  [
    'cittern-strings',
    'verschiedene historische Hinweise zu Saiten für die Cister des 16. und 17. Jahrhunderts',
  ],
  ['pipa-guide', 'Anleitung zum Stimmen der Pipa, ohne Namen'],
  ['saz-pages', 'verschiedene Unterrichtsseiten zur Bağlama'],
]);

export const NOT_SERVED: typeof English.NOT_SERVED = new Map([
  [
    'baglama',
    {
      name: 'Bağlama',
      reason:
        'Sie hat 17 Bünde je Oktave statt 12: Fünf davon liegen etwa zwei Fünftel eines Halbtons unter einem Ton der gleichstufigen Stimmung, sind gebunden und werden je nach Spielweise und Gegend verschoben. Ein Bund ist hier ein Halbton, ihre Töne wären also falsch.',
    },
  ],
  [
    'oud',
    {
      name: 'Oud',
      reason:
        'Sie hat keine Bünde, und ihre Musik verwendet Intervalle, die es in der gleichstufigen Stimmung mit zwölf Tönen nicht gibt. Auch ihre Stimmungen wechseln je nach Tradition.',
    },
  ],
  [
    'guitarron',
    {
      name: 'Guitarrón',
      reason:
        'Er hat keine Bünde, eine Skala auf ihm lässt sich also nicht in Bünden angeben. Seine Saiten sind A1 D2 G2 C3 E3 A2.',
    },
  ],
  [
    'bass-fretless',
    {
      name: 'bundloser Bass',
      reason:
        'Er hat keine Bünde; seine leeren Saiten sind die des Basses mit Bünden, dessen Bünde die Griffstellen anzeigen können. Wähle den Bass mit ebenso vielen Saiten.',
    },
  ],
  [
    'banjo-fretless',
    {
      name: 'bundloses Banjo',
      reason:
        'Es hat keine Bünde; seine leeren Saiten sind die des fünfsaitigen Banjos, dessen Bünde die Griffstellen anzeigen können. Wähle das fünfsaitige Banjo.',
    },
  ],
]);

/** Wann eine Quelle erschien, wo das keine Zahl ist. */
export const yearWords: typeof English.yearWords = (year) =>
  year
    .replace('undated', 'ohne Jahr')
    .replace('and later', 'und später')
    .replace(/(\d+)th century/, '$1. Jahrhundert')
    .replace('ed. ', 'hrsg. ');

/** Die Überlieferung eines Namens: `karnatische Mela 14`. */
export const traditionWords: typeof English.traditionWords = (tradition) =>
  tradition.replace('Carnatic mela', 'karnatische Mela').replace('Hindustani thaat', 'hindustanischer Thaat');
