import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { offerPicture } from '../view/picture.ts';
import { setViewport } from './materials.ts';
import { useTub } from './tub.ts';

/** Lets the page ask for the picture as it is drawn now, with what is written over it. */
export function PictureTaker() {
  const { shared } = useTub();
  const get = useThree((state) => state.get);
  useEffect(
    () =>
      offerPicture((pixelRatio) => {
        const { gl, scene, camera, size, invalidate } = get();
        const before = gl.getPixelRatio();
        const draw = (ratio: number) => {
          gl.setPixelRatio(ratio);
          setViewport(shared, size.width * ratio, size.height * ratio, ratio);
          gl.render(scene, camera);
        };
        const picture = document.createElement('canvas');
        picture.width = Math.round(size.width * pixelRatio);
        picture.height = Math.round(size.height * pixelRatio);
        const paper = picture.getContext('2d');
        try {
          draw(pixelRatio);
          // in the same breath: what was drawn is gone once the page has been shown
          paper?.drawImage(gl.domElement, 0, 0, picture.width, picture.height);
        } finally {
          draw(before);
          invalidate();
        }
        if (paper !== null) writeMarks(paper, gl.domElement, pixelRatio);
        return picture;
      }),
    [get, shared],
  );
  return null;
}

/** Letters and centres stand on the page over the canvas: they are drawn once more, each where it stands. */
function writeMarks(paper: CanvasRenderingContext2D, canvas: HTMLCanvasElement, pixelRatio: number): void {
  const origin = canvas.getBoundingClientRect();
  paper.save();
  paper.scale(pixelRatio, pixelRatio);
  paper.textBaseline = 'middle';
  for (const mark of canvas.closest('.water')?.querySelectorAll('.mark') ?? []) {
    const style = getComputedStyle(mark);
    paper.fillStyle = style.color;
    paper.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const sign = mark.querySelector('svg');
    if (sign !== null) drawSign(paper, sign, origin);
    const words = mark.querySelector('span');
    // a word without room is not written here either
    if (words === null || getComputedStyle(words).visibility === 'hidden') continue;
    const { left, top, width, height } = words.getBoundingClientRect();
    paper.save();
    // a scrap of paper under words that lie on wood; most have none
    paper.fillStyle = getComputedStyle(words).backgroundColor;
    paper.fillRect(left - origin.left, top - origin.top, width, height);
    paper.restore();
    const inset = Number.parseFloat(getComputedStyle(words).paddingLeft);
    const middle = top + height / 2 - origin.top;
    paper.fillText(words.textContent ?? '', left + inset - origin.left, middle, width - 2 * inset);
  }
  paper.restore();
}

/** A sign as the page draws it: the shapes of its SVG, in the colours they have there. */
function drawSign(paper: CanvasRenderingContext2D, sign: SVGSVGElement, origin: DOMRect): void {
  const box = sign.getBoundingClientRect();
  const { x, y, width, height } = sign.viewBox.baseVal;
  paper.save();
  paper.translate(box.left - origin.left, box.top - origin.top);
  paper.scale(box.width / width, box.height / height);
  paper.translate(-x, -y);
  for (const shape of sign.children) {
    const outline = outlineOf(shape);
    const { fill, stroke, strokeWidth } = getComputedStyle(shape);
    paper.lineWidth = Number.parseFloat(strokeWidth);
    if (fill !== 'none') {
      paper.fillStyle = fill;
      paper.fill(outline);
    }
    if (stroke !== 'none') {
      paper.strokeStyle = stroke;
      paper.stroke(outline);
    }
  }
  paper.restore();
}

/** Signs are made of paths and ellipses. */
function outlineOf(shape: Element): Path2D {
  const number = (name: string) => Number(shape.getAttribute(name) ?? 0);
  const round = shape.getAttribute('r');
  if (shape.tagName === 'path') return new Path2D(shape.getAttribute('d') ?? '');
  const outline = new Path2D();
  const [across, up] = round === null ? [number('rx'), number('ry')] : [Number(round), Number(round)];
  outline.ellipse(number('cx'), number('cy'), across, up, 0, 0, 2 * Math.PI);
  return outline;
}
