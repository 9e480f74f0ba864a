import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PAGE_HEADERS } from '../../../src-main/host/page-headers';
import { builtApp } from '../../support/built-app';

const DIST = builtApp();

describe('the built preload', () => {
  test('is one CommonJS file that requires nothing but electron', () => {
    expect(readdirSync(join(DIST, 'preload'))).toEqual(['preload.cjs']);
    const text = readFileSync(join(DIST, 'preload', 'preload.cjs'), 'utf8');
    expect([...text.matchAll(/\brequire\(([^)]*)\)/g)].map(([, name]) => name)).toEqual(['"electron"']);
    expect(text).not.toMatch(/^\s*(?:import|export)\b|\bimport\(/m);
  });
});

describe('the built page', () => {
  const page = readFileSync(join(DIST, 'renderer', 'index.html'), 'utf8');

  test('has no inline script and loads nothing from elsewhere', () => {
    const scripts = [...page.matchAll(/<script\b([^>]*)>([^<]*)<\/script>/g)];
    expect(scripts.length).toBeGreaterThan(0);
    for (const [, attributes, inside] of scripts) {
      expect(attributes).toMatch(/\bsrc="\.\/assets\/[^"]+\.js"/);
      expect(inside!.trim()).toBe('');
    }
    const named = [...page.matchAll(/\b(?:src|href)="([^"]+)"/g)].map(([, address]) => address!);
    for (const address of named) {
      expect(address).toMatch(/^\.\//);
      expect(existsSync(join(DIST, 'renderer', address)), address).toBe(true);
    }
  });

  test('states the policy that the hosts send, so that neither is looser than the other', () => {
    const stated = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(page)?.[1]?.split('; ');
    const sent = PAGE_HEADERS['content-security-policy']!.split('; ');
    // A page cannot state who may frame it; that holds in the header alone.
    expect(stated).toEqual(sent.filter((rule) => !rule.startsWith('frame-ancestors')));
  });
});
