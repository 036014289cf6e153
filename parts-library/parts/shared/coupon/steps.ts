// What is done with every coupon before and after it is cut.
import type { Format, ShopStep } from '../../../model/index.js';
import type { CouponSetting } from './setting.js';

/** Before the first pierce: the same conditions as the parts will have. */
export function settingUp(
  { amps, row }: CouponSetting,
  more: string,
  { length }: Format,
): readonly ShopStep[] {
  return [
    {
      kind: 'cut',
      says: `Set up as for the parts: ${amps} A, a nozzle whose hours you know, air checked while it flows, clean cold plate, work lead on bright metal. Pierce height ${length(row.pierceHeight)}, cut height ${length(row.cutHeight)} from the starting chart until yours are known. ${more}`,
    },
  ];
}

/** The edge as the torch leaves it is what is measured. */
export const SCRAPED: ShopStep = {
  kind: 'deburr',
  says: 'Scrape dross, do not grind: the edge is what is measured.',
};

/** What is written down is what a chart is made of. */
export const writingDown = (what: string): ShopStep => ({
  kind: 'measure',
  says: `${what} Write it down with current, measured thickness, height, air and the nozzle’s hours. One thing changed at a time.`,
});
