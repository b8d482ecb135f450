import { defineElement } from '../internal/define-element.js';
import { SeatLipSpeed } from './lip-speed.js';

defineElement('seat-lip-speed', SeatLipSpeed);
