/** Sentences of the joint room, by code. */
export const jointWords = {
  findings: {
    'joint-loose': { says: 'Nothing presses: the parts stand {gapUm} apart on the diameter.', todo: 'Take a tighter fit, or hold the part by other means.' },
    'joint-may-be-loose': { says: 'It may be loose: over the spread of the expansion coefficients {leastUm} to {mostUm} of interference are left.', todo: 'Take a tighter fit, or keep it cooler.' },
    'joint-presses': { says: 'It presses with {pressureMpa} on {effectiveUm} of interference.' },
    'hub-yields': { says: 'The bore of the hub passes its yield strength ({yieldMpa}).', todo: 'Take less interference, a thicker hub or a stronger material.' },
    'hub-flows-in-part': { says: 'The hub flows over {areaPercent} of its section and presses with {pressureMpa}. It will not take this fit a second time.', todo: 'Take less interference, a thicker hub or a stronger material.' },
    'hub-flows-through': { says: 'The hub flows right through at {pressureMpa}: more interference only stretches it.', todo: 'Take less interference or a thicker hub.' },
    'shaft-yields': { says: 'The shaft passes its yield strength ({yieldMpa}).', todo: 'Take less interference or a smaller bore in the shaft.' },
    'hub-strength-unknown': { says: 'No yield strength of the hub is known: whether it yields or cracks was not looked at.', todo: 'Brittle iron cracks instead of yielding: keep the hoop stress well below its tensile strength.' },
    'joint-slips': { says: 'It slips: the load is {slipRatio} of what it holds.', todo: 'Take a tighter or longer fit, or a key.' },
    'joint-holds-load': { says: 'It holds: the load is {slipRatio} of the slipping load at low friction.' },
  },
  notChecked: {
    'edge-pressure': 'Pressure at the ends of the hub: it is higher than the mean where the shaft stands out.',
    'friction-of-this-pair': 'Force and grip: no friction of this pair of materials is at hand. Give one to have them.',
    'flow-while-turning': 'How the hub flows while it turns: the elastic values stand alone.',
    'flow-beyond-textbook': 'How the hub flows beyond a pressure of its yield strength: the textbook solution ends there.',
    'modulus-and-yield-at-temperature': 'How modulus and yield strength change with temperature.',
  },
  assumed: {
    'friction-of-joint': 'Friction in the joint, dry to oiled',
    smoothing: 'Interference lost as the surfaces smooth',
    'expansion-taken-probable': 'Expansion coefficient, of which the probable value was taken',
    'expansion-of-shaft': 'Expansion coefficient of the shaft',
    'expansion-of-hub': 'Expansion coefficient of the hub',
  },
  effects: {
    'force-and-grip': 'the force to press it in and what it holds',
    'interference-that-presses': 'the interference that presses',
  },
  readings: {},
};
