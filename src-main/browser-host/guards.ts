/**
 * What the loopback host refuses. Any page in the person's browser, and any program on the machine, can reach a port on 127.0.0.1;
 * only the page that this run served, opened by the address that this run printed, may ask.
 */
import { createHash, timingSafeEqual } from 'node:crypto';
import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';

/** Header that carries the token of the run. */
export const TOKEN_HEADER = 'x-ledgewright-token';

/** The contract's longest text, should each of its characters need an escape of six. */
const LARGEST_BODY_BYTES = 50_000_000;

/** Refuses a request that was sent to another name: a foreign name made to lead to 127.0.0.1 would share this page's rights. */
export function onlyOwnHost(ownHost: () => string): MiddlewareHandler {
  return async (context, next) => {
    if (context.req.header('host') !== ownHost())
      return context.text('This host answers to its own address only.', 403);
    return next();
  };
}

/** Refuses a request from another page. A browser states the origin of every POST, so one without comes from no browser. */
export function onlyOwnOrigin(ownHost: () => string): MiddlewareHandler {
  return async (context, next) => {
    if (context.req.header('origin') !== `http://${ownHost()}`)
      return context.text('This page may not ask.', 403);
    return next();
  };
}

/** Refuses a request without this run's token. The time it takes says nothing of how much of a guess was right. */
export function onlyWithToken(token: string): MiddlewareHandler {
  const expected = digest(token);
  return async (context, next) => {
    const given = context.req.header(TOKEN_HEADER) ?? '';
    if (timingSafeEqual(digest(given), expected)) return next();
    return context.text('The token of this run is missing or wrong. Open the address that was printed.', 401);
  };
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}

/** Refuses a body that says it is something else than JSON, which a page elsewhere could send without asking first. */
export const onlyJson: MiddlewareHandler = async (context, next) => {
  const type = context.req.header('content-type') ?? '';
  if (!/^application\/json\s*(;|$)/i.test(type)) return context.text('A request is JSON.', 415);
  return next();
};

/** Refuses a body that no request of the contract can need. */
export const onlySmallBody: MiddlewareHandler = bodyLimit({
  maxSize: LARGEST_BODY_BYTES,
  onError: (context) => context.text('The request is too large.', 413),
});
