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
    paper.strokeStyle = style.color;
    paper.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const sign = mark.querySelector('svg')?.getBoundingClientRect();
    if (sign !== undefined) {
      const [x, y] = [sign.left + sign.width / 2 - origin.left, sign.top + sign.height / 2 - origin.top];
      drawCentre(paper, x, y, (sign.width * 7) / 16, kindOf(mark));
    }
    const words = mark.querySelector('span');
    // a word without room is not written here either
    if (words === null || getComputedStyle(words).visibility === 'hidden') continue;
    const box = words.getBoundingClientRect();
    paper.fillText(words.textContent ?? '', box.left - origin.left, box.top + box.height / 2 - origin.top);
  }
  paper.restore();
}

type Kind = 'weight' | 'lift' | 'metacentre';

function kindOf({ classList }: Element): Kind {
  if (classList.contains('weight')) return 'weight';
  return classList.contains('lift') ? 'lift' : 'metacentre';
}

/** The drafting marks: of weight with two opposite quarters filled, of lift with a cross, M with its middle. */
function drawCentre(paper: CanvasRenderingContext2D, x: number, y: number, radius: number, kind: Kind): void {
  const circle = new Path2D();
  circle.arc(x, y, radius, 0, 2 * Math.PI);
  const ink = paper.fillStyle;
  paper.fillStyle = '#fff';
  paper.fill(circle);
  paper.fillStyle = ink;
  paper.stroke(circle);
  const inside = new Path2D();
  if (kind === 'weight') {
    for (const from of [-Math.PI / 2, Math.PI / 2]) {
      inside.moveTo(x, y);
      inside.arc(x, y, radius, from, from + Math.PI / 2);
      inside.closePath();
    }
    paper.fill(inside);
  } else if (kind === 'metacentre') {
    inside.arc(x, y, (radius * 2.4) / 7, 0, 2 * Math.PI);
    paper.fill(inside);
  } else {
    inside.moveTo(x - radius, y);
    inside.lineTo(x + radius, y);
    inside.moveTo(x, y - radius);
    inside.lineTo(x, y + radius);
    paper.stroke(inside);
  }
}
