import { defineElement } from '../internal/define-element.js';
import { SeatQuantityField } from './quantity-field.js';

defineElement('seat-quantity-field', SeatQuantityField);
