/**
 * Survivors that were looked at and may stay. `file` is how the file begins, under `packages/core/src/`; `from` a part of what was
 * changed; `to` what it became, whole. The first entry that fits gives the reason.
 */
export const argued = [
  // tolerance
  { file: 'tolerance/internal/settled', from: '/ 1000 + 0', why: 'equal: what is taken off or added is nothing; it makes nothing below nothing to nothing' },
  { file: 'tolerance/internal/given-range', from: '/ 1000 + 0', why: 'equal: what is taken off or added is nothing' },
  { file: 'tolerance/internal/given-range', from: "forms.length === 2 && forms.includes('sizesMm')", why: 'cannot come: half a pair was refused before' },
  { file: 'tolerance/identify-class', from: 'matching.slice(0, longestList)', why: 'equal: no size has more than twelve classes of equal limits' },
  { file: 'tolerance/identify-class', from: 'nearest === undefined', why: 'cannot come: every size within the tables has classes' },
  // quantity
  { file: 'quantity/internal/read-number', from: "/[0-9.,]/.test(sign) || vulgar.has(sign)", why: 'the reader of the number says the same at the same place' },
  { file: 'quantity/internal/read-number', from: "all === ''", why: 'equal: nothing is read exactly when neither digits before nor behind the mark are' },
  { file: 'quantity/internal/read-number', from: "whole === '' && part === ''", why: 'equal: nothing is read exactly when neither digits before nor behind the mark are' },
  { file: 'quantity/internal/read-number', from: 'mark !== undefined', why: 'equal: three digits behind a mark have a mark' },
  { file: 'quantity/internal/read-number', from: '/^[.,]\\d/', why: 'equal: the text tried is two characters long' },
  { file: 'quantity/internal/read-number', from: '/^[eE][0-9+-]/', why: 'equal: the text tried is two characters long' },
  { file: 'quantity/internal/read-number', from: '/^[.,]/', why: 'refused either way; the wording of the fault differs' },
  { file: 'quantity/quantity-field', from: "typeof written === 'number'", why: 'equal: a number is read as itself, only slower' },
  { file: 'quantity/quantity-field', from: 'error instanceof CalculationError', why: 'passes on what cannot happen: the readers throw nothing else' },
  { file: 'quantity/write-length', from: '> 1e-6', why: 'equal: a difference of exactly a nanometre does not come about' },
  { file: 'quantity/write-length', from: 'valueMm < 0', to: 'valueMm <= 0', why: 'equal: nothing has no sign' },
  { file: 'quantity/write-number', from: 'value < 0', why: 'equal: nothing has no sign' },
  { file: 'quantity/internal/ratio', from: 'top < 0n', why: 'equal: nothing has no sign' },
  { file: 'quantity/internal/ratio', from: '2n * top * sign', why: 'equal: the sign is 1 or −1' },
  { file: 'quantity/internal/ratio', from: 'Number.MAX_SAFE_INTEGER', why: 'the two ways give the same where both are exact; one is quicker' },
  { file: 'quantity/internal/read-number', from: '[]', why: 'cannot come: the pattern of a decimal fits any text' },
  { file: 'quantity/write-length', from: 'decimals === undefined', to: 'false', why: 'equal: an option that is undefined is left out all the same' },
  { file: 'quantity/quantity-field', from: 'exclusiveMinimum', why: 'shown in the JSON Schema; the laws on schemas, not run here, hold it against the checks themselves' },
  { file: 'quantity/quantity-field', from: 'schemaLimits', why: 'shown in the JSON Schema; the laws on schemas, not run here, hold it against the checks themselves' },
  { file: 'quantity/quantity-field', from: 'Object.entries', why: 'shown in the JSON Schema; the laws on schemas, not run here, hold it against the checks themselves' },
  { file: 'quantity/quantity-field', from: 'entry', why: 'shown in the JSON Schema; the laws on schemas, not run here, hold it against the checks themselves' },
  { file: 'quantity/quantity-field', kind: 'BlockStatement', why: 'shown in the JSON Schema; the laws on schemas, not run here, hold it against the checks themselves' },
  { file: 'quantity/internal/read-quantity', from: 'term === first', why: 'equal: kinds with an offset allow no sums, so that there is one term' },
  { file: 'quantity/internal/read-quantity', from: 'startsNumber', why: 'the reader of the number says the same at the same place' },
  { file: 'quantity/internal/read-quantity', from: 'text.slice(at, at + 1)', why: 'a diameter sign elsewhere is refused either way' },
  { file: 'quantity/internal/read-quantity', from: 'at + 1', why: 'a diameter sign elsewhere is refused either way; else a word in a message' },
  { file: 'quantity/internal/read-quantity', from: 'spelling.length > best.length', why: 'equal: no two spellings of one length stand at one place' },
  { file: 'quantity/internal/read-quantity', from: "best === ''", why: 'refused either way, at the same place; the wording differs' },
  { file: 'quantity/internal/read-quantity', from: '/[A-Za-zµμ]$/', why: 'refused either way; the wording differs' },
  { file: 'quantity/internal/read-quantity', from: '/^[A-Za-zµμ0-9²]/', why: 'equal: the text tried is one character long' },
  { file: 'quantity/internal/read-quantity', from: '/^[^\\s\\d+]+', why: 'a word in a message' },
];
