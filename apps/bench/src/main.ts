import '@seatwright/elements/all.js';
import './bench-app.js';
