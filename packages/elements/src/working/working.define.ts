import { defineElement } from '../internal/define-element.js';
import { SeatWorking } from './working.js';

defineElement('seat-working', SeatWorking);
