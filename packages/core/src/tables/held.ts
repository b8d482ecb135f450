/** How a number is held: seen on a published page, computed, recalled without a page, or common practice without a source. */
export type Held = 'page' | 'computed' | 'memory' | 'practice';
