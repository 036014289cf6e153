// Handles of an R2000 file: the hexadecimal number by which every object is known and named as an owner.

/** Owner of what belongs to the drawing itself. */
export const NO_OWNER = '0';

/** Handles of the objects that every file has. */
export const HANDLES = {
  vports: '1',
  linetypes: '2',
  layers: '3',
  styles: '4',
  views: '5',
  coordinates: '6',
  applications: '7',
  dimensionStyles: '8',
  blockRecords: '9',
  activeView: 'A',
  byBlock: 'B',
  byLayer: 'C',
  continuous: 'D',
  layerNought: 'E',
  standardStyle: 'F',
  acad: '10',
  standardDimension: '11',
  modelRecord: '12',
  paperRecord: '13',
  modelBlock: '14',
  modelEnd: '15',
  paperBlock: '16',
  paperEnd: '17',
  rootDictionary: '18',
  groupDictionary: '19',
} as const;

/** The first handle that layers and then entities take. */
export const FIRST_FREE = 0x20;

export const hex = (value: number): string => value.toString(16).toUpperCase();
