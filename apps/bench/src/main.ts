import './bench-app.js';
import './keeping/offline-notice.js';
