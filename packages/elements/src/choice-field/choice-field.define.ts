import { defineElement } from '../internal/define-element.js';
import { SeatChoiceField } from './choice-field.js';

defineElement('seat-choice-field', SeatChoiceField);
