import { svg, html, type TemplateResult } from 'lit';
import type { Severity, Verdict } from '@seatwright/core/result';

type Shape = 'ring' | 'dot' | 'triangle' | 'diamond' | 'octagon';

const shapeOf: Readonly<Record<Severity, Shape>> = { good: 'ring', note: 'dot', care: 'triangle', unknown: 'diamond', bad: 'octagon' };
const severityOf: Readonly<Record<Verdict, Severity>> = { suits: 'good', 'suits with care': 'care', 'cannot tell': 'unknown', 'does not suit': 'bad' };

const outlines = {
  ring: svg`<circle cx="12" cy="12" r="10"></circle>`,
  dot: svg`<circle cx="12" cy="12" r="9"></circle>`,
  triangle: svg`<path d="M12 1.8 23 21.6H1Z"></path>`,
  diamond: svg`<path d="M12 .8 23.2 12 12 23.2 .8 12Z"></path>`,
  octagon: svg`<path d="M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4Z"></path>`,
} as const;

const marks = {
  good: svg`<path d="m7 12.4 3.4 3.6 6.8-7.6"></path>`,
  note: svg`<path d="M12 11v6M12 7.2v.2"></path>`,
  care: svg`<path d="M12 8.6v6M12 17.9v.2"></path>`,
  unknown: svg`<path d="M9.2 9.3c.2-3.6 5.8-3.4 5.6 0-.1 2-2.8 2.2-2.8 4.4M12 17.1v.2"></path>`,
  bad: svg`<path d="m8 8 8 8M16 8l-8 8"></path>`,
} as const;

/** A sign by shape: ring with tick, dot, triangle, diamond, octagon. The word stands beside it, colour only adds. */
export function severitySign(severity: Severity): TemplateResult {
  return html`<svg class="sign ${severity}" viewBox="0 0 24 24" aria-hidden="true">
    <g class="shape">${outlines[shapeOf[severity]]}</g>
    <g class="mark">${marks[severity]}</g>
  </svg>`;
}

/** The severity that a verdict is drawn with. */
export function severityOfVerdict(verdict: Verdict): Severity {
  return severityOf[verdict];
}
