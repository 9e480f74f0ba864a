export { NOTICE } from './notice';
export { printQuantity, printRatio } from './print-quantity';
