/** The loopback host as an application: the built window, and its requests behind the guards. */
import { Hono } from 'hono';
import type { Host } from '../host/host';
import { servePage } from '../host/page-files';
import { PAGE_HEADERS } from '../host/page-headers';
import { onlyJson, onlyOwnHost, onlyOwnOrigin, onlySmallBody, onlyWithToken } from './guards';

export interface LoopbackParts {
  readonly host: Host;
  readonly pageFolder: string;
  readonly token: string;
  /** Name and port that the host is reached by; known once it listens. */
  readonly ownHost: () => string;
  /** Told of a fault of Ledgewright's own. */
  readonly onFault: (error: unknown) => void;
}

const STATUS = { 'unknown-name': 404, 'bad-request': 400 } as const;

/** The application over these parts. */
export function loopbackApp({ host, pageFolder, token, ownHost, onFault }: LoopbackParts): Hono {
  const app = new Hono();

  app.use(async (context, next) => {
    await next();
    for (const [name, value] of Object.entries(PAGE_HEADERS)) context.res.headers.set(name, value);
  });
  app.use(onlyOwnHost(ownHost));

  app.use('/host/*', async (context, next) => {
    await next();
    context.res.headers.set('cache-control', 'no-store');
  });
  app.post(
    '/host/:name',
    onlyOwnOrigin(ownHost),
    onlyWithToken(token),
    onlyJson,
    onlySmallBody,
    async (context) => {
      const body = await readJson(context.req.raw);
      if (!body.ok) return context.text('The request is not JSON.', 400);
      const answer = await host.answer(context.req.param('name'), body.value);
      return answer.ok ? context.json(answer.reply) : context.text(answer.sentence, STATUS[answer.fault]);
    },
  );
  app.all('/host/*', (context) => context.text('A request is a POST.', 405));

  app.all('*', (context) => servePage(pageFolder, context.req.raw));

  app.onError((error, context) => {
    onFault(error);
    return context.text('Ledgewright has a fault of its own. Your job is as it was.', 500);
  });
  return app;
}

type Body = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

async function readJson(request: Request): Promise<Body> {
  try {
    return { ok: true, value: await request.json() };
  } catch {
    return { ok: false };
  }
}
