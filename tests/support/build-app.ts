import { builtApp } from './built-app';

/** What the window's tests need before the first of them: the app as `npm start` builds it. */
export default function buildApp(): void {
  builtApp();
}
