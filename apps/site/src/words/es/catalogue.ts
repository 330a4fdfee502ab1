/**
 * Lo que el catálogo dice en frases: notas, razones, quién da un nombre a qué, y las fuentes que no tienen título
 * publicado. Spanish.
 */
import type * as English from '../en/catalogue.ts';

export const INSTRUMENT_NOTES: typeof English.INSTRUMENT_NOTES = new Map([
  [
    'balalaika-prima',
    'Las cuerdas 2 y 3 están al unísono. El pulgar izquierdo puede pisar la cuerda 3; las digitaciones de aquí no lo usan.',
  ],
  [
    'banjo-5',
    'La cuerda 5 es el bordón corto, aunque al aire sea la más aguda; las tablaturas cuentan sus trastes desde la cejuela de las cuerdas largas. El modelo de mástil largo tiene 25 trastes y unos 813 mm, y su bordón empieza en el traste 8.',
  ],
  [
    'banjo-tenor',
    'El modelo corto tiene 17 trastes y de 482 a 533 mm; el largo, 19 trastes y de 559 a 584 mm.',
  ],
  ['banjo-ukulele', 'Se afina como el ukelele soprano y el de concierto.'],
  [
    'bass-4',
    'Escala corta 762 mm (30 pulgadas), media 813 mm (32 pulgadas), larga 863,6 mm (34 pulgadas), extralarga de 889 a 914 mm.',
  ],
  [
    'bass-6-octave',
    'Afinado una octava por debajo de la guitarra; no es el bajo de seis cuerdas en cuartas. A veces se escribe en una clave de sol que suena dos octavas más grave.',
  ],
  ['bouzouki-greek-3', 'El orden más grave es un par en octavas.'],
  ['bouzouki-greek-4', 'Los dos órdenes graves son pares en octavas.'],
  ['cavaquinho', 'Las notas de las afinaciones tienen una fuente; sus octavas son de memoria.'],
  [
    'charango',
    'El tercer orden es un par en octavas; cuenta su cuerda grave, y una melodía en él suena en octavas.',
  ],
  [
    'charangon',
    'Las notas y el par en octavas tienen una fuente; los números de octava se siguen de «una quinta por debajo del charango».',
  ],
  [
    'cittern-modern',
    'No hay una afinación estándar fija. Las notas de las cuatro últimas afinaciones tienen una fuente; sus octavas se siguen del tiro de cuerda, casi siempre de 500 a 600 mm, aunque se construyen de 400 a 690 mm.',
  ],
  [
    'cittern-renaissance',
    'A muchos cistros del siglo XVI les faltan algunos trastes de los órdenes graves, y sus trastes a menudo no seguían el temperamento igual; aquí se muestran los doce por octava, en temperamento igual. Los órdenes graves eran a veces triples, con octavas. Las fuentes están en tablatura.',
  ],
  ['cuatro-puertorriqueno', 'Cinco órdenes en cuartas; los dos graves son pares en octavas.'],
  ['cuatro-venezolano', 'Reentrante: la cuerda 1 suena por debajo de las cuerdas 2 y 3.'],
  ['domra-4', 'Se afina como la mandolina, con cuerdas simples.'],
  [
    'dulcimer-mountain',
    'Trastes diatónicos. Los trastes 6+ y 13+ (aquí 6½ y 13½) son de la forma moderna; los instrumentos antiguos no los tienen, y algunos recientes añaden 1+ y 8+. El orden de la melodía suele ser doble y es el más cercano a quien toca. El programa MIDI 15 es un salterio percutido.',
  ],
  [
    'dulcimer-stick',
    'Se sostiene como una guitarra. Trastes diatónicos; el traste 6+ (aquí 6½) está casi siempre, y algunos mástiles tienen también 13+ o acaban antes del traste 14. Algunas tablaturas cuentan todos los trastes, incluido 6+, de modo que 6+ pasa a ser 7: mira cuál se usa.',
  ],
  [
    'guitar-12',
    'Seis órdenes: los dos agudos al unísono, los cuatro graves en octavas. La cuerda de la octava suele estar en el lado grave de su par.',
  ],
  [
    'guitar-6',
    'Las guitarras clásicas tienen unos 650 mm y 19 trastes; las de cuerdas de acero, unos 645 mm y 20; las eléctricas, de 628 a 648 mm y de 21 a 24; 22 trastes es lo corriente, sin fuente. Programas MIDI: 24 nailon, 25 acero, 26 a 30 eléctrica.',
  ],
  ['guitar-7', 'Los mástiles multiescala tienen las cuerdas graves más largas que esta única medida.'],
  [
    'guitar-8',
    'Las cuerdas más graves piden muchas líneas adicionales en clave de sol; a menudo se usa la clave de fa o la tablatura.',
  ],
  ['guitar-9', 'No hay una afinación estándar fija.'],
  [
    'guitar-baritone',
    'A menudo se lee como parte transpositora; aquí se escribe en sonido real, una octava más arriba.',
  ],
  [
    'laud',
    'El tenor de la familia de la bandurria; se escribe como ella y suena una octava más grave. No es el laúd del Renacimiento.',
  ],
  [
    'lute-renaissance-6',
    'Los ocho trastes del mástil son de tripa atada y se pueden mover; otros, hasta el 12, van pegados a la tapa. Los trastes históricos a menudo no seguían el temperamento igual; aquí se tratan como temperamento igual. La altura es nominal: los intervalos son firmes, la altura no. El primer orden suele ser simple. Los laúdes de 7 a 10 órdenes añaden bajos diatónicos que casi siempre se tocan al aire.',
  ],
  [
    'mandocello',
    'En clave de fa en sonido real, como el violonchelo, o en una clave de sol que suena una octava más grave.',
  ],
  [
    'mandola',
    'En buena parte de Europa la palabra designa la mandolina octava. Se usan una clave de do en tercera, una clave de sol que suena una octava más grave y una clave de sol transpositora.',
  ],
  [
    'pipa',
    'La forma cromática moderna, que se sostiene vertical. Los trastes 1 a 6 son los salientes (xiang); el traste 7 es el primero de bambú, así que el pin k es el traste 6 + k. No se trata de la pipa antigua, con menos salientes. También se escribe en clave de fa o en cifras.',
  ],
  [
    'requinto',
    'También se lee como parte transpositora, una cuarta por encima de lo que indica la notación de guitarra; aquí se escribe una octava por encima del sonido.',
  ],
  [
    'ronroco',
    'Las fuentes no coinciden: C F A D A en Bolivia y Perú, D G B E B en Argentina, una octava por debajo del charango en la práctica actual.',
  ],
  [
    'tres-cubano',
    'La cuerda que cuenta en cada par está fijada a mano, de modo que los tres órdenes suben como los oye quien toca: G3 C4 E4, o A3 D4 F♯4. No siempre es la más grave.',
  ],
  ['ukulele-baritone', 'Algunos libros lo escriben una octava más arriba, como la guitarra.'],
  [
    'vihuela-mexicana',
    'Reentrante: las tres cuerdas graves suenan una octava por encima de las de la guitarra. Suele leerse en cifrado de acordes.',
  ],
  [
    'vihuela-renaissance',
    'Los diez trastes son de tripa atada y se pueden mover. Los trastes históricos a menudo no seguían el temperamento igual; aquí se tratan como temperamento igual. La altura es nominal: los intervalos, cuartas con una tercera en el centro, son firmes; la altura no.',
  ],
  [
    'viola-caipira',
    'Se usan más de veinte afinaciones, y sus nombres cambian según la región. Las notas y los pares tienen una fuente, dos órdenes al unísono y tres en octavas; los números de octava son de memoria.',
  ],
]);

export const TUNING_NOTES: typeof English.TUNING_NOTES = new Map([
  [
    'bass-4/piccolo',
    'Suena una octava por encima de un bajo normal; escrita como parte de bajo, suena como se escribe.',
  ],
  [
    'guitar-6/all-fifths',
    'Con el tiro completo, el B4 a menudo es inalcanzable; hay variantes que bajan la cuerda más aguda.',
  ],
  ['guitar-6/all-major-thirds', 'El intervalo es fijo; la altura de partida varía.'],
]);

export const CONFLICT_USES: typeof English.CONFLICT_USES = new Map([
  ['Hungarian major/3121212', 'una enciclopedia y Persichetti'],
  [
    'Hungarian major/1312131',
    'la enseñanza alemana del nombre: segundas aumentadas hasta la tercera y hasta la sensible',
  ],
  ['Hungarian/2131131', 'Kahan según Liszt, y Cooper: la séptima es mayor'],
  ['Hungarian/2131122', 'una enciclopedia que da la escala en dos formas: la séptima es menor'],
  ['Byzantine/1312131', 'una enciclopedia, sobre la escala doble armónica'],
  ['Byzantine/2131131', 'una enciclopedia, sobre escalas de siete notas'],
  ['double harmonic major/1312131', 'una enciclopedia y Persichetti'],
  ['double harmonic major/2131131', 'algunos glosarios, que llaman así a la menor húngara'],
  ['double harmonic major/1312122', 'una enciclopedia, con ♭7 añadido, sobre el frigio dominante'],
  ['super Locrian/1212222', 'una enciclopedia y Persichetti'],
  ['super Locrian/1212213', 'algunos profesores, para el séptimo modo de la menor armónica'],
  ['Locrian bb7/1221213', 'el séptimo modo de la mayor armónica'],
  [
    'Locrian bb7/1212213',
    'algunas tablas, para el séptimo modo de la menor armónica, cuya cuarta también es disminuida',
  ],
  ['Lydian minor/2221122', 'una enciclopedia y Persichetti: la tercera es mayor'],
  ['Lydian minor/2131221', 'algunos músicos, para el lidio ♭3'],
  ['Lydian diminished/2131221', 'Russell: ♯4 y ♭3'],
  ['Lydian diminished/2131212', 'algunos músicos, para el dórico ♯4'],
  ['Arabian/2211222', 'una enciclopedia, «Arabian», sobre el locrio mayor'],
  ['Arabian/1312131', 'la misma enciclopedia, «Arabic», sobre la escala doble armónica'],
  ['Enigmatic/1322211', 'Crescentini y Verdi, ascendente'],
  ['Enigmatic/1313211', 'los mismos, descendente'],
  ['melodic minor/2122221', 'forma ascendente'],
  ['melodic minor/2122122', 'forma descendente, igual que la menor natural'],
  ['melodic major/2212122', 'forma descendente'],
  ['melodic major/2212221', 'forma ascendente, igual que la mayor'],
  ['Neapolitan/1222131', 'menor napolitana'],
  ['Neapolitan/1222221', 'mayor napolitana, cuya tercera también es menor'],
  ['Romanian/2131212', 'menor rumana'],
  ['Romanian/1321212', 'mayor rumana'],
  ['altered/1212222', 'la escala alterada del jazz'],
  ['altered/1312122', 'como frigio alterado'],
  ['altered/2131212', 'como dórico alterado'],
  ['Todi/1231131', 'thaat indostánico, igual que el mela 45'],
  ['Todi/1222122', 'raga carnático, mela 8'],
]);

export const CONFLICT_NOTES: typeof English.CONFLICT_NOTES = new Map([
  ['Hungarian major', 'El uso inglés y el alemán nombran escalas distintas.'],
  ['Hungarian', 'Séptima mayor o menor.'],
  ['Byzantine', 'Dos modos de una familia.'],
  ['super Locrian', 'Para la segunda, superlocrio 𝄫7 no deja dudas.'],
  ['Locrian bb7', 'La primera coincide con su propia fórmula.'],
  ['Lydian minor', 'En la primera, «menor» se refiere a la sexta y a la séptima.'],
  ['Arabian', 'Ninguna de las dos es un maqam.'],
  ['Enigmatic', 'Una escala de dos formas.'],
  ['melodic minor', 'Una escala de dos formas; sin más, el nombre designa la ascendente.'],
  ['melodic major', 'Una escala de dos formas.'],
  ['Neapolitan', 'Mayor y menor se refieren a la sexta.'],
  ['altered', 'Sin el nombre de un modo, la alterada es la escala del jazz.'],
]);

export const FAMILY_NOTES: typeof English.FAMILY_NOTES = new Map([
  ['enigmatic-descending', 'La escala enigmática rebaja su cuarto grado al descender.'],
  [
    'persian',
    'La propia fuente considera discutibles la mayoría de los nombres de los modos; persa y Todi no lo son. El nombre viene de libros de escalas para guitarra, no de la música de Persia.',
  ],
  [
    'purvi',
    'El género cromático de la teoría griega antigua es, en temperamento igual, un modo de esta familia.',
  ],
  ['romanian-major', 'El nombre aparece sin fórmula; cuál de los siete modos designa es de memoria.'],
]);

export const SOURCES: typeof English.SOURCES = new Map([
  ['common', 'práctica común, sin fuente'],
  ['banjo-ref', 'varias listas generales de afinaciones del banjo'],
  ['guitar-theory-handbook', 'varios manuales de teoría para guitarra'],
  ['bass-lesson', 'varias lecciones publicadas para bajo eléctrico'],
  ['mandolin-lesson', 'varias lecciones publicadas para mandolina y otros mástiles cortos'],
  ['guitar-tuning-lists', 'varias listas generales de afinaciones de la guitarra'],
  ['cittern-strings', 'varias notas históricas sobre cuerdas para el cistro de los siglos XVI y XVII'],
  ['pipa-guide', 'guía para afinar la pipa, sin nombre de autor'],
  ['saz-pages', 'varias páginas didácticas sobre el bağlama'],
]);

export const NOT_SERVED: typeof English.NOT_SERVED = new Map([
  [
    'baglama',
    {
      name: 'bağlama',
      reason:
        'Tiene 17 trastes por octava, no 12: cinco de ellos quedan unos dos quintos de semitono por debajo de una nota del temperamento igual, van atados y se mueven según quien toca y según la región. Aquí un traste es un semitono, así que sus notas serían falsas.',
    },
  ],
  [
    'oud',
    {
      name: 'ud',
      reason:
        'No tiene trastes, y su música usa intervalos que no existen en el temperamento igual de doce notas. Sus afinaciones también varían según la tradición.',
    },
  ],
  [
    'guitarron',
    {
      name: 'guitarrón',
      reason:
        'No tiene trastes, así que una escala en él no se puede dar en trastes. Sus cuerdas son A1 D2 G2 C3 E3 A2.',
    },
  ],
  [
    'bass-fretless',
    {
      name: 'bajo sin trastes',
      reason:
        'No tiene trastes; sus cuerdas al aire son las del bajo con trastes, cuyos trastes pueden indicar dónde pisar. Elige el bajo con el mismo número de cuerdas.',
    },
  ],
  [
    'banjo-fretless',
    {
      name: 'banjo sin trastes',
      reason:
        'No tiene trastes; sus cuerdas al aire son las del banjo de cinco cuerdas, cuyos trastes pueden indicar dónde pisar. Elige el banjo de cinco cuerdas.',
    },
  ],
]);

const CENTURIES: ReadonlyMap<string, string> = new Map([
  ['18', 'XVIII'],
  ['19', 'XIX'],
  ['20', 'XX'],
]);

/** Cuándo apareció una fuente, donde no es un número. */
export const yearWords: typeof English.yearWords = (year) =>
  year
    .replace('undated', 'sin fecha')
    .replace('and later', 'y después')
    .replace(/(\d+)th century/, (_, century: string) => `siglo ${CENTURIES.get(century) ?? century}`);

/** La tradición de un nombre: `mela carnático 14`. */
export const traditionWords: typeof English.traditionWords = (tradition) =>
  tradition.replace('Carnatic mela', 'mela carnático').replace('Hindustani thaat', 'thaat indostánico');
