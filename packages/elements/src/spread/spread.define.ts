import { defineElement } from '../internal/define-element.js';
import { SeatSpread } from './spread.js';

defineElement('seat-spread', SeatSpread);
