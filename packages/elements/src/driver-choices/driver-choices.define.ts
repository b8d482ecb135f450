import { defineElement } from '../internal/define-element.js';
import { SeatDriverChoices } from './driver-choices.js';

defineElement('seat-driver-choices', SeatDriverChoices);
