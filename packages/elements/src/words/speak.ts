import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Catalogue } from '@seatwright/core/wording';
import type { ElementWords } from './element-words.js';
import { englishWords } from './english.js';

/** All that elements say: sentences about findings, steps and values, and their own words. */
export interface SpokenLanguage {
  readonly catalogue: Catalogue;
  readonly words: ElementWords;
}

interface Speaker extends ReactiveControllerHost {
  words: ElementWords;
  catalogue?: unknown;
}

/** The language of the page; null while nobody has chosen one, and each element says what it brings along. */
let spoken: SpokenLanguage | null = null;
const speakers = new Set<Speaker>();
/** Every catalogue and set of words that was the language of the page at some time, and what elements begin with. */
const everSpoken = new Set<unknown>([englishWords]);

/**
 * Gives all elements of the page another language, those on it and those to come.
 * An element that was given `words` or a `catalogue` of its own keeps it.
 */
export function speak(language: SpokenLanguage): void {
  spoken = language;
  everSpoken.add(language.catalogue).add(language.words);
  for (const speaker of speakers) follow(speaker);
}

function follow(speaker: Speaker): void {
  if (spoken === null) return;
  if (everSpoken.has(speaker.words)) speaker.words = spoken.words;
  if (everSpoken.has(speaker.catalogue)) speaker.catalogue = spoken.catalogue;
}

/** Keeps an element in the language of the page while it is on it. */
export class SpeaksPageLanguage implements ReactiveController {
  private readonly speaker: Speaker;

  /** @param catalogue what the element says until a language is chosen */
  constructor(speaker: Speaker, catalogue?: unknown) {
    if (catalogue !== undefined) everSpoken.add(catalogue);
    this.speaker = speaker;
    speaker.addController(this);
  }

  hostConnected(): void {
    speakers.add(this.speaker);
    follow(this.speaker);
  }

  hostDisconnected(): void {
    speakers.delete(this.speaker);
  }
}
