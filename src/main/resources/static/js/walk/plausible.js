// Whether a typed amount is likely at its point, and which slips an unlikely one suggests: the rule of the server's
// dapple.light.expectation.Plausibility, held to the same table by a test.
const MOST = 3;
const TENS = [10, 0.1, 100, 0.01];
// Amount in another unit over amount in ours: µW/cm² erythemal and mW/m² for the UV index, klx and foot-candles for lx, mW/cm² for W/m².
const OTHER_UNITS = {UV_INDEX: [2.5, 25], ILLUMINANCE: [0.001, 0.0929], UVA: [0.1], IRRADIANCE: [0.1], UVB_IRRADIANCE: [0.01]};
const TEMPERATURES = ['SURFACE_TEMPERATURE', 'AIR_TEMPERATURE'];

const holds = (range, amount) => amount >= range.low && amount <= range.high;

const isAnotherUnit = (quantity, amount, expected) => TEMPERATURES.includes(quantity)
  ? holds(expected, (amount - 32) / 1.8)
  : (OTHER_UNITS[quantity] ?? []).some((factor) => holds(expected, amount / factor));

/**
 * @param expected {low, high} as displayed
 * @param surroundings {otherPoints, otherQuantities: ranges as displayed; isCold: a lamp had not warmed up}
 * @return null if likely, else {direction: 'LOW' or 'HIGH', slips: at most three, likeliest first}
 */
export function slipsOf(quantity, amount, expected, surroundings) {
  if (holds(expected, amount)) return null;
  const isLow = amount < expected.low;
  const slips = [];
  if (isLow && surroundings.isCold) slips.push('NOT_WARM');
  if (surroundings.otherQuantities.some((range) => holds(range, amount))) slips.push('WRONG_QUANTITY');
  if (surroundings.otherPoints.some((range) => holds(range, amount))) slips.push('POINT_MISSED');
  if (isAnotherUnit(quantity, amount, expected)) slips.push('WRONG_UNIT');
  if (amount !== 0 && TENS.some((ten) => holds(expected, amount * ten))) slips.push('DECIMAL_POINT');
  slips.push(isLow ? 'SENSOR_TURNED' : 'TOO_NEAR', 'LIGHT_CHANGED', 'POINT_MISSED');
  return {direction: isLow ? 'LOW' : 'HIGH', slips: [...new Set(slips)].slice(0, MOST)};
}
