import { css } from 'lit';

/**
 * Colours and measures that every element shares. A page sets the public properties (`--seat-ink` …) on any ancestor;
 * without them, ink on warm paper by day and on slate by night, by the `color-scheme` of the page.
 */
export const tokens = css`
  :host {
    --_ink: var(--seat-ink, light-dark(#16233b, #e4e8ef));
    --_quiet: var(--seat-quiet, light-dark(#55607a, #a3adbf));
    --_paper: var(--seat-paper, light-dark(#f8f5ed, #151c28));
    --_sunk: var(--seat-sunk, light-dark(#efeadd, #1e2735));
    --_rule: var(--seat-rule, light-dark(#cfc8b6, #3a4557));
    --_field: var(--seat-field, light-dark(#7d7a6e, #7d8aa0));
    --_accent: var(--seat-accent, light-dark(#a8420c, #ffa263));
    --_good: var(--seat-good, light-dark(#1f6442, #83d2a4));
    --_care: var(--seat-care, light-dark(#7a5600, #e6c262));
    --_unknown: var(--seat-unknown, light-dark(#44527a, #aebbe0));
    --_bad: var(--seat-bad, light-dark(#a0162f, #ff949c));
    --_font: var(--seat-font, system-ui, 'Segoe UI', Roboto, 'Liberation Sans', sans-serif);
    --_target: var(--seat-target, 3rem);
    color: var(--_ink);
    font-family: var(--_font);
    font-variant-numeric: tabular-nums;
  }
  :host([hidden]) {
    display: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  :focus-visible {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }
  .visually-hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;
