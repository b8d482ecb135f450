import { css } from 'lit';

/** The angle before what can be unfolded, in place of the browser's own mark. */
export const foldStyles = css`
  summary {
    display: flex;
    align-items: center;
    cursor: pointer;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  summary::before {
    content: '';
    width: 0.45em;
    height: 0.45em;
    border: solid currentColor;
    border-width: 0 2px 2px 0;
    transform: rotate(-45deg);
  }
  details[open] > summary::before {
    transform: rotate(45deg);
  }
`;
