import { LitElement } from 'lit';
import { property } from 'lit/decorators.js';
import { english, type Catalogue } from '@seatwright/core/wording';
import type { ElementWords } from '../words/element-words.js';
import { englishWords } from '../words/english.js';
import { SpeaksPageLanguage } from '../words/speak.js';

/** An element that writes sentences of the library beside words of its own, in the language of the page. */
export abstract class SentenceElement extends LitElement {
  /** Sentences about findings, steps and values. */
  @property({ attribute: false }) catalogue: Catalogue = english;
  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;

  constructor() {
    super();
    new SpeaksPageLanguage(this, english);
  }
}
