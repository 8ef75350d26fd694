/** The sheet's colours as the scene needs them, in any notation CSS knows. */
export interface Palette {
  readonly paper: string;
  readonly ink: string;
  readonly pencil: string;
  readonly water: string;
  readonly waterDeep: string;
  readonly picked: string;
}

/** Names of the page's custom properties; the second is what stands in a page without them. */
const PROPERTIES: Readonly<Record<keyof Palette, readonly [string, string]>> = {
  paper: ['--paper', '#f6f3ea'],
  ink: ['--ink', '#1f2a30'],
  pencil: ['--pencil', '#69727a'],
  water: ['--water', '#2e7f8c'],
  waterDeep: ['--deep', '#134b57'],
  picked: ['--vermilion', '#b93a26'],
};

/** Reads the colours that hold for an element, so that the tub follows the sheet into the night. */
export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  const read = ([property, otherwise]: readonly [string, string]) =>
    style.getPropertyValue(property).trim() || otherwise;
  return {
    paper: read(PROPERTIES.paper),
    ink: read(PROPERTIES.ink),
    pencil: read(PROPERTIES.pencil),
    water: read(PROPERTIES.water),
    waterDeep: read(PROPERTIES.waterDeep),
    picked: read(PROPERTIES.picked),
  };
}
