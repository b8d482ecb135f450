export { chooseFit, type ChooseFitInput, type ChooseFitOutput } from './choose-fit.js';
export { dismantling, type DismantlingInput, type DismantlingOutput } from './dismantling.js';
export { joiningTemperature, type JoiningTemperatureInput, type JoiningTemperatureOutput } from './joining-temperature.js';
export { pressJoint, type PressJointInput, type PressJointOutput } from './press-joint.js';
export { pushForce, type PushForceInput, type PushForceOutput } from './push-force.js';
export { ringStack, type RingStackInput, type RingStackOutput } from './ring-stack.js';
export { chillCautions } from './internal/cooling.js';
export { ringCompliance, type Ring, type RingCompliance } from './internal/thick-ring.js';
