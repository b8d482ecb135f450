import { invalidInput } from '@seatwright/core/result';
import { english, type Catalogue } from '@seatwright/core/wording';

/** The others are read when they are asked for. */
const languages: Readonly<Record<string, () => Promise<Catalogue>>> = {
  en: () => Promise.resolve(english),
  de: async () => (await import('./german.js')).german,
};

/** The sentences of the language that `--language` names. */
export async function catalogueOf(language: string): Promise<Catalogue> {
  const read = Object.hasOwn(languages, language) ? languages[language] : undefined;
  if (read === undefined) throw invalidInput('--language', language, Object.keys(languages).join(' or '), 'unknown language');
  return read();
}
