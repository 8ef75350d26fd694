import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import type { ShaderMaterial } from 'three';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeLooks } from '../../src/scene/looks.ts';
import { makeCutFaceMaterial, makeLinkMaterial, makeShared } from '../../src/scene/materials.ts';
import { launch } from '../support/browser.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

interface Program {
  readonly vertexShader: string;
  readonly fragmentShader: string;
  readonly defines: Readonly<Record<string, number>>;
}

/** What the driver said of a program. */
interface Linked {
  readonly linked: boolean;
  readonly log: string;
}

/** Hands three to the page's scripts by name. */
const PAGE = `<!doctype html><title>shaders</title><link rel="icon" href="data:,">
<script type="module">import * as three from '/three.module.js'; globalThis.three = three;</script>`;

let browser: Browser;
let page: Page;

beforeAll(async () => {
  browser = await launch();
  page = await browser.newPage();
  // three as it is installed, from an address that does not exist
  await page.route('http://three.test/**', (route) => {
    const name = new URL(route.request().url()).pathname;
    if (name === '/') return route.fulfill({ contentType: 'text/html', body: PAGE });
    return route.fulfill({
      contentType: 'text/javascript',
      body: readFileSync(`${root}node_modules/three/build${name}`, 'utf8'),
    });
  });
  await page.goto('http://three.test/');
  await page.waitForFunction(() => 'three' in globalThis);
});

afterAll(() => browser.close());

/** Links a program as three does for the page: with its own lines before it and in a WebGL2 context. */
async function link(program: Program): Promise<Linked> {
  return page.evaluate(({ vertexShader, fragmentShader, defines }) => {
    const { three } = globalThis as unknown as { three: typeof import('three') };
    const renderer = new three.WebGLRenderer({ antialias: false });
    const gl = renderer.getContext() as WebGL2RenderingContext;
    let result: { linked: boolean; log: string } = { linked: false, log: 'nothing was drawn' };
    const told = (made: WebGLProgram, shaders: readonly (WebGLShader | null)[]) => ({
      linked: gl.getProgramParameter(made, gl.LINK_STATUS) === true,
      log: [gl.getProgramInfoLog(made), ...shaders.map((shader) => shader && gl.getShaderInfoLog(shader))]
        .join('\n')
        .trim(),
    });
    renderer.debug.onShaderError = (_, made, vertex, fragment) => {
      result = told(made as WebGLProgram, [vertex as WebGLShader, fragment as WebGLShader]);
    };
    const material = new three.ShaderMaterial({ vertexShader, fragmentShader, defines: { ...defines } });
    const scene = new three.Scene();
    const body = new three.Mesh(new three.PlaneGeometry(), material);
    body.frustumCulled = false;
    scene.add(body);
    renderer.render(scene, new three.OrthographicCamera());
    const made = renderer.info.programs?.[0]?.program as WebGLProgram | undefined;
    if (result.log === 'nothing was drawn' && made !== undefined) result = told(made, []);
    renderer.dispose();
    renderer.forceContextLoss();
    return result;
  }, program);
}

const shared = makeShared();
const { parts, ...looks } = makeLooks(shared);
const linkMaterial = makeLinkMaterial(shared, '#c8a878');
const materials: Readonly<Record<string, ShaderMaterial>> = {
  link: linkMaterial,
  'cut face': makeCutFaceMaterial(linkMaterial),
  ...looks,
  'part in plain sight': parts.brass.seen,
  'part behind wood': parts.brass.hidden,
  'part inside wood': parts.lead.hidden,
};

function programOf(material: ShaderMaterial): Program {
  const { vertexShader, fragmentShader, defines } = material;
  const numbers = Object.entries(defines ?? {}).map(([name, value]) => [name, Number(value)] as const);
  return { vertexShader, fragmentShader, defines: Object.fromEntries(numbers) };
}

describe('in a real WebGL2 context', () => {
  test.each(Object.entries(materials))('the shader of %s compiles and links', async (_, material) => {
    expect(await link(programOf(material))).toEqual({ linked: true, log: '' });
  });

  test('a shader with a slip in it is refused, and the reason is told', async () => {
    const material = materials.link;
    if (!material) throw new Error('links have a shader');
    const { fragmentShader, ...rest } = programOf(material);
    const slipped = await link({
      ...rest,
      fragmentShader: fragmentShader.replace('gl_FragColor =', 'gl_FragColour ='),
    });
    expect(slipped.linked).toBe(false);
    expect(slipped.log).toContain('gl_FragColour');
  });
});

test('every file in shaders/ is part of a shader that was linked here', () => {
  const files = readdirSync(`${root}shaders`, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.glsl'),
  );
  expect(files.length).toBeGreaterThan(15);
  const linked = Object.values(materials).map((material) => `${material?.vertexShader}\n${material?.fragmentShader}`);
  for (const file of files) {
    // its own lines stay as they are when pieces are put in
    const body = readFileSync(`${root}shaders/${file}`, 'utf8')
      .split('\n')
      .filter((text) => !text.includes('#include'));
    const holds = linked.some((source) => body.every((text) => source.includes(text)));
    expect(holds, file).toBe(true);
  }
});
