import { defineElement } from '../internal/define-element.js';
import { SeatLengthField } from './length-field.js';

defineElement('seat-length-field', SeatLengthField);
