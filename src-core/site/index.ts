export type { SiteFinding } from './finding';
export { siteFindings } from './site-findings';
