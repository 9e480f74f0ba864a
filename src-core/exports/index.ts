export type { CutoutTemplate, TemplatePage } from './cutout-template';
export { cutoutTemplate } from './cutout-template';
export { figureMarkup, figureSvg } from './figure-markup';
export { jobGlb } from './job-glb';
export { jobStl } from './job-stl';
export type { PenLook } from './pens';
export { PENS } from './pens';
export { planDxf } from './plan-dxf';
export { planSvg } from './plan-svg';
