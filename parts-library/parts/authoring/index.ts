// The bridge to makerjs: a family may compose and trim a shape with it; what is kept is our contour.
// Nothing below `parts` and no worker loads makerjs; import this file only from a family that needs it.
export { contoursFromModel, type DrawnContours } from './from-model.js';
export { modelFromContour } from './to-model.js';
