const place = 'seatwright-units';

/** The units that new sheets of this device begin in: those that were chosen last. */
export function unitsOfDevice(): 'mm' | 'in' {
  try {
    return localStorage.getItem(place) === 'in' ? 'in' : 'mm';
  } catch {
    return 'mm';
  }
}

export function rememberUnits(units: 'mm' | 'in'): void {
  try {
    localStorage.setItem(place, units);
  } catch {
    // A browser that keeps nothing begins in millimetres next time.
  }
}
