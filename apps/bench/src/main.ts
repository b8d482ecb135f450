import './bench-app.js';
