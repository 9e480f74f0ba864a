import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compileFunction } from 'node:vm';
import { describe, expect, test, vi } from 'vitest';
import { ASK_CHANNEL, EVENT_CHANNEL } from '../../../src-main/desktop/channels';
import { PAGE_HEADERS } from '../../../src-main/host/page-headers';
import { builtApp } from '../../support/built-app';

const DIST = builtApp();

interface Door {
  readonly ask: (name: string, request: unknown) => Promise<unknown>;
  readonly listen: (onEvent: (event: unknown) => void) => () => void;
}

describe('the built preload', () => {
  test('is one CommonJS file that requires nothing but electron', () => {
    expect(readdirSync(join(DIST, 'preload'))).toEqual(['preload.cjs']);
    const text = readFileSync(join(DIST, 'preload', 'preload.cjs'), 'utf8');
    expect([...text.matchAll(/\brequire\(([^)]*)\)/g)].map(([, name]) => name)).toEqual(['"electron"']);
    expect(text).not.toMatch(/^\s*(?:import|export)\b|\bimport\(/m);
  });

  test('gives the page one thing, with a way to ask on one channel and a way to listen, and lets nothing of Electron through', async () => {
    const required: string[] = [];
    const given = new Map<string, Door>();
    const listened = new Map<string, (event: unknown, told: unknown) => void>();
    const invoke = vi.fn(async () => 'answer');
    const electron = {
      contextBridge: { exposeInMainWorld: (name: string, door: Door) => given.set(name, door) },
      ipcRenderer: {
        invoke,
        on: (channel: string, listener: (event: unknown, told: unknown) => void) =>
          listened.set(channel, listener),
      },
    };
    const text = readFileSync(join(DIST, 'preload', 'preload.cjs'), 'utf8');
    compileFunction(text, ['require', 'module', 'exports'])(
      (name: string) => {
        required.push(name);
        return electron;
      },
      { exports: {} },
      {},
    );
    expect(required).toEqual(['electron']);
    expect([...given.keys()]).toEqual(['ledgewright']);
    const door = given.get('ledgewright')!;
    expect(Object.keys(door)).toEqual(['ask', 'listen']);
    expect(await door.ask('openJob', { path: null })).toBe('answer');
    expect(invoke.mock.calls).toEqual([[ASK_CHANNEL, 'openJob', { path: null }]]);
    expect([...listened.keys()]).toEqual([EVENT_CHANNEL]);
    const onEvent = vi.fn();
    const stop = door.listen(onEvent);
    listened.get(EVENT_CHANNEL)!({ sender: 'the way to every channel' }, { kind: 'menu', command: 'undo' });
    stop();
    listened.get(EVENT_CHANNEL)!({}, { kind: 'menu', command: 'redo' });
    expect(onEvent.mock.calls).toEqual([[{ kind: 'menu', command: 'undo' }]]);
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
