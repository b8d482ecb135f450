import { defineElement } from '../internal/define-element.js';
import { SeatBearingSection } from './bearing-section.js';

defineElement('seat-bearing-section', SeatBearingSection);
