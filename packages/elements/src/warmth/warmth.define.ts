import { defineElement } from '../internal/define-element.js';
import { SeatWarmth } from './warmth.js';

defineElement('seat-warmth', SeatWarmth);
