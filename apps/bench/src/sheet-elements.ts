// The elements that every sheet shows; charts and the working come when they are opened.
import '@seatwright/elements/seat-choice-field.define.js';
import '@seatwright/elements/seat-driver-choices.define.js';
import '@seatwright/elements/seat-findings.define.js';
import '@seatwright/elements/seat-length-field.define.js';
import '@seatwright/elements/seat-plan.define.js';
import '@seatwright/elements/seat-quantity-field.define.js';
import '@seatwright/elements/seat-readings-field.define.js';
import '@seatwright/elements/seat-section.define.js';
import '@seatwright/elements/seat-verdict.define.js';
