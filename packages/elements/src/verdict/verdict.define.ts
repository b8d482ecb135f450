import { defineElement } from '../internal/define-element.js';
import { SeatVerdict } from './verdict.js';

defineElement('seat-verdict', SeatVerdict);
