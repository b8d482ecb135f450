import type { SameWords } from '../catalogue.js';
import type { holdAndDrawWords } from '../english/hold-and-draw.js';

/** German sentences about the test that a housing holds air, and the rod that draws a part in, by code. */
export const germanHoldAndDrawWords: SameWords<typeof holdAndDrawWords> = {
  findings: {
    'leak-limit-not-given': { says: 'Es entweichen {leakMlPerMin} (± {uncertaintyMlPerMin}) Luft. Eine Grenze ist nicht angegeben; ob das zu viel ist, kann niemand sagen.', todo: 'Die Grenze aus der Anleitung des Herstellers nehmen: so viel Druckverlust in so viel Zeit.' },
    'holds-air': { says: 'Es ist dicht: {leakMlPerMin} (± {uncertaintyMlPerMin}) Luft, zulässig sind {limitMlPerMin}.' },
    'leaks-air': { says: 'Es entweichen {leakMlPerMin} (± {uncertaintyMlPerMin}) Luft, mehr als die zulässigen {limitMlPerMin}.', todo: 'Mit Seifenwasser suchen: Lippen, Ränder, Fugen, Stopfen, die Schläuche der Prüfung selbst.' },
    'leak-cannot-tell': { says: 'Es entweichen {leakMlPerMin} (± {uncertaintyMlPerMin}) Luft; zulässig sind {limitMlPerMin}: In dieser Zeit kann dieses Manometer das nicht entscheiden.', todo: 'Länger warten oder ein feineres Manometer nehmen.' },
    'leak-too-near-limit': { says: 'Es entweichen {leakMlPerMin} (± {uncertaintyMlPerMin}) Luft; zulässig sind {limitMlPerMin}: zu nah, um zu entscheiden, und längeres Warten hilft nicht.', todo: 'Ein feineres Manometer nehmen und das Volumen genauer bestimmen.' },
    'leak-is-real': { says: 'Der Druckabfall ist größer, als die Fehler von Manometer und Temperatur erklären.' },
    'leak-below-nothing': { says: 'Der Druck ging in die andere Richtung, um mehr, als seine Fehler erklären: Das Teil änderte noch seine Temperatur, oder die Ablesungen sind vertauscht.', todo: 'Warten, bis das Teil so warm ist wie der Raum, und noch einmal prüfen.' },
    'test-pressure-over-lip': { says: 'Der Prüfdruck ({testMpa}) liegt über dem, was einer einfachen Lippe im Stillstand gegeben wird ({limitMpa}).', todo: 'Nur, wenn die Anleitung des Herstellers es verlangt.' },
    'rod-draws-it-in': { says: 'Eine Gewindestange {thread} zieht ihn ein: {lowTorqueNm} bis {highTorqueNm} an der Mutter bei {pushForceN}, das {reserveFactor}-fache der nötigen Festigkeit.' },
    'rod-barely-draws-it-in': { says: 'Eine Gewindestange {thread} zieht ihn gerade noch ein: Sie hat das {reserveFactor}-fache der nötigen Festigkeit, verlangt ist das {wantedFactor}-fache.', todo: 'Eine dickere Stange oder eine aus besserem Stahl nehmen und das Gewinde ölen.' },
    'rod-too-weak': { says: 'Keine vorhandene Stange ist stark genug für {pushForceN}: {thread} würde nachgeben.', todo: 'Eine dickere Stange, eine aus besserem Stahl oder eine Presse nehmen.' },
  },
  steps: {
    'draw-set-up': 'Die Gewindestange {thread} durch die Mitte stecken: hinten eine Platte oder Brücke, vorn das Einpresswerkzeug und eine dicke Scheibe, an jedem Ende eine Mutter.',
    'draw-oil-thread': 'Gewinde und Auflage der Mutter ölen.',
    'draw-line-up': 'Das Teil von Hand gerade ansetzen und das Einpresswerkzeug danach ausrichten, bevor die Mutter anliegt.',
    'draw-turn-nut': 'Die Stange halten und die Mutter drehen (Schlüsselweite {acrossFlatsMm}). Eine Umdrehung zieht {pitchMm}. Zu erwarten sind höchstens {lowTorqueNm} bis {highTorqueNm}.',
    'draw-stop': 'Aufhören, wenn das Drehmoment springt: Es sitzt, oder es ist schief. Über {highTorqueNm} herausnehmen und nachsehen.',
  },
  notChecked: {
    'gauge-step': 'Wie fein sich das Manometer ablesen lässt: den kleinsten Schritt angeben, wo er gröber ist als sein Fehler.',
    'gauge-was-checked': 'Ob Manometer und Schläuche für sich dicht sind: zuerst abgesperrt prüfen.',
    'what-expands-under-test': 'Schläuche und Deckel, die sich dehnen: nach dem Aufpumpen eine Minute warten, dann zum ersten Mal ablesen.',
    'temperature-during-hold': 'Ob das Teil inzwischen seine Temperatur änderte: 1 K verschiebt den Druck um etwa 0,4 kPa (Gasgesetz bei gleichem Volumen: 120 kPa absolut durch 293 K).',
    'rod-bends': 'Ob die Stange schief gezogen wird und sich biegt.',
    'thread-strips-in-soft-nut': 'Ob eine weiche oder verschlissene Mutter ausreißt: eine volle Stahlmutter nehmen.',
  },
  assumed: {
    'discharge-of-hole': 'Ausflusszahl eines Lochs, scharfkantig bis gerundet',
    'air-pressure-normal': 'Druck der Umgebungsluft',
    'gauge-error': 'Fehler des Manometers',
    'volume-error': 'Fehler des Volumens',
    'temperature-error': 'Fehler der Temperaturen',
    'temperature-steady': 'Temperatur, bei beiden Ablesungen gleich',
    'thread-friction': 'Reibung im Gewinde und unter der Mutter',
    'rod-yield': 'Streckgrenze der Stange, die schwächste verkaufte Klasse',
    'rod-reserve': 'Festigkeit der Stange über dem, was sie tragen muss',
  },
  effects: {
    'size-of-hole': 'die Größe des Lochs',
    'the-leak': 'die Leckage',
    'leak-verdict': 'wie sicher sie festgestellt ist',
    'nut-torque': 'das Drehmoment an der Mutter',
    'rod-strength': 'welche Stange genügt',
  },
  readings: {
    limitDropMpa: 'der zulässige Druckverlust',
    holdHours: 'eine längere Haltezeit',
    gaugeErrorMpa: 'ein feineres Manometer',
  },
};
