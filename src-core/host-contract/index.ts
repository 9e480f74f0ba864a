export { EXPORT_ENDINGS } from './leaving';
export type { Menu, MenuItem } from './menu';
export { MENUS } from './menu';
export type { HostApi, HostEvent, ReplyOf, RequestName, RequestOf } from './requests';
export { hostEvent, REQUESTS } from './requests';
