import { defineElement } from '../internal/define-element.js';
import { SeatSection } from './section.js';

defineElement('seat-section', SeatSection);
