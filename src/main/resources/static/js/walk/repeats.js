// How many amounts of one point are enough, and which of them counts: the rule of the server's
// dapple.light.metrology.RepeatsTaken, held to the same table by a test.
export const ASKED = 3;
const WIDEST_SPREAD = 0.15;
const ROUNDING = 1e-9;

const median = (three) => [...three].sort((one, other) => one - other)[1];

const areApart = (three, resolution) => {
  const range = Math.max(...three) - Math.min(...three);
  return range > WIDEST_SPREAD * median(three) && range > resolution * (1 + ROUNDING);
};

/** @return 'ANOTHER', 'ALL_AGAIN' (once, if the first three are too far apart) or 'ENOUGH' */
export function nextOf(amounts, resolution) {
  if (amounts.length % ASKED) return 'ANOTHER';
  return amounts.length === ASKED && areApart(amounts, resolution) ? 'ALL_AGAIN' : 'ENOUGH';
}

/** The median of the newest whole three; of fewer the last. */
export function amountOf(amounts) {
  const whole = amounts.length - amounts.length % ASKED;
  return whole ? median(amounts.slice(whole - ASKED, whole)) : amounts.at(-1);
}
