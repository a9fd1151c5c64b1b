import type { Mm, Mm2, Ratio } from "../plane/types.ts";

/** Gravity on the ground. @source CGPM 1901, standard gravity, rounded */
export const gravity = 9.81;

/**
 * Share of the body's weight that the seat bears; feet and back bear the rest.
 *
 * @source our choice, after Biomedical Engineering Online 2018, table 2: 427 N under the back of the seat
 * and 119 N under its front, for young men (their mass from memory),
 * https://biomedical-engineering-online.biomedcentral.com/articles/10.1186/s12938-018-0621-2/tables/2
 */
const seatShare: Ratio = 0.8;

/**
 * Area of the seat in contact, as a share of stature squared: 869 cm² for a stature of 1.7 m.
 *
 * @source the same table (527 and 342 cm²); scaling with stature is our choice
 */
const contactShare: Ratio = 0.0301;

/** Plate that hardness is measured with, and the thickness of its sample. @source ASTM D3574, test B1: 50 in², 100 mm */
export const indentor: Mm2 = 32300;
const sample: Mm = 100;

/** Indentation of the hardness as sold: 25 % by ASTM D3574 in pounds, 40 % by ISO 2439 in newtons. */
const firmRead: Ratio = 0.25;
const softRead: Ratio = 0.4;

/** Force at 65 % over force at 25 %. @source PFA InTouch: support factor, about 2 for seat foam */
const supportFactor: Ratio = 2;

/** How a load sinks into foam: area it presses on and force in newtons. */
export interface Press {
  readonly area: Mm2;
  readonly force: number;
}

/** What a sitter presses a seat with. */
export function pressOf(sitter: { readonly stature: Mm; readonly mass: number }): Press {
  return {
    area: contactShare * sitter.stature ** 2,
    force: sitter.mass * gravity * seatShare,
  };
}

/**
 * Share by which foam is pressed together under a load, least and most: the seller's hardness may be
 * read at 25 % or at 40 %, and nothing says which. Never above 1.
 *
 * @source ASTM D3574 and ISO 2439 for the two readings; straight lines between 0, 25 % and 65 % are our choice
 */
export function sinkShare(
  press: Press,
  hardness: number,
): { readonly least: Ratio; readonly most: Ratio } {
  const onIndentor = press.force * (indentor / press.area);
  const at = (read: Ratio) => shareAt(onIndentor / (hardness / curve(read)));
  return { least: at(firmRead), most: at(softRead) };
}

/** Force at a share, over the force at 25 %. */
function curve(share: Ratio): Ratio {
  if (share <= 0.25) return share / 0.25;
  return 1 + ((supportFactor - 1) * (share - 0.25)) / 0.4;
}

/** The inverse of the curve. */
function shareAt(force: Ratio): Ratio {
  if (force <= 1) return 0.25 * force;
  return Math.min(1, 0.25 + (0.4 * (force - 1)) / (supportFactor - 1));
}

/**
 * Thickness that matters: the load spreads out below, so deep foam gives less than its share. As much
 * as the sample for the indentor itself.
 *
 * @source 2 : 1 spread of a load with depth, Bowles, Foundation Analysis and Design (from memory)
 */
export function workingThickness(thickness: Mm, area: Mm2): Mm {
  const spread = (deep: Mm, over: Mm2) => {
    const radius = Math.sqrt(over / Math.PI);
    return (radius * deep) / (radius + deep / 2);
  };
  return Math.min(thickness, (sample * spread(thickness, area)) / spread(sample, indentor));
}
