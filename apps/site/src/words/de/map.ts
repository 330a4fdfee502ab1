/**
 * Die Texte der Karte. German.
 */
import type * as English from '../en/map.ts';
import type { SameShape } from '../languages.ts';

export const MAP: SameShape<typeof English.MAP> = {
  title: 'Die Karte der Modi',
  description:
    'Alle 462 Modi der 66 siebentönigen Familien in einem Bild: Eine Spalte ist eine Familie, die Höhe ist die Helligkeit, und Nachbarn liegen eine Zeile auseinander.',
  lead: 'Alle 462 Modi in einem Bild. Eine Spalte ist eine Familie, von gleichmäßigen Schritten links zu ungleichmäßigen rechts; je höher eine Marke, desto heller ihr Modus.',

  pictureLabel: 'Karte der Modi, lässt sich schieben',
  skip: 'Das Bild überspringen: Die Tabellen unten sagen dasselbe',
  zoom: 'Größe',
  sizes: [
    ['whole', 'ganz'],
    ['1', 'einfach'],
    ['2', 'doppelt'],
    ['4', 'vierfach'],
  ],
  keysHint:
    'Mit der Tastatur: mit Tab in die Karte, dann die Pfeiltasten (oben ist heller, links und rechts sind die nächsten Familien), Eingabe zum Öffnen, + und − für die Größe. Mit der Maus: ziehen zum Verschieben, das Rad mit der Strg-Taste für die Größe.',
  brighter: 'hell',
  darker: 'dunkel',
  largestSteps: 'größte Schritte',

  keyTitle: 'So liest man sie',
  keyDegree:
    'Zahl und Form sagen, der wievielte Modus seiner Familie es ist: Eine Form hat so viele Ecken wie ihre Zahl, die Scheibe ist der erste.',
  keyChurch: 'Die sieben Kirchenmodi sind gefüllt; sie hängen in der ersten Spalte.',
  keyNamed: 'Ein kräftiger Umriss hat einen gebräuchlichen Namen, ein dünner ist nach der Regel benannt.',
  keyLowered: 'durch erniedrigte Stufen von seinem Kirchenmodus abgeleitet',
  keyRaised: 'durch erhöhte Stufen von seinem Kirchenmodus abgeleitet',

  showsTitle: 'Was sie zeigt',
  showsRows:
    'Erhöhe eine Stufe eines Modus um einen Halbton, und du bist eine Zeile höher, wo auch immer du landest. Darum liegen Nachbarn immer in den Zeilen gleich darüber und darunter, und ein Weg von einem Modus zum anderen ist ein Aufstieg.',
  showsMiddle:
    'Jede Familie hängt um die Linie von Dorisch: Die sieben Modi einer Familie sind im Mittel genau so hell wie Dorisch. Je gleichmäßiger die Schritte, desto näher bleiben sie daran; am nächsten bleibt die Durtonleiter, mit sieben Zeilen hintereinander.',
  showsMirror:
    'Kehre die Schritte einer Familie um, und du hast ihr Spiegelbild, so hell unter der Linie wie zuvor darüber. Die beiden stehen nebeneinander, wie harmonisches Moll und harmonisches Dur; eine Familie, die ihr eigenes Spiegelbild ist, steht allein, wie die Durtonleiter, deren Dorisch sich vorwärts wie rückwärts gleich liest.',
  showsNames:
    'Alle Familien mit eigenem Namen stehen links: Keine von ihnen hat einen Schritt von mehr als drei Halbtönen.',

  tablesTitle: 'Die Karte in Worten',
  tablesLead:
    'Familie für Familie, jede mit ihren Modi von hell nach dunkel; die Zahl vor einem Modus ist seine Stufe, die dahinter seine Helligkeit.',
  familyHead: 'Familie',
  modesHead: 'Modi von hell nach dunkel',
  mirrorOf: 'Spiegelbild der Familie',
  ownMirror: 'ihr eigenes Spiegelbild',

  neighbours: 'Nachbarn',
  neighboursLead: 'eine Stufe um einen Halbton entfernt',
  compareWith: 'Vergleichen mit',
  routeFrom: 'Weg von',
  pointed: 'Die Marke, auf die du zeigst, wird hier genannt; was daneben liegt, steht unter dem Bild.',
  point:
    'Zeige auf eine Marke, oder gehe mit den Pfeiltasten zu einer, um zu sehen, was sie ist und welche Modi daneben liegen.',
};
