/**
 * Headers under which a document is printed. The document comes from the window, which a fault or a foreign file could have got hold
 * of, and what prints it could read more of this machine than the window can: so it runs no script, asks for nothing and goes nowhere
 * by itself. Only its own styles, and fonts and pictures that it carries within itself, are let through.
 * `sandbox` also keeps a refresh in its head from leading elsewhere (HTML Living Standard, shared declarative refresh steps).
 */
export const SEALED_HEADERS: Readonly<Record<string, string>> = {
  'content-type': 'text/html; charset=utf-8',
  'content-security-policy': [
    "default-src 'none'",
    "style-src 'unsafe-inline'",
    'font-src data:',
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
    'sandbox',
  ].join('; '),
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cache-control': 'no-store',
};
