import { defineElement } from '../internal/define-element.js';
import { SeatFindings } from './findings.js';

defineElement('seat-findings', SeatFindings);
