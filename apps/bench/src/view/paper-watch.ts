import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Tells when paper is wanted, and when no longer: by the browser's print command, or by a medium that is print. */
export class PaperWatch implements ReactiveController {
  private readonly printing = matchMedia('print');
  private readonly turn: (isWanted: boolean) => void;

  constructor(host: ReactiveControllerHost, turn: (isWanted: boolean) => void) {
    this.turn = turn;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('beforeprint', this.putOn);
    window.addEventListener('afterprint', this.takeOff);
    this.printing.addEventListener('change', this.follow);
  }

  hostDisconnected(): void {
    window.removeEventListener('beforeprint', this.putOn);
    window.removeEventListener('afterprint', this.takeOff);
    this.printing.removeEventListener('change', this.follow);
  }

  private readonly putOn = (): void => {
    this.turn(true);
  };

  private readonly takeOff = (): void => {
    this.turn(false);
  };

  private readonly follow = ({ matches }: MediaQueryListEvent): void => {
    this.turn(matches);
  };
}
