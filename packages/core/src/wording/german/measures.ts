import type { SameWords } from '../catalogue.js';
import type { measuresWords } from '../english/measures.js';

/** German sentences of the room's findings, assumptions and gaps, by code. */
export const germanMeasuresWords: SameWords<typeof measuresWords> = {
  findings: {
    'reading-stands-apart': {
      says: 'Ein Messwert, {readingMm}, fällt aus der Reihe der anderen (Mittel {meanMm}): um das {distanceRatio}-fache ihrer Streuung, der Zufall erlaubt das {criticalRatio}-fache.',
      todo: 'Stelle und Messflächen abwischen, nach Grat oder Kerbe sehen und dort noch einmal messen, bevor etwas weggelassen wird.',
    },
    'instruments-disagree': {
      says: 'Zwei Messgeräte zeigen nicht dasselbe Maß: {instrument} zeigt {lowMm}, {otherInstrument} zeigt {highMm}. Das sind {apartMm} Unterschied; ihre Fehler erklären {allowedMm}.',
      todo: 'Beide an einem Endmaß oder einem neuen Lagerring prüfen, dann mit dem richtigen noch einmal messen.',
    },
    'no-ovality-from-this-contact': {
      says: 'Messwerte mit dieser Berührung ({contact}) weichen um {spreadUm} voneinander ab, zeigen aber nicht, wie oval das Teil ist.',
      todo: 'Über zwei gegenüberliegende Punkte in mindestens drei Richtungen messen, um ein Oval zu sehen.',
    },
    'oval-with-direction': { says: 'Es ist um {ovalityUm} oval; der größte Durchmesser liegt bei {largestAtDeg}.' },
    'surface-wavy': {
      says: 'Die Oberfläche hat mehr als Oval und Konus: Die Messwerte streuen noch um {spreadUm}, wo {limitUm} durchgingen.',
      todo: 'Die Oberfläche reinigen und in mehr Richtungen messen; nach Verschleißabsätzen, Dellen oder Rost sehen.',
    },
    'too-few-readings': {
      says: 'Bei {readingCount} Messwerten ist ihre Streuung kaum bekannt, deshalb ist die Unsicherheit groß: ± {uncertaintyMm} (Faktor {coverageFactor} statt 2).',
      todo: 'An derselben Stelle zwei- oder dreimal mehr messen.',
    },
    'size-corrected-to-20-c': {
      says: 'Bei 20 °C misst das Teil {sizeAt20CMm}, nicht {meanMm}: Die Temperatur verschiebt den Messwert um {correctionUm}.',
      todo: '{sizeAt20CMm} mit der Zeichnung vergleichen; Teil und Messgerät wenn möglich eine Stunde nebeneinander liegen lassen.',
    },
    'size-conforms': { says: 'Nachweislich in den Grenzen: {sizeMm} hält von der näheren Grenze {limitMm} mehr Abstand als das Schutzband von {guardBandMm}.' },
    'size-below-lower-limit': {
      says: 'Nachweislich zu klein: {sizeMm} liegt um mehr unter {limitMm}, als die Messunsicherheit erklärt.',
      todo: 'An der kleinsten Stelle noch einmal messen; bleibt es dabei, ist das Teil Ausschuss.',
    },
    'size-above-upper-limit': {
      says: 'Nachweislich zu groß: {sizeMm} liegt um mehr über {limitMm}, als die Messunsicherheit erklärt.',
      todo: 'An der größten Stelle noch einmal messen; bleibt es dabei, ist das Teil Ausschuss.',
    },
    'size-not-provable-at-lower-limit': {
      says: 'Mit dieser Messung ist es nicht zu entscheiden: {sizeMm} ist auf ± {uncertaintyMm} genau, und die untere Grenze {limitMm} liegt darin. Wahrscheinlichkeit, dass das Teil seine Grenzen hält: {conformityPercent}.',
      todo: 'Mit etwas Feinerem messen, oder nach dem entscheiden, was das Teil leisten muss. Wer den Nachweis führt, trägt die Unsicherheit.',
    },
    'size-not-provable-at-upper-limit': {
      says: 'Mit dieser Messung ist es nicht zu entscheiden: {sizeMm} ist auf ± {uncertaintyMm} genau, und die obere Grenze {limitMm} liegt darin. Wahrscheinlichkeit, dass das Teil seine Grenzen hält: {conformityPercent}.',
      todo: 'Mit etwas Feinerem messen, oder nach dem entscheiden, was das Teil leisten muss. Wer den Nachweis führt, trägt die Unsicherheit.',
    },
    'other-instrument-would-decide': {
      says: 'Mit einem anderen Messgerät wäre es entschieden: {decider} ist auf ± {deciderUncertaintyMm} genau; diese Messung ({instrument}) nur auf ± {uncertaintyMm}.',
      todo: 'Damit noch einmal messen, wenn es etwa dasselbe Maß zeigt.',
    },
    'steadier-readings-would-decide': {
      says: '{instrument} selbst würde entscheiden (± {deciderUncertaintyMm}); die Streuung der Messwerte macht daraus ± {uncertaintyMm}.',
      todo: 'Teil und Messgerät abwischen, auf den größten oder kleinsten Wert einpendeln und an jeder Stelle dreimal messen.',
    },
    'no-listed-instrument-decides': {
      says: 'Kein Messgerät der Liste würde ein Maß so nah an seiner Grenze entscheiden.',
      todo: 'In einem Messraum messen lassen oder das Teil als nicht nachgewiesen behandeln.',
    },
    'no-reading-could-prove-it': {
      says: 'Was sie auch zeigt, diese Messung ({instrument}, ± {uncertaintyMm}) könnte eine Toleranz von {toleranceMm} nie nachweisen: Sie kann nur ein Teil erkennen, das deutlich außerhalb liegt.',
    },
    'instrument-coarse-for-tolerance': {
      says: 'Für eine Toleranz von {toleranceMm} sollte die Unsicherheit höchstens {wantedMm} sein; diese ist {uncertaintyMm} ({instrument}). Das günstigste, das genügt: {decider}, ± {deciderUncertaintyMm}.',
    },
    'no-listed-instrument-for-tolerance': {
      says: 'Für eine Toleranz von {toleranceMm} sollte die Unsicherheit höchstens {wantedMm} sein; diese ist {uncertaintyMm} ({instrument}), und kein Messgerät der Liste ist so gut.',
      todo: 'Mit einem Einstellring oder Endmaß von fast gleichem Maß vergleichen; das nimmt den größten Teil des Fehlers.',
    },
  },
  notChecked: {
    'parts-picked-independently': 'Ob Bohrungen und Wellen unabhängig gegriffen werden: Zu Paaren sortierte Teile passen besser als berechnet.',
    'process-before-measuring': 'Was vor dem Messen über solche Teile bekannt ist (wie sie gefertigt werden oder verschleißen), würde die Wahrscheinlichkeit verschieben; es wurde nicht gezählt.',
    'hand-in-uncertainty': 'Wie gut die Hand einen Messwert wiederholt: Nichts wurde an einer Stelle zweimal gemessen.',
    'other-instruments-in-decision': 'Messwerte der anderen Messgeräte: Die Entscheidung beruht auf dem feinsten.',
    'form-from-one-reading': 'Oval und Konus: Es gibt nur einen Messwert.',
    'form-between-readings': 'Was das Teil zwischen den Messstellen macht, steckt nicht in der Unsicherheit.',
    'temperature-in-uncertainty': 'Temperatur von Teil und Messgerät: mit 20 °C angenommen und nicht in der Unsicherheit.',
    'repeatability-of-every-set': 'Wie gut die Hand einen Messwert wiederholt: Nicht mit jedem Messgerät wurde an einer Stelle zweimal gemessen.',
    'odd-lobes': 'Gleichdicke ungerader Zahl (drei, fünf …): Über zwei Punkte gemessen bleiben sie unsichtbar. Prisma und Messuhr zeigen sie.',
  },
  assumed: {
    'spread-of-hole': 'Wie Bohrungen zwischen ihren Grenzen streuen',
    'spread-of-shaft': 'Wie Wellen zwischen ihren Grenzen streuen',
    'deviations-to-limit-of-hole': 'Standardabweichungen der Bohrungen vom Gipfel bis zur näheren Grenze',
    'deviations-to-limit-of-shaft': 'Standardabweichungen der Wellen vom Gipfel bis zur näheren Grenze',
    'guard-band-rule': 'Entscheidungsregel: Von den Grenzen wird die ganze erweiterte Unsicherheit abgehalten',
    'uncertainty-share': 'Anteil der Toleranz, den die Unsicherheit nehmen darf',
    'two-point-contact': 'Wie das Messgerät berührt',
    'waviness-steps': 'Schritte des Messgeräts, über die Messwerte streuen dürfen',
    'outlier-false-alarm': 'Wahrscheinlichkeit eines Fehlalarms bei einem Ausreißer',
    'instrument-expansion': 'Ausdehnung des Messgeräts, Stahl',
    'part-expansion-scatter': 'Streuung des Ausdehnungskoeffizienten des Teils',
    'instrument-temperature-as-part': 'Temperatur des Messgeräts, vom Teil übernommen',
    'temperature-uncertainty': 'Wie genau die Temperaturen bekannt sind, plus oder minus',
  },
  effects: {
    'spread-of-fit': 'wie oft die Passung lose oder zu fest ist',
    'decision-on-size': 'was als nachgewiesen gilt',
    'instrument-for-tolerance': 'welches Messgerät als gut genug für die Toleranz gilt',
    'oval-and-its-direction': 'das Oval und seine Richtung',
    'called-wavy': 'ob die Oberfläche als wellig gilt',
    'called-outlier': 'ob ein Messwert als Ausreißer gilt',
    'size-at-20-c': 'das Maß bei 20 °C und seine Unsicherheit',
  },
  readings: {},
  values: { 'stated-uncertainty': 'Unsicherheit wie angegeben', 'three-point': 'Dreipunkt', 'v-block': 'Prisma', 'expanded-uncertainty': 'die ganze erweiterte Unsicherheit', 'probability-95': 'eine Wahrscheinlichkeit von 95 %' },
};
