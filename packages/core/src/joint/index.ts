export { pressJoint, type PressJointInput, type PressJointOutput } from './press-joint.js';
export { ringStack, type RingStackInput, type RingStackOutput } from './ring-stack.js';
