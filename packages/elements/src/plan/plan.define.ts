import { defineElement } from '../internal/define-element.js';
import { SeatPlan } from './plan.js';

defineElement('seat-plan', SeatPlan);
