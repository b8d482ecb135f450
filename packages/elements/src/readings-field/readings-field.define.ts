import { defineElement } from '../internal/define-element.js';
import { SeatReadingsField } from './readings-field.js';

defineElement('seat-readings-field', SeatReadingsField);
