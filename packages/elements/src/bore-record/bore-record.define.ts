import { defineElement } from '../internal/define-element.js';
import { SeatBoreRecord } from './bore-record.js';

defineElement('seat-bore-record', SeatBoreRecord);
