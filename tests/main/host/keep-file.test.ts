import fs from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, vi } from 'vitest';
import { keepFile } from '../../../src-main/host/keep-file';
import { onPosix } from '../../support/on-posix';
import { withHost } from './place-here';

onPosix('what is kept is flushed to the disk before it takes its name, and its folder after', async () => {
  await withHost(async ({ place }) => {
    const order: string[] = [];
    const probe = await open(place.jobFolder, 'r');
    const handles = Object.getPrototypeOf(probe) as typeof probe;
    await probe.close();
    const { fsync, rename } = fs;
    const { sync } = handles;
    vi.spyOn(fs, 'fsync').mockImplementation((fd, done) => {
      order.push('file flushed');
      fsync(fd, done);
    });
    vi.spyOn(fs, 'rename').mockImplementation((from, to, done) => {
      order.push('named');
      rename(from, to, done);
    });
    vi.spyOn(handles, 'sync').mockImplementation(function (this: typeof probe) {
      order.push('folder flushed');
      return sync.call(this);
    });
    try {
      await keepFile(join(place.jobFolder, 'galley.json'), 'text');
    } finally {
      vi.restoreAllMocks();
    }
    expect(order).toEqual(['file flushed', 'named', 'folder flushed']);
  });
});
