/** The bundled fonts for a document that leaves the window: within it, or by their address for a print from this window. */

/** Faces that the book is set in: family and weight. */
const FACES: ReadonlySet<string> = new Set(['Barlow 400', 'Barlow 600', 'Barlow Condensed 600']);
const FIRST_FILE = /url\(["']?([^"')]+\.woff2)["']?\)/;

/** A rule of the window's own style sheets. */
export interface FontFaceRule {
  readonly family: string;
  readonly weight: string;
  /** As written: files in the order in which a browser tries them. */
  readonly source: string;
  readonly range: string;
  /** Address that the files are meant from. */
  readonly base: string;
}

export interface FontFace {
  /** Address of its file. */
  readonly file: string;
  /** The rule, but for where its file lies. */
  readonly rule: (source: string) => string;
}

/** Of all rules those that the book needs. */
export function bookFaces(rules: readonly FontFaceRule[]): FontFace[] {
  return rules.flatMap(({ family, weight, source, range, base }) => {
    const name = family.replace(/^["']|["']$/g, '');
    const file = FIRST_FILE.exec(source)?.[1];
    if (file === undefined || !FACES.has(`${name} ${weight}`)) return [];
    return [
      {
        file: new URL(file, base).href,
        rule: (address: string) =>
          `@font-face { font-family: '${name}'; font-style: normal; font-weight: ${weight}; src: url(${address}) format('woff2'); unicode-range: ${range}; }`,
      },
    ];
  });
}

/** Font faces that fetch their files from this window's own host. */
export function linkedFontCss(): string {
  return windowFaces()
    .map(({ file, rule }) => rule(file))
    .join('\n');
}

/** Font faces that carry their files, for a document that goes elsewhere. */
export async function embeddedFontCss(): Promise<string> {
  const rules = windowFaces().map(async ({ file, rule }) => rule(await dataAddress(await fetch(file))));
  return (await Promise.all(rules)).join('\n');
}

function windowFaces(): FontFace[] {
  const rules = [...document.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules].flatMap((rule): FontFaceRule[] => {
      if (!(rule instanceof CSSFontFaceRule)) return [];
      const of = (name: string) => rule.style.getPropertyValue(name);
      const base = new URL(sheet.href ?? '', document.baseURI).href;
      return [
        {
          family: of('font-family'),
          weight: of('font-weight'),
          source: of('src'),
          range: of('unicode-range'),
          base,
        },
      ];
    }),
  );
  return bookFaces(rules);
}

async function dataAddress(answer: Response): Promise<string> {
  if (!answer.ok) throw new Error(`the font at ${answer.url} is not there: ${answer.status}`);
  const file = new Blob([await answer.arrayBuffer()], { type: 'font/woff2' });
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error ?? new Error('a font could not be read'));
    reader.readAsDataURL(file);
  });
}
