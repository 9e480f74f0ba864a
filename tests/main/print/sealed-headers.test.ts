import { expect, test } from 'vitest';
import { SEALED_HEADERS } from '../../../src-main/print/sealed-headers';

test('a document is printed without scripts, without a base or a form that leads elsewhere, and with nothing but what it carries', () => {
  // Content Security Policy Level 3; HTML Living Standard (sandboxing); Fetch Standard (nosniff).
  expect(SEALED_HEADERS).toEqual({
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
  });
});
