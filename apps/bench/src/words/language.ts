import { configureLocalization, LOCALE_STATUS_EVENT } from '@lit/localize';

/** Languages that the page is written in; English is brought along, the others are fetched when they are chosen. */
export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** Each by its own name. */
export const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' };
type Fetched = Exclude<Language, 'en'>;

/** One part of what the page says, in the language that is in use. */
interface Part {
  fetch(language: Fetched): Promise<void>;
  use(language: Language): void;
}

/** Words that were fetched, and from where. */
interface FetchedWords<W> {
  readonly words: W;
  readonly address: string;
}

const parts: Part[] = [];
/** A change of language under way. */
let changing: Promise<unknown> = Promise.resolve();

const { getLocale, setLocale } = configureLocalization({
  sourceLocale: 'en',
  targetLocales: ['de'],
  loadLocale: async (language) => {
    await Promise.all(parts.map((part) => part.fetch(language as Fetched)));
    // Our words are typed catalogues, which the compiler compares; the library keeps the state and has everything drawn anew.
    return { templates: {} };
  },
});

/** The language in use. */
export function currentLanguage(): Language {
  return getLocale() as Language;
}

/**
 * Words that come in every language. `take` is handed those of the language in use, now and whenever another is chosen.
 * Resolves once they are there; where they cannot be fetched, the whole page falls back to English.
 */
export async function inEveryLanguage<W>(english: W, others: Readonly<Record<Fetched, () => Promise<FetchedWords<W>>>>, take: (words: W) => void): Promise<void> {
  const known: Partial<Record<Language, W>> = { en: english };
  const part: Part = {
    fetch: async (language) => {
      if (known[language] !== undefined) return;
      const { words, address } = await others[language]();
      known[language] = words;
      void keepForOffline(address);
    },
    use: (language) => { take(known[language] ?? english); },
  };
  parts.push(part);
  await changing;
  const language = currentLanguage();
  if (language === 'en') return;
  await part.fetch(language).catch(() => setLocale('en'));
  part.use(currentLanguage());
}

if ('addEventListener' in globalThis) {
  addEventListener(LOCALE_STATUS_EVENT, ({ detail }) => {
    if (detail.status !== 'ready') return;
    const language = currentLanguage();
    document.documentElement.lang = language;
    for (const part of parts) part.use(language);
  });
}

/** Of the languages that are fetched only the one in use is kept for days without a network; the service worker serves it from here. */
const languageCache = 'languages';

export async function keepForOffline(address: string): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  try {
    await navigator.serviceWorker.ready;
    const cache = await caches.open(languageCache);
    await cache.add(address);
    // The same words of an older version of the page are of no more use.
    const named = (url: string) => url.replace(/-[\w-]{8}\.js$/u, '');
    for (const { url } of await cache.keys()) if (url !== address && named(url) === named(address)) await cache.delete(url);
  } catch {
    // Without storage the page needs the network for this language; it works all the same.
  }
}

const place = 'seatwright-language';

/** Begins in the language that was chosen on this device, else in that of the browser, else in English. Resolves once it can be spoken. */
export async function beginLanguage(): Promise<void> {
  changing = setLocale(rememberedLanguage() ?? preferredOf(navigator.languages)).catch(() => setLocale('en'));
  await changing;
}

/** Another language from now on, remembered on this device. Rejects where it cannot be fetched; the language in use stays. */
export async function chooseLanguage(language: Language): Promise<void> {
  const before = currentLanguage();
  const change = setLocale(language);
  changing = change.catch(() => setLocale(before));
  await changing;
  await change;
  try {
    localStorage.setItem(place, language);
  } catch {
    // A browser that keeps nothing asks again next time.
  }
}

/** The first language that the page is written in, of those that a person reads. */
function preferredOf(read: readonly string[]): Language {
  for (const tag of read) {
    const [language = ''] = tag.toLowerCase().split('-');
    if (isLanguage(language)) return language;
  }
  return 'en';
}

function rememberedLanguage(): Language | null {
  try {
    const remembered = localStorage.getItem(place) ?? '';
    return isLanguage(remembered) ? remembered : null;
  } catch {
    return null;
  }
}

function isLanguage(text: string): text is Language {
  return (languages as readonly string[]).includes(text);
}
