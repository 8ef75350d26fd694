import { useState } from 'react';
import { baitVerdict, fileNamePart } from '../../../sim/index.ts';
import { useDocument } from '../../document/store.ts';
import { useAnswers } from '../../engine/answers.ts';
import { saveFile } from '../../platform/download.ts';
import { useAmounts } from '../../view/amounts.ts';
import { takePicture } from '../../view/picture.ts';

/** Device pixels to one of the page's: enough for paper. */
const PIXEL_RATIO = 2;
/** Room for two lines under the picture, CSS pixels, and where they stand in it. */
const CAPTION_PX = 56;
const LINES_PX = [20, 42] as const;
const LEFT_PX = 16;

/** Saves what the tub shows as a picture, with the bait's name, its setup and its verdict under it. */
export function SavePicture() {
  const name = useDocument((document) => document.file?.name ?? '');
  const setup = useDocument((document) => document.setup ?? '');
  const amounts = useAmounts();
  const float = useAnswers((answers) => answers.lastGood.bait.assembled);
  const digits = useAnswers((answers) => answers.lastGood.bait.assembledAccuracy?.digits);
  const [said, setSaid] = useState('');

  async function save(paper: 'white' | 'clear') {
    const verdict = float === undefined ? '' : baitVerdict(float, digits, amounts);
    const drawn = takePicture(PIXEL_RATIO);
    const picture = drawn && captioned(drawn, paper, `${name}: ${setup}`, verdict);
    const content = picture && (await new Promise<Blob | null>((done) => picture.toBlob(done)));
    if (content === null) {
      setSaid('No picture: this browser does not draw the tub.');
      return;
    }
    const file = `${fileNamePart(`${name}, ${setup}`, 'bait')}.png`;
    saveFile(content, file);
    setSaid(`Saved as ${file}`);
  }

  return (
    <fieldset className="save-picture">
      <legend className="visually-hidden">Save the picture</legend>
      <button type="button" title="The tub as a PNG on white paper" onClick={() => void save('white')}>
        Save picture
      </button>
      <button type="button" title="The tub as a PNG without paper under it" onClick={() => void save('clear')}>
        Clear ground
      </button>
      <span className="visually-hidden" aria-live="polite">
        {said}
      </span>
    </fieldset>
  );
}

/** The picture with two lines of words under it, on paper or on nothing. */
function captioned(drawn: HTMLCanvasElement, paper: 'white' | 'clear', title: string, verdict: string) {
  const sheet = document.createElement('canvas');
  sheet.width = drawn.width;
  sheet.height = drawn.height + CAPTION_PX * PIXEL_RATIO;
  const context = sheet.getContext('2d');
  if (context === null) return null;
  if (paper === 'white') {
    context.fillStyle = '#fff';
    context.fillRect(0, 0, sheet.width, sheet.height);
  }
  context.drawImage(drawn, 0, 0);
  context.scale(PIXEL_RATIO, PIXEL_RATIO);
  context.translate(LEFT_PX, drawn.height / PIXEL_RATIO);
  context.textBaseline = 'middle';
  // ink on paper, whatever the page's own colours are by night
  context.fillStyle = '#1f2a30';
  const { fontFamily } = getComputedStyle(document.body);
  const widest = drawn.width / PIXEL_RATIO - 2 * LEFT_PX;
  [title, verdict].forEach((line, i) => {
    context.font = `${i === 0 ? 600 : 400} 15px ${fontFamily}`;
    context.fillText(line, 0, LINES_PX[i] ?? 0, widest);
  });
  return sheet;
}
