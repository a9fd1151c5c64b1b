import type { Count, Mm } from "../plane/types.ts";
import { randomBelow } from "../plane/random.ts";
import type { SearchState } from "./search-state.ts";
import { snap } from "./walk-downhill.ts";

/** Only the larger half of the items are changed over. */
const largeShare = 0.5;

/** Let two of the larger items change places. */
export function disturbStrip(state: SearchState): void {
  const large = state.job.items
    .map((item, index) => ({ index, area: item.area }))
    .sort((a, b) => b.area - a.area || a.index - b.index)
    .slice(0, Math.max(2, Math.ceil(state.count * largeShare)));
  if (large.length < 2) return;
  const first = randomBelow(state.random, large.length);
  const step = 1 + randomBelow(state.random, large.length - 1);
  const one = large[first]!.index;
  const two = large[(first + step) % large.length]!.index;
  const [x, y] = [state.x[one]!, state.y[one]!];
  putAt(state, one, state.x[two]!, state.y[two]!);
  putAt(state, two, x, y);
}

/** Push items that stick out at the end of the strip back onto it. */
export function holdInside(state: SearchState): void {
  for (let item = 0; item < state.count; item++) putAt(state, item, state.x[item]!, state.y[item]!);
}

/** Put an item as near to a place as the strip lets it lie. */
function putAt(state: SearchState, item: Count, x: Mm, y: Mm): void {
  const form = state.form[item]!;
  const { stepX, stepY, startX = 0, startY = 0 } = state.job.items[item]!;
  const roomX = Math.max(0, state.job.width - state.formWidth[form]!);
  const roomY = Math.max(0, state.length - state.formHeight[form]!);
  state.x[item] = snap(x, roomX, stepX, startX);
  state.y[item] = snap(y, roomY, stepY, startY);
}
