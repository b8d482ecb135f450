/** What `shelf` and `record` say beside the sentences of the library, by language. */
const english = {
  counts: '{rowCount} {rowCount|row|rows}: {suitsCount} suit, {suitsWithCareCount} suit with care, {cannotTellCount} cannot be told, {doesNotSuitCount} do not suit, {skippedCount} skipped.',
  noneOfSize: 'No seal of the list has the size.',
  near: 'Near, but another size:',
  line: 'line {line}',
  stock: '{pieceCount} in stock',
  shaft: 'shaft {value}',
  outside: 'outside {value}',
  right: 'right',
  skipped: 'Skipped ({skippedCount}):',
  unread: 'Line {line}',
  hint: 'A list is a hint: measure the seal that you take, and look at its lip.',
  record: 'Record',
  after: '{hours} after the one before',
  bore: 'bore {sizeMm}',
  shaftSize: 'shaft {sizeMm}',
  lipTravel: 'Lip travel on record: {lipTravelKm}.',
  dueNext: 'Due next: {when} ({by}).',
  at: 'at {hours}',
  onDay: 'by {day}',
  dueBy: { 'hour meter': 'hour meter', 'lip travel': 'lip travel', calendar: 'calendar', 'growth of the bore': 'growth of the bore', 'whichever comes first': 'whichever comes first' },
};

export type ListWords = typeof english;

const german: ListWords = {
  counts: '{rowCount} {rowCount|Zeile|Zeilen}: {suitsCount} {suitsCount|passt|passen}, {suitsWithCareCount} {suitsWithCareCount|passt|passen} mit Vorbehalt, {cannotTellCount} nicht entscheidbar, {doesNotSuitCount} {doesNotSuitCount|passt|passen} nicht, {skippedCount} ausgelassen.',
  noneOfSize: 'Kein Ring der Liste hat das Maß.',
  near: 'Nahe daran, aber ein anderes Maß:',
  line: 'Zeile {line}',
  stock: '{pieceCount} vorrätig',
  shaft: 'Welle {value}',
  outside: 'außen {value}',
  right: 'passt',
  skipped: 'Ausgelassen ({skippedCount}):',
  unread: 'Zeile {line}',
  hint: 'Eine Liste ist ein Hinweis: Den Ring, der genommen wird, messen und seine Lippe ansehen.',
  record: 'Aufzeichnung',
  after: '{hours} nach dem vorigen',
  bore: 'Bohrung {sizeMm}',
  shaftSize: 'Welle {sizeMm}',
  lipTravel: 'Gleitweg der Lippe bisher: {lipTravelKm}.',
  dueNext: 'Nächster Wechsel: {when} ({by}).',
  at: 'bei {hours}',
  onDay: 'bis {day}',
  dueBy: { 'hour meter': 'Stundenzähler', 'lip travel': 'Gleitweg der Lippe', calendar: 'Kalender', 'growth of the bore': 'Wachsen der Bohrung', 'whichever comes first': 'was zuerst eintritt' },
};

/** The words of the language of a catalogue. */
export function listWordsOf({ language }: { readonly language: string }): ListWords {
  return language === 'de' ? german : english;
}
