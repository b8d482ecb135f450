import { defineElement } from '../internal/define-element.js';
import { SeatZones } from './zones.js';

defineElement('seat-zones', SeatZones);
