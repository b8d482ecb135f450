export { german } from '@seatwright/core/wording';
