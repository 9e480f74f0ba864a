/** Headers of everything that a host serves to the window. */

/** Only the window's own files run; WebAssembly is the engine's inner loops, and inline styles are how the views place things. */
const CONTENT_POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "font-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-ancestors 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The two cross-origin policies that isolate the page also let its worker share memory. */
export const PAGE_HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_POLICY,
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-embedder-policy': 'require-corp',
  'cross-origin-resource-policy': 'same-origin',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};
